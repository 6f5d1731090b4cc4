import { useRef, useState } from 'react';
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

/**
 * A slider with its number beside it. A drag previews and commits once; Escape gives it up, and what a thumb that is still
 * held does from then on is nothing.
 */
export function Slider({ label, value, onCommit, onPreview, unit, disabled, ...limits }: SliderProps) {
  const [draft, setDraft] = useState<number | null>(null);
  const isGivenUp = useRef(false);
  const preview = (next: number | null) => {
    setDraft(next);
    onPreview?.(next);
  };
  const finish = () => {
    if (draft === null) return;
    preview(null);
    if (draft !== value) onCommit(draft);
  };
  const begin = () => {
    isGivenUp.current = false;
  };
  const giveUp = () => {
    isGivenUp.current = true;
    preview(null);
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
          onChange={(event) => {
            if (!isGivenUp.current) preview(fitted(event.target.valueAsNumber, limits));
          }}
          onPointerDown={begin}
          onPointerUp={finish}
          onKeyUp={finish}
          onBlur={finish}
          onKeyDown={(event) => {
            if (event.key !== 'Escape') return begin();
            if (draft === null) return;
            // Neither a card nor the browser's own dialog closes by it.
            event.preventDefault();
            event.stopPropagation();
            giveUp();
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
