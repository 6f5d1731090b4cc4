import { type ReactNode, useId } from 'react';
import styles from './choice.module.css';

export interface ChoiceOption<Value extends string> {
  readonly value: Value;
  readonly label: string;
  /** Shown in place of the label, which is read out all the same. */
  readonly picture?: ReactNode;
  readonly hint?: string;
}

/** One out of a few, all of them in view: radio buttons, as a row of words or as cards with pictures. */
export function Choice<Value extends string>({
  label,
  value,
  options,
  onChange,
  look = 'row',
  hideLabel,
}: {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly ChoiceOption<Value>[];
  readonly onChange: (value: Value) => void;
  readonly look?: 'row' | 'cards';
  readonly hideLabel?: boolean;
}) {
  const name = useId();
  return (
    <fieldset className={styles.choice} data-look={look}>
      <legend className={hideLabel === true ? styles.hidden : styles.legend}>{label}</legend>
      <div className={styles.options}>
        {options.map((option) => (
          <label key={option.value} className={styles.option}>
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
              className={styles.radio}
            />
            {option.picture}
            <span>{option.label}</span>
            {option.hint !== undefined && <span className={styles.hint}>{option.hint}</span>}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
