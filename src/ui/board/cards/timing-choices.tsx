import type { HoldBy } from '../../../core/keymap/types.ts';
import { Select } from '../../widgets/select.tsx';

/** The ways to tell a hold from a tap while the key is down, in words. */
export const HOLD_BY: readonly { readonly value: HoldBy; readonly label: string }[] = [
  { value: 'time-only', label: 'time only' },
  { value: 'press-inside', label: 'a press inside' },
  { value: 'tap-inside', label: 'a tap inside' },
];

/** The longest duration that a keymap holds, ms. */
export const LONGEST_MS = 10_000;

/** A way to tell in words. */
export function wordsOf(holdBy: HoldBy): string {
  return HOLD_BY.find(({ value }) => value === holdBy)?.label ?? holdBy;
}

function yesOrNo(value: boolean): 'yes' | 'no' {
  return value ? 'yes' : 'no';
}

/** Yes, no, or what the design says; null gives it back to the design. */
export function YesOrNo({
  label,
  value,
  whole,
  onChange,
}: {
  readonly label: string;
  readonly value: boolean | undefined;
  readonly whole: boolean;
  readonly onChange: (value: boolean | null) => void;
}) {
  return (
    <Select
      label={label}
      value={value === undefined ? 'default' : yesOrNo(value)}
      options={[
        { value: 'default', label: `the design’s: ${yesOrNo(whole)}` },
        { value: 'yes', label: 'yes' },
        { value: 'no', label: 'no' },
      ]}
      onChange={(next) => onChange(next === 'default' ? null : next === 'yes')}
    />
  );
}
