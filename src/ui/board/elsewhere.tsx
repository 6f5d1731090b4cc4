import { DeskStage } from '../widgets/desk-stage.tsx';

/** In place of what would be written down here: two tabs that work on one design would write over each other. */
export function Elsewhere({ label, todo }: { readonly label: string; readonly todo: string }) {
  return (
    <DeskStage label={label}>
      <h2>Open in another tab</h2>
      <p>
        This design is being worked on in another tab of this browser. {todo} there, or take it over here
        first.
      </p>
    </DeskStage>
  );
}
