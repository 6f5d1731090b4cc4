import { withHalf } from '../../../../core/board/halves.ts';
import { halfOf } from '../../../../core/board/parametric.ts';
import type { Hand, MadeFrom } from '../../../../core/keymap/types.ts';
import { NumberField } from '../../../widgets/number-field.tsx';
import styles from './panel.module.css';
import { type ShapeParameter, ShapeSliders } from './shape-slider.tsx';
import type { Shaping } from './use-shaping.ts';

type Thumb = MadeFrom['thumb'];
type Field = Exclude<keyof Thumb, 'keys'>;

const SLIDERS: readonly (Omit<ShapeParameter, 'value' | 'made'> & { readonly field: Field })[] = [
  { field: 'inwardsMm', label: 'Inner thumb key inwards', unit: 'mm', limits: [-150, 150], step: 0.5 },
  { field: 'downMm', label: 'Inner thumb key down', unit: 'mm', limits: [-150, 150], step: 0.5 },
  { field: 'turnDeg', label: 'Turn of the inner thumb key', unit: '°', limits: [-90, 90], step: 1 },
  { field: 'stepDeg', label: 'Turn from thumb key to thumb key', unit: '°', limits: [-45, 45], step: 0.5 },
  { field: 'radiusMm', label: 'Radius of the thumb arc', unit: 'mm', limits: [20, 300], step: 1 },
];

/** The thumb's arc: how many keys, where the inner one lies, how they follow each other. */
export function ThumbPanel({
  madeFrom,
  shaping,
  hand,
}: {
  readonly madeFrom: MadeFrom;
  readonly shaping: Shaping;
  readonly hand: Hand;
}) {
  const { thumb } = halfOf(madeFrom, hand);
  const made = (change: Partial<Thumb>) => withHalf(madeFrom, hand, { thumb: { ...thumb, ...change } });
  return (
    <div className={styles.fields}>
      <NumberField
        label="Thumb keys of each hand"
        value={thumb.keys}
        min={0}
        max={6}
        step={1}
        onCommit={(keys) => shaping.commit('Change the thumb keys', made({ keys: Math.round(keys) }))}
      />
      {thumb.keys > 0 && (
        <ShapeSliders
          shaping={shaping}
          parameters={SLIDERS.filter(({ field }) => field !== 'radiusMm' || thumb.stepDeg !== 0).map(
            ({ field, ...slider }) => ({
              ...slider,
              value: thumb[field],
              made: (value) => made({ [field]: value }),
            }),
          )}
        />
      )}
    </div>
  );
}
