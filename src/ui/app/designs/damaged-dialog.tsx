import type { DamagedDesign } from '../../../store/keeping/designs-state.ts';
import { fileStem } from '../../board/export/export-files.ts';
import { Button } from '../../widgets/button.tsx';
import { Dialog } from '../../widgets/dialog.tsx';
import { saveFile } from '../../widgets/save-file.ts';
import { ProblemList } from '../transfer/problem-list.tsx';

/** Says why a kept design could not be opened, and gives out what is stored of it. */
export function DamagedDialog({
  damaged,
  onClose,
}: {
  readonly damaged: DamagedDesign;
  readonly onClose: () => void;
}) {
  const save = () =>
    saveFile({
      name: `${fileStem(damaged.name)}.stored.json`,
      type: 'application/json',
      text: JSON.stringify(damaged.stored, null, 2) ?? '',
    });
  return (
    <Dialog
      title={`“${damaged.name}” cannot be opened`}
      onClose={onClose}
      footer={
        <>
          {damaged.stored !== undefined && <Button onClick={save}>Save what is stored as a file</Button>}
          <Button tone="accent" onClick={onClose}>
            Go on with another design
          </Button>
        </>
      }
    >
      <p>{damaged.sentence} It stays in this browser as it is; nothing of it is deleted or written over.</p>
      <ProblemList problems={damaged.problems} />
    </Dialog>
  );
}
