import type { BoardLosses } from '../../../../core/board/what-is-lost.ts';
import { Button } from '../../../widgets/button.tsx';
import { Dialog } from '../../../widgets/dialog.tsx';
import styles from './panel.module.css';
import { keptWords, lossLines } from './shape-words.ts';

/** Asks before a board is used by which something loses its place, and says all that does. */
export function UseDialog({
  losses,
  onUse,
  onClose,
}: {
  readonly losses: BoardLosses;
  readonly onUse: () => void;
  readonly onClose: () => void;
}) {
  return (
    <Dialog
      title="Some of it has no place on this board"
      onClose={onClose}
      footer={
        <>
          <Button onClick={onClose}>Go on with the board</Button>
          <Button tone="danger" onClick={onUse}>
            Use it and let these go
          </Button>
        </>
      }
    >
      <p>{keptWords(losses)} This goes:</p>
      <ul className={styles.lines}>
        {lossLines(losses).map(({ id, text }) => (
          <li key={id}>{text}</li>
        ))}
      </ul>
      <p className={styles.quiet}>It is one step: Undo brings the board and all of this back.</p>
    </Dialog>
  );
}
