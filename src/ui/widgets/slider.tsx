import { useState } from 'react';
import styles from './field.module.css';
import { NumberField } from './number-field.tsx';
import { fitted, type NumberLimits } from './number-text.ts';

interface SliderProps extends NumberLimits {
  readonly label: string;
  readonly value: number;
  /** Called once when the thumb is let go or a number is finished. */
  readonly onCommit: (value: number) => void;
  /** Called while the thumb moves, and with null when it is let go or the move is given up. */
  readonly onPreview?: (value: number | null) => void;
  readonly unit?: string;
  readonly disabled?: boolean;
}

/** A slider with its number beside it. A drag previews and commits once; Escape gives it up. */
export function Slider({ label, value, onCommit, onPreview, unit, disabled, ...limits }: SliderProps) {
  const [draft, setDraft] = useState<number | null>(null);
  const preview = (next: number | null) => {
    setDraft(next);
    onPreview?.(next);
  };
  const finish = () => {
    if (draft === null) return;
    preview(null);
    if (draft !== value) onCommit(draft);
  };
  const now = draft ?? value;
  return (
    <div className={styles.field}>
      <span className={styles.label} aria-hidden="true">
        {label}
      </span>
      <span className={styles.row}>
        <input
          type="range"
          className={styles.range}
          aria-label={label}
          aria-valuetext={unit === undefined ? undefined : `${now} ${unit}`}
          min={limits.min}
          max={limits.max}
          step={limits.step}
          value={now}
          disabled={disabled}
          onChange={(event) => preview(fitted(event.target.valueAsNumber, limits))}
          onPointerUp={finish}
          onKeyUp={finish}
          onBlur={finish}
          onKeyDown={(event) => {
            if (event.key !== 'Escape' || draft === null) return;
            event.stopPropagation();
            preview(null);
          }}
        />
        <NumberField
          label={`${label}, number`}
          hideLabel
          value={now}
          onCommit={onCommit}
          {...(unit === undefined ? {} : { unit })}
          disabled={disabled ?? false}
          {...limits}
        />
      </span>
    </div>
  );
}
