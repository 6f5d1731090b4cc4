import { useDesigns } from '../../store/keeping/use-designs.ts';
import type { Findable } from '../widgets/finder.tsx';
import { BackupDialog } from './backup/backup-dialog.tsx';
import { DamagedDialog } from './designs/damaged-dialog.tsx';
import { DesignsDialog } from './designs/designs-dialog.tsx';
import { FinderDialog } from './finder/finder-dialog.tsx';
import { HelpDialog } from './help-dialog.tsx';
import { NewDesignDialog } from './new-design/new-design-dialog.tsx';
import { SettingsDialog } from './settings/settings-dialog.tsx';
import { ExportDialog } from './transfer/export-dialog.tsx';
import { ImportProblemDialog } from './transfer/import-problem-dialog.tsx';
import type { Importing } from './transfer/use-import.ts';
import { VersionsDialog } from './versions/versions-dialog.tsx';

/** The dialogs that menus open. */
export type OpenDialogName =
  | 'new'
  | 'designs'
  | 'export'
  | 'help'
  | 'find'
  | 'settings'
  | 'versions'
  | 'backup';

/** The dialog that is open, if one is; what went wrong comes first. */
export function OpenDialog({
  name,
  open,
  importing,
  pickFile,
  commands,
}: {
  readonly name: OpenDialogName | null;
  readonly open: (name: OpenDialogName | null) => void;
  readonly importing: Importing;
  readonly pickFile: () => void;
  readonly commands: readonly Findable[];
}) {
  const damaged = useDesigns((state) => state.damaged);
  const closeDamaged = useDesigns((state) => state.closeDamaged);
  const close = () => open(null);
  if (importing.problem !== null) {
    return <ImportProblemDialog problem={importing.problem} onClose={importing.closeProblem} />;
  }
  if (damaged !== null) return <DamagedDialog damaged={damaged} onClose={closeDamaged} />;
  if (name === 'new') return <NewDesignDialog onClose={close} />;
  if (name === 'designs') {
    return <DesignsDialog onClose={close} onNew={() => open('new')} onImport={pickFile} />;
  }
  if (name === 'find') return <FinderDialog commands={commands} onClose={close} />;
  if (name === 'backup') return <BackupDialog onClose={close} />;
  if (name === 'versions') return <VersionsDialog onClose={close} />;
  if (name === 'export') return <ExportDialog onClose={close} />;
  if (name === 'settings') return <SettingsDialog onClose={close} />;
  return name === 'help' ? <HelpDialog onClose={close} /> : null;
}
