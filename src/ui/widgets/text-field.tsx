import { type ComponentProps, useId } from 'react';
import styles from './field.module.css';

interface TextFieldProps extends Omit<ComponentProps<'input'>, 'value' | 'onChange' | 'type' | 'id'> {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** The label is read out but not shown. */
  readonly hideLabel?: boolean;
  /** What is wrong with the text, in a sentence. */
  readonly error?: string | undefined;
  readonly hint?: string | undefined;
  readonly type?: 'text' | 'search';
}

/** A line of text with its label; what is wrong with it stands under it and is read out. */
export function TextField({ label, onChange, hideLabel, error, hint, className, ...rest }: TextFieldProps) {
  const id = useId();
  const about = error ?? hint;
  return (
    <div className={className === undefined ? styles.field : `${styles.field} ${className}`}>
      <label htmlFor={id} className={hideLabel === true ? styles.hidden : styles.label}>
        {label}
      </label>
      <input
        type="text"
        {...rest}
        id={id}
        className={styles.input}
        aria-invalid={error === undefined ? undefined : true}
        aria-describedby={about === undefined ? undefined : `${id}-about`}
        onChange={(event) => onChange(event.target.value)}
      />
      {about !== undefined && (
        <span id={`${id}-about`} className={error === undefined ? styles.hint : styles.error}>
          {about}
        </span>
      )}
    </div>
  );
}

/** A field to search a list by; Escape empties it. */
export function SearchField({
  label,
  value,
  onChange,
  placeholder,
}: {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly placeholder?: string;
}) {
  return (
    <TextField
      type="search"
      label={label}
      hideLabel
      value={value}
      onChange={onChange}
      placeholder={placeholder ?? label}
      autoComplete="off"
      spellCheck={false}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || value === '') return;
        event.preventDefault();
        event.stopPropagation();
        onChange('');
      }}
    />
  );
}
