import { useMemo, useState } from 'react';
import { keyName } from '../../../../core/board/key-name.ts';
import type { Taps } from '../../../../core/board/lay-rows.ts';
import { boardRows } from '../../../../core/board/rows.ts';
import { isOneCharacter } from '../../../../core/keymap/need.ts';
import type { Action, KeyId } from '../../../../core/keymap/types.ts';
import { useBench } from '../../../../store/bench.ts';
import { Button } from '../../../widgets/button.tsx';
import styles from './fill.module.css';

/** Goes from key to key in reading order; the typist types what each one gives. Tab leaves a key as it is. */
export function WalkKeys({ onFill }: { readonly onFill: (taps: Taps) => void }) {
  const board = useBench((bench) => bench.keymap.board);
  const order = useMemo(() => boardRows(board).flat(), [board]);
  const [taps, setTaps] = useState<Readonly<Record<KeyId, Action>>>({});
  const [at, setAt] = useState(0);
  const key = order[at];
  const typed = (text: string) => {
    const char = text.normalize('NFC');
    if (key === undefined || !isOneCharacter(char)) return;
    setTaps({ ...taps, [key]: { do: 'char', char } });
    setAt(at + 1);
  };
  return (
    <div className={styles.walk}>
      {key === undefined ? (
        <p>That was the last key.</p>
      ) : (
        <label className={styles.step}>
          <span>
            Key {at + 1} of {order.length}: <b>{keyName(board, key)}</b>. Type what it gives.
          </span>
          <input
            // biome-ignore lint/a11y/noAutofocus: typing is all that this view is for, and it was opened for it
            autoFocus
            value=""
            autoComplete="off"
            spellCheck={false}
            onChange={(event) => typed(event.target.value)}
          />
        </label>
      )}
      <p className={styles.about} aria-live="polite">
        {order
          .slice(0, at)
          .map((id) => charOf(taps[id]))
          .join(' ') || ' '}
      </p>
      <div className={styles.buttons}>
        <Button disabled={at === 0} onClick={() => setAt(at - 1)}>
          Back
        </Button>
        <Button disabled={key === undefined} onClick={() => setAt(at + 1)}>
          Leave this key as it is
        </Button>
        <Button tone="accent" disabled={Object.keys(taps).length === 0} onClick={() => onFill(taps)}>
          Fill {Object.keys(taps).length} keys
        </Button>
      </div>
    </div>
  );
}

function charOf(action: Action | undefined): string {
  return action?.do === 'char' ? action.char : '–';
}
