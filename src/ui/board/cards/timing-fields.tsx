import type { TimingChange } from '../../../core/keymap/edit.ts';
import { type EffectiveTiming, timingOf } from '../../../core/keymap/timing.ts';
import type { Binding, Keymap, Place } from '../../../core/keymap/types.ts';
import { NumberField } from '../../widgets/number-field.tsx';
import { Select } from '../../widgets/select.tsx';
import styles from './cards.module.css';
import { TimingChoice } from './timing-choice.tsx';
import { HOLD_BY, LONGEST_MS, wordsOf, YesOrNo } from './timing-choices.tsx';

interface TimingFieldsProps {
  readonly keymap: Keymap;
  readonly binding: Binding;
  readonly place: Place;
  readonly onChange: (timing: TimingChange) => void;
}

const DURATIONS = [
  { field: 'quietBeforeMs', label: 'Quiet before' },
  { field: 'againWithinMs', label: 'Again within' },
] as const;

/** How a key with a tap and a hold decides between them; each field says what holds where the binding says nothing. */
export function TimingFields({ keymap, binding, place, onChange }: TimingFieldsProps) {
  const now = timingOf(keymap, binding);
  const whole = timingOf(keymap);
  return (
    <div className={styles.timing}>
      <TimingChoice keymap={keymap} binding={binding} place={place} onChange={onChange}>
        <AsTheDesign field="holdAfterMs" binding={binding} whole={whole} onChange={onChange} />
      </TimingChoice>
      <div className={styles.durations}>
        {DURATIONS.map(({ field, label }) => (
          <div key={field} className={styles.duration}>
            <NumberField
              label={label}
              unit="ms"
              value={now[field]}
              min={0}
              max={LONGEST_MS}
              step={5}
              onCommit={(value) => onChange({ [field]: value })}
            />
            <AsTheDesign field={field} binding={binding} whole={whole} onChange={onChange} />
          </div>
        ))}
      </div>
      <Select
        label="Hold by"
        value={binding.holdBy ?? 'default'}
        options={[{ value: 'default', label: `the design’s: ${wordsOf(whole.holdBy)}` }, ...HOLD_BY]}
        onChange={(value) => onChange({ holdBy: value === 'default' ? null : value })}
      />
      <YesOrNo
        label="Same hand taps"
        value={binding.sameHandTaps}
        whole={whole.sameHandTaps}
        onChange={(sameHandTaps) => onChange({ sameHandTaps })}
      />
      <YesOrNo
        label="Tap if held alone"
        value={binding.tapIfAlone}
        whole={whole.tapIfAlone}
        onChange={(tapIfAlone) => onChange({ tapIfAlone })}
      />
    </div>
  );
}

/** Says that a duration is the design's, or gives it back to the design. */
function AsTheDesign({
  field,
  binding,
  whole,
  onChange,
}: {
  readonly field: 'holdAfterMs' | 'quietBeforeMs' | 'againWithinMs';
  readonly binding: Binding;
  readonly whole: EffectiveTiming;
  readonly onChange: (timing: TimingChange) => void;
}) {
  if (binding[field] === undefined) return <span className={styles.default}>as the design</span>;
  return (
    <button type="button" className={styles.reset} onClick={() => onChange({ [field]: null })}>
      as the design: {whole[field]}
    </button>
  );
}
