import { useId } from 'react';
import styles from './rehearse.module.css';

/** A text of several lines with its label. */
export function TextArea({
  label,
  value,
  onChange,
  onBlur,
  placeholder,
  hint,
}: {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly onBlur?: () => void;
  readonly placeholder?: string;
  readonly hint?: string;
}) {
  const id = useId();
  return (
    <div className={styles.area}>
      <label htmlFor={id}>{label}</label>
      <textarea
        id={id}
        value={value}
        placeholder={placeholder}
        spellCheck={false}
        aria-describedby={hint === undefined ? undefined : `${id}-hint`}
        onChange={({ target }) => onChange(target.value)}
        onBlur={onBlur}
      />
      {hint !== undefined && (
        <span id={`${id}-hint`} className={styles.hint}>
          {hint}
        </span>
      )}
    </div>
  );
}
