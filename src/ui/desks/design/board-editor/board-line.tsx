import { useBench } from '../../../../store/bench.ts';
import { useBoardDrafts } from '../../../../store/board-drafts.ts';
import { useSettings } from '../../../../store/settings/use-settings.ts';
import { Button } from '../../../widgets/button.tsx';
import styles from './board-editor.module.css';
import { isChanged, sizeWords } from './shape-words.ts';
import { useBoardWork } from './use-board-work.ts';

/** Which board the design is on, and the way to change it. */
export function BoardLine() {
  const board = useBench((bench) => bench.keymap.board);
  const readOnly = useBench((bench) => bench.readOnly);
  const isCarrying = useBench((bench) => bench.carried !== null);
  const open = useBoardDrafts((drafts) => drafts.open);
  const { draft } = useBoardWork();
  const units = useSettings((settings) => settings.units);
  return (
    <Button
      tone="quiet"
      className={styles.line}
      data-behind={isCarrying}
      title={sizeWords(board, units)}
      disabled={readOnly}
      onClick={open}
    >
      {isChanged(draft) ? 'Go on with the board…' : 'Change the board…'}
    </Button>
  );
}
