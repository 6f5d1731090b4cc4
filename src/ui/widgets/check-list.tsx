import styles from './check-list.module.css';

export interface CheckOption<Value extends string> {
  readonly value: Value;
  readonly label: string;
  readonly hint?: string;
}

/** Any number out of a few, all of them in view. */
export function CheckList<Value extends string>({
  label,
  values,
  options,
  onChange,
}: {
  readonly label: string;
  readonly values: readonly Value[];
  readonly options: readonly CheckOption<Value>[];
  /** The chosen values, in the order of the options. */
  readonly onChange: (values: readonly Value[]) => void;
}) {
  const changed = (value: Value, on: boolean) => {
    const chosen = new Set(values);
    if (on) chosen.add(value);
    else chosen.delete(value);
    onChange(options.map((option) => option.value).filter((each) => chosen.has(each)));
  };
  return (
    <fieldset className={styles.list}>
      <legend className={styles.legend}>{label}</legend>
      <div className={styles.options}>
        {options.map((option) => (
          <label key={option.value} className={styles.option}>
            <input
              type="checkbox"
              className={styles.box}
              checked={values.includes(option.value)}
              onChange={(event) => changed(option.value, event.target.checked)}
            />
            <span>
              {option.label}
              {option.hint !== undefined && <span className={styles.hint}> {option.hint}</span>}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
