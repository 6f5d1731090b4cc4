import { useBench } from '../../../store/bench.ts';
import { useBoardDrafts } from '../../../store/board-drafts.ts';
import { usePage } from '../../../store/page.ts';
import { useSettings } from '../../../store/settings/use-settings.ts';
import type { Findable } from '../../widgets/finder.tsx';
import type { Desk } from '../desks.ts';

/** Something that a desk can do or show, and where it is shown. */
interface DeskCommand {
  readonly label: string;
  /** Other words by which somebody may look for it. */
  readonly also?: string;
  readonly desk?: string;
  /** The dialog that opens, by the name it gives `usePageDialog`. */
  readonly dialog?: string;
  /** The view that is brought up, by the place and the name that `usePageView` knows. */
  readonly view?: readonly [place: string, view: string];
  readonly run?: () => void;
}

/** What the finder offers beside the menus, one line each: a new dialog or view of a desk adds its own here. */
const COMMANDS: readonly DeskCommand[] = [
  { label: 'Computers…', also: 'host layout language system', desk: 'design', dialog: 'computers' },
  { label: 'What you type…', also: 'needs lists languages', desk: 'design', dialog: 'needs' },
  { label: 'Fill the layer in front…', also: 'paste characters', desk: 'design', dialog: 'fill' },
  { label: 'Timing…', also: 'hold after quiet before', desk: 'design', dialog: 'timing' },
  { label: 'Change the layer in front…', also: 'rename delete', desk: 'design', dialog: 'layer' },
  { label: 'Findings', also: 'faults', desk: 'design', view: ['right of the board', 'findings'] },
  { label: 'Coverage', also: 'costs text', desk: 'design', view: ['right of the board', 'coverage'] },
  { label: 'Accidents', also: 'misfires', desk: 'design', view: ['right of the board', 'accidents'] },
  {
    label: 'Measure your typing…',
    also: 'typist figures speed',
    desk: 'design',
    view: ['right of the board', 'accidents'],
    dialog: 'measure',
  },
  {
    label: 'Suggest a chord…',
    also: 'find free keys together',
    desk: 'design',
    view: ['right of the board', 'suggest'],
  },
  {
    label: 'Change the board…',
    also: 'shape columns',
    desk: 'design',
    run: () => useBoardDrafts.getState().open(),
  },
  { label: 'The worksheet', also: 'table codes', desk: 'sheet', view: ['sheet desk', 'worksheet'] },
  { label: 'Undo', run: () => useBench.getState().undo() },
  { label: 'Redo', run: () => useBench.getState().redo() },
  {
    label: 'Legends by character or by key name',
    also: 'codes',
    run: () => {
      const { legends, settle } = useSettings.getState();
      settle({ legends: legends === 'codes' ? 'characters' : 'codes' });
    },
  },
];

/** Does what a command says: its desk first, so that what it shows has a place. */
function give({ desk, view, dialog, run }: DeskCommand): void {
  const page = usePage.getState();
  if (desk !== undefined) {
    page.showDesk(desk);
    // The board editor stands in place of what most commands show.
    if (desk === 'design') useBoardDrafts.getState().close();
  }
  if (view !== undefined) page.showView(...view);
  if (dialog !== undefined) page.showDialog(dialog);
  run?.();
}

/** Does something that is seen on the design desk's board. */
export function showOnDesign(run: () => void): void {
  give({ label: '', desk: 'design', run });
}

/** The commands of the desks. */
export function foundDeskCommands(): readonly Findable[] {
  return COMMANDS.map((command) => ({
    id: `command ${command.label}`,
    label: command.label,
    ...(command.also === undefined ? {} : { also: command.also }),
    hint: command.desk === undefined ? 'page' : `${command.desk} desk`,
    onChoose: () => give(command),
  }));
}

/** The desks themselves. */
export function foundDesks(desks: readonly Desk[]): readonly Findable[] {
  return desks.map(({ id, title }) => ({
    id: `desk ${id}`,
    label: `${title} desk`,
    hint: 'desk',
    onChoose: () => give({ label: title, desk: id }),
  }));
}
