import { withMirroredLeft, withOwnLeft } from '../../../../core/board/halves.ts';
import type { Hand, MadeFrom } from '../../../../core/keymap/types.ts';
import { Choice } from '../../../widgets/choice.tsx';
import styles from './panel.module.css';
import { type ShapeParameter, ShapeSliders } from './shape-slider.tsx';
import type { Shaping } from './use-shaping.ts';

const MIRRORED = [
  { value: 'mirrored', label: 'Mirrored' },
  { value: 'own', label: 'Each its own' },
] as const;

const HANDS = [
  { value: 'left', label: 'Left' },
  { value: 'right', label: 'Right' },
] as const;

/** How the halves lie to each other, and whether they are shaped alike. */
export function HalvesPanel({
  madeFrom,
  shaping,
  hand,
  onHand,
}: {
  readonly madeFrom: MadeFrom;
  readonly shaping: Shaping;
  readonly hand: Hand;
  readonly onHand: (hand: Hand) => void;
}) {
  const { left } = madeFrom;
  return (
    <div className={styles.fields}>
      <Choice
        label="Shape of the halves"
        value={left === undefined ? 'mirrored' : 'own'}
        options={MIRRORED}
        onChange={(how) =>
          how === 'own'
            ? shaping.commit('Give each half its own shape', withOwnLeft(madeFrom))
            : shaping.commit('Mirror the right half', withMirroredLeft(madeFrom))
        }
      />
      {left !== undefined && (
        <Choice label="The numbers below are of the half" value={hand} options={HANDS} onChange={onHand} />
      )}
      <ShapeSliders parameters={[gapOf(madeFrom), ...turnsOf(madeFrom)]} shaping={shaping} />
      <p className={styles.quiet}>A turn below 0 brings the tops together, above 0 the thumbs.</p>
    </div>
  );
}

function gapOf(madeFrom: MadeFrom): ShapeParameter {
  const made = (gapMm: number): MadeFrom => ({ ...madeFrom, gapMm });
  const value = madeFrom.gapMm;
  return { label: 'Gap between the halves', unit: 'mm', value, limits: [0, 600], step: 1, made };
}

/** How halves are turned: both alike, or each for itself, and then also how far the left one lies lower. */
function turnsOf(madeFrom: MadeFrom): readonly ShapeParameter[] {
  const { left } = madeFrom;
  const turn = { unit: '°', limits: [-45, 45], step: 0.5 } as const;
  const right: Omit<ShapeParameter, 'label'> = {
    ...turn,
    value: madeFrom.turnDeg,
    made: (turnDeg) => ({ ...madeFrom, turnDeg }),
  };
  if (left === undefined) return [{ ...right, label: 'Turn of the halves' }];
  const withLeft = (change: Partial<typeof left>): MadeFrom => ({
    ...madeFrom,
    left: { ...left, ...change },
  });
  return [
    {
      ...turn,
      label: 'Turn of the left half',
      value: left.turnDeg,
      made: (turnDeg) => withLeft({ turnDeg }),
    },
    { ...right, label: 'Turn of the right half' },
    {
      label: 'Left half nearer to you by',
      unit: 'mm',
      value: left.downMm,
      limits: [-150, 150],
      step: 1,
      made: (downMm) => withLeft({ downMm }),
    },
  ];
}
