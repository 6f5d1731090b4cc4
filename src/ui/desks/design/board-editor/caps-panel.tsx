import { atPitch, PITCHES } from '../../../../core/board/pitches.ts';
import type { MadeFrom } from '../../../../core/keymap/types.ts';
import { Choice } from '../../../widgets/choice.tsx';
import styles from './panel.module.css';
import { ShapeSlider } from './shape-slider.tsx';
import type { Shaping } from './use-shaping.ts';

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
      <ShapeSlider
        label="Pitch across"
        unit="mm"
        value={madeFrom.pitchXMm}
        limits={[10, 40]}
        step={0.05}
        shaping={shaping}
        made={(pitchXMm) => ({ ...madeFrom, pitchXMm })}
      />
      <ShapeSlider
        label="Pitch down"
        unit="mm"
        value={madeFrom.pitchYMm}
        limits={[10, 40]}
        step={0.05}
        shaping={shaping}
        made={(pitchYMm) => ({ ...madeFrom, pitchYMm })}
      />
      <ShapeSlider
        label="Gap between caps"
        unit="mm"
        value={madeFrom.capGapMm}
        limits={[0, 5]}
        step={0.05}
        shaping={shaping}
        made={(capGapMm) => ({ ...madeFrom, capGapMm })}
      />
    </div>
  );
}
