import { useState } from 'react';
import type { KeyId } from '../../../../core/keymap/types.ts';
import type { Run } from '../../../../core/rehearse/run.ts';
import { useBench } from '../../../../store/bench.ts';
import { overlaysFor, useChosenOverlay, useKeptOverlays } from '../../../../store/rehearse/kept-overlays.ts';
import { useRehearsal } from '../../../../store/rehearse/rehearsal.ts';
import { useTried } from '../../../../store/rehearse/use-runs.ts';
import { Button } from '../../../widgets/button.tsx';
import { Select } from '../../../widgets/select.tsx';
import { OverlayBoard } from '../overlay/overlay-board.tsx';
import { OverlayDialog } from '../overlay/overlay-dialog.tsx';
import styles from '../rehearse.module.css';
import { TextArea } from '../text-area.tsx';
import { takenKeys } from './source-words.ts';

/** The user types on a keyboard at hand; its keys stand in for the board's. */
export function TypeIt({
  toType,
  onToType,
}: {
  readonly toType: string;
  readonly onToType: (text: string) => void;
}) {
  const board = useBench((bench) => bench.keymap.board);
  const kept = useKeptOverlays();
  const chosen = useChosenOverlay(board);
  const { keymap, host } = useTried();
  const startTyping = useRehearsal((state) => state.startTyping);
  const live = useRehearsal((state) => state.live);
  const down = live === null ? [] : keysDown(live.run);
  const [isEditing, setEditing] = useState(false);
  const all = overlaysFor(board, kept.things);
  const warnings = takenKeys(Object.keys(chosen.overlay.keys), false);
  return (
    <>
      <Select
        label="Keyboard at hand, laid onto the board"
        value={chosen.overlay.id}
        options={all.map(({ id, title }) => ({ value: id, label: title }))}
        onChange={chosen.choose}
      />
      <OverlayBoard board={board} overlay={chosen.overlay} down={down} />
      <div className={styles.buttons}>
        <Button onClick={() => setEditing(true)}>Change which key is which…</Button>
      </div>
      <TextArea
        label="Text to type, if you like"
        value={toType}
        onChange={onToType}
        hint="With a text, slips are marked as soon as you stop."
      />
      {warnings.map((warning) => (
        <p key={warning} className={styles.hint}>
          {warning}
        </p>
      ))}
      <div className={styles.buttons}>
        <Button tone="accent" disabled={live !== null} onClick={() => startTyping(keymap, host)}>
          Start typing
        </Button>
      </div>
      <p className={styles.hint}>
        While you type, every key goes to the board. Hold Esc for a second to stop. Rest when a hand tires,
        and see a professional if it hurts.
      </p>
      {isEditing && <OverlayDialog overlay={chosen.overlay} onClose={() => setEditing(false)} />}
    </>
  );
}

/** So many presses back a key may still be down: more fingers than anybody has. */
const FINGERS = 20;

function keysDown({ presses }: Run): readonly KeyId[] {
  return presses.slice(-FINGERS).flatMap(({ key, up }) => (up === null ? [key] : []));
}
