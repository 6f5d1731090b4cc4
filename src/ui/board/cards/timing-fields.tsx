import type { TimingChange } from '../../../core/keymap/edit.ts';
import { timingOf } from '../../../core/keymap/timing.ts';
import type { Binding, HoldBy, Keymap } from '../../../core/keymap/types.ts';
import { NumberField } from '../../widgets/number-field.tsx';
import { Select } from '../../widgets/select.tsx';
import styles from './cards.module.css';

interface TimingFieldsProps {
  readonly keymap: Keymap;
  readonly binding: Binding;
  readonly onChange: (timing: TimingChange) => void;
}

const DURATIONS = [
  { field: 'holdAfterMs', label: 'Hold after' },
  { field: 'quietBeforeMs', label: 'Quiet before' },
  { field: 'againWithinMs', label: 'Again within' },
] as const;

const HOLD_BY: readonly { readonly value: HoldBy; readonly label: string }[] = [
  { value: 'time-only', label: 'time only' },
  { value: 'press-inside', label: 'a press inside' },
  { value: 'tap-inside', label: 'a tap inside' },
];

/** The longest duration that a keymap holds, ms. */
const LONGEST_MS = 10_000;

/** How a key with a tap and a hold decides between them; each field says what holds where the binding says nothing. */
export function TimingFields({ keymap, binding, onChange }: TimingFieldsProps) {
  const now = timingOf(keymap, binding);
  const whole = timingOf(keymap);
  return (
    <div className={styles.timing}>
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
            {binding[field] === undefined ? (
              <span className={styles.default}>as the design</span>
            ) : (
              <button type="button" className={styles.reset} onClick={() => onChange({ [field]: null })}>
                as the design: {whole[field]}
              </button>
            )}
          </div>
        ))}
      </div>
      <Select
        label="Hold by"
        value={binding.holdBy ?? 'default'}
        options={[{ value: 'default', label: `the design’s: ${wordsOf(whole.holdBy)}` }, ...HOLD_BY]}
        onChange={(value) => onChange({ holdBy: value === 'default' ? null : value })}
      />
      <Select
        label="Same hand taps"
        value={binding.sameHandTaps === undefined ? 'default' : yesOrNo(binding.sameHandTaps)}
        options={[
          { value: 'default', label: `the design’s: ${yesOrNo(whole.sameHandTaps)}` },
          { value: 'yes', label: 'yes' },
          { value: 'no', label: 'no' },
        ]}
        onChange={(value) => onChange({ sameHandTaps: value === 'default' ? null : value === 'yes' })}
      />
    </div>
  );
}

function wordsOf(holdBy: HoldBy): string {
  return HOLD_BY.find(({ value }) => value === holdBy)?.label ?? holdBy;
}

function yesOrNo(value: boolean): 'yes' | 'no' {
  return value ? 'yes' : 'no';
}
