import { useMemo } from 'react';
import type { Checked } from '../../../core/check/given-keys.ts';
import type { StepResult } from '../../../core/check/judge.ts';
import type { CheckStep } from '../../../core/check/steps.ts';
import type { CheckRoom } from '../../../store/check/check.ts';
import { keyLights } from '../../board/key-lights.ts';
import { StillBoard } from '../../board/still-board.tsx';
import styles from './check.module.css';

/** The board with what is asked for lit up, its moves numbered; or with what came wrong. */
export function CheckBoard({
  room,
  step,
  checked,
}: {
  readonly room: CheckRoom;
  readonly step: CheckStep | null;
  readonly checked: readonly Checked[];
}) {
  const { keymap, known } = room;
  const base = keymap.layers[0]?.id ?? '';
  const layer = step !== null && 'place' in step.at ? step.at.place.layer : base;
  const wrong = useMemo(
    () => new Set(checked.filter(({ result }) => isWrong(result)).flatMap(({ step: { keys } }) => keys)),
    [checked],
  );
  const lights = useMemo(() => keyLights(step === null ? null : litFor(step)), [step]);
  return (
    <div className={styles.board}>
      <StillBoard
        keymap={keymap}
        host={known.host}
        layer={layer}
        marked={step === null ? wrong : new Set(lights.keys())}
        lights={lights}
        title={step === null ? 'The board, with the keys that went wrong' : 'The board, with what to press'}
      />
    </div>
  );
}

const isWrong = ({ verdict }: StepResult) => verdict !== 'right';

function litFor(step: CheckStep) {
  const pressed = step.way.filter(({ move }) => move !== 'release');
  const order = pressed.flatMap(({ move, keys }) => keys.map((key) => ({ key, held: move === 'hold' })));
  return { why: '', keys: step.keys, chords: [], layers: [], order };
}
