import type { ImportProblem } from '../../../store/keeping/read-import.ts';
import { Button } from '../../widgets/button.tsx';
import { Dialog } from '../../widgets/dialog.tsx';
import { ProblemList } from './problem-list.tsx';

/** Says why a file was not taken in, and that nothing has changed. */
export function ImportProblemDialog({
  problem,
  onClose,
}: {
  readonly problem: ImportProblem;
  readonly onClose: () => void;
}) {
  return (
    <Dialog
      title="This cannot be read as a keymap"
      onClose={onClose}
      footer={<Button onClick={onClose}>Close</Button>}
    >
      <p>{problem.source} was not imported. The open design is as it was.</p>
      <ProblemList problems={problem.problems} />
    </Dialog>
  );
}
