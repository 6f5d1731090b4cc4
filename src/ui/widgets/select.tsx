import { useId } from 'react';
import styles from './field.module.css';

export interface SelectOption<Value extends string> {
  readonly value: Value;
  readonly label: string;
  /** Options that name the same group stand under its heading. */
  readonly group?: string;
}

/** A choice of one out of a list, by the platform's own control. */
export function Select<Value extends string>({
  label,
  value,
  options,
  onChange,
  hideLabel,
  disabled,
}: {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly SelectOption<Value>[];
  readonly onChange: (value: Value) => void;
  readonly hideLabel?: boolean;
  readonly disabled?: boolean;
}) {
  const id = useId();
  const groups = [...new Set(options.map((option) => option.group))];
  const optionsOf = (group: string | undefined) =>
    options
      .filter((option) => option.group === group)
      .map((option) => (
        <option key={option.value} value={option.value}>
          {option.label}
        </option>
      ));
  return (
    <div className={styles.field}>
      <label htmlFor={id} className={hideLabel === true ? styles.hidden : styles.label}>
        {label}
      </label>
      <select
        id={id}
        className={styles.input}
        value={value}
        disabled={disabled}
        onChange={(event) => {
          const chosen = options.find((option) => option.value === event.target.value);
          if (chosen !== undefined) onChange(chosen.value);
        }}
      >
        {groups.map((group) =>
          group === undefined ? (
            optionsOf(group)
          ) : (
            <optgroup key={group} label={group}>
              {optionsOf(group)}
            </optgroup>
          ),
        )}
      </select>
    </div>
  );
}
