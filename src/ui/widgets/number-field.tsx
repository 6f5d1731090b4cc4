import { useId, useState } from 'react';
import styles from './field.module.css';
import { fitted, type NumberLimits, readNumber } from './number-text.ts';

interface NumberFieldProps extends NumberLimits {
  readonly label: string;
  readonly value: number;
  readonly onCommit: (value: number) => void;
  readonly unit?: string;
  readonly hideLabel?: boolean;
  readonly disabled?: boolean;
}

/**
 * A number that is taken over when it is finished: on Enter, on leaving and on the up and down arrows (ten
 * steps with Shift). Escape puts back what was there; so does leaving it with what is no number within limits.
 */
export function NumberField({
  label,
  value,
  onCommit,
  unit,
  hideLabel,
  disabled,
  ...limits
}: NumberFieldProps) {
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const read = draft === null ? { value } : readNumber(draft, limits);
  const problem = 'problem' in read ? read.problem : undefined;
  const commit = (next: number) => {
    setDraft(null);
    if (next !== value) onCommit(next);
  };
  const finish = () => {
    if ('value' in read) commit(read.value);
    else setDraft(null);
  };
  const stepBy = (steps: number) =>
    commit(fitted(('value' in read ? read.value : value) + steps * limits.step, limits));
  return (
    <div className={styles.field}>
      <label htmlFor={id} className={hideLabel === true ? styles.hidden : styles.label}>
        {label}
      </label>
      <span className={styles.row}>
        <input
          id={id}
          type="text"
          inputMode="decimal"
          role="spinbutton"
          aria-valuenow={value}
          aria-valuemin={limits.min}
          aria-valuemax={limits.max}
          aria-valuetext={unit === undefined ? undefined : `${value} ${unit}`}
          aria-invalid={problem === undefined ? undefined : true}
          aria-describedby={problem === undefined ? undefined : `${id}-about`}
          className={`${styles.input} ${styles.number}`}
          value={draft ?? String(value)}
          disabled={disabled}
          autoComplete="off"
          onChange={(event) => setDraft(event.target.value)}
          onBlur={finish}
          onKeyDown={(event) => {
            if (event.key === 'Enter') {
              event.preventDefault();
              if (problem === undefined) finish();
            }
            if (event.key === 'Escape' && draft !== null) {
              event.preventDefault();
              event.stopPropagation();
              setDraft(null);
            }
            if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
            event.preventDefault();
            stepBy((event.key === 'ArrowUp' ? 1 : -1) * (event.shiftKey ? 10 : 1));
          }}
        />
        {unit !== undefined && (
          <span className={styles.unit} aria-hidden="true">
            {unit}
          </span>
        )}
      </span>
      {problem !== undefined && (
        <span id={`${id}-about`} className={styles.error}>
          {problem}
        </span>
      )}
    </div>
  );
}
