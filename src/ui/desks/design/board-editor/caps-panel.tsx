import { atPitch, PITCHES } from '../../../../core/board/pitches.ts';
import type { MadeFrom } from '../../../../core/keymap/types.ts';
import { Choice } from '../../../widgets/choice.tsx';
import styles from './panel.module.css';
import { ShapeSliders } from './shape-slider.tsx';
import type { Shaping } from './use-shaping.ts';

const LENGTHS = [
  { field: 'pitchXMm', label: 'Pitch across', limits: [10, 40] },
  { field: 'pitchYMm', label: 'Pitch down', limits: [10, 40] },
  { field: 'capGapMm', label: 'Gap between caps', limits: [0, 5] },
] as const;

/** How far keys are apart, and how large their caps are. */
export function CapsPanel({ madeFrom, shaping }: { readonly madeFrom: MadeFrom; readonly shaping: Shaping }) {
  const pitch = PITCHES.find(({ xMm, yMm }) => xMm === madeFrom.pitchXMm && yMm === madeFrom.pitchYMm);
  return (
    <div className={styles.fields}>
      <Choice
        label="Distance from key to key"
        value={pitch?.id ?? ''}
        options={PITCHES.map(({ id, title }) => ({ value: id, label: title }))}
        onChange={(id) => {
          const chosen = PITCHES.find((each) => each.id === id);
          if (chosen !== undefined) shaping.commit('Change the pitch', atPitch(madeFrom, chosen));
        }}
      />
      <ShapeSliders
        shaping={shaping}
        parameters={LENGTHS.map(({ field, ...length }) => ({
          ...length,
          unit: 'mm',
          step: 0.05,
          value: madeFrom[field],
          made: (value) => ({ ...madeFrom, [field]: value }),
        }))}
      />
    </div>
  );
}
