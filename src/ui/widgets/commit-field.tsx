import { useState } from 'react';
import { TextField } from './text-field.tsx';

/**
 * A line of text that is taken over when it is finished: on Enter and on leaving. Escape puts back what was
 * there; so does leaving it with a text that `problemOf` objects to.
 */
export function CommitField({
  label,
  value,
  onCommit,
  problemOf,
  hideLabel,
  maxLength,
  className,
  autoFocus,
  onDone,
}: {
  readonly label: string;
  readonly value: string;
  readonly onCommit: (value: string) => void;
  /** What is wrong with a text, in a sentence; undefined where nothing is. */
  readonly problemOf?: (value: string) => string | undefined;
  readonly hideLabel?: boolean;
  readonly maxLength?: number;
  readonly className?: string | undefined;
  readonly autoFocus?: boolean;
  /** Called when the field is left or given up, for fields that are there for one change only. */
  readonly onDone?: () => void;
}) {
  const [draft, setDraft] = useState<string | null>(null);
  const text = draft ?? value;
  const problem = draft === null ? undefined : problemOf?.(draft.trim());
  const finish = () => {
    const trimmed = draft?.trim();
    if (trimmed !== undefined && problem === undefined && trimmed !== value) onCommit(trimmed);
    setDraft(null);
    onDone?.();
  };
  return (
    <TextField
      label={label}
      hideLabel={hideLabel ?? false}
      className={className}
      value={text}
      maxLength={maxLength}
      error={problem}
      autoFocus={autoFocus}
      onChange={setDraft}
      onBlur={finish}
      onKeyDown={(event) => {
        if (event.key === 'Enter' && problem === undefined) {
          event.preventDefault();
          finish();
        }
        if (event.key === 'Escape' && (draft !== null || onDone !== undefined)) {
          event.preventDefault();
          event.stopPropagation();
          setDraft(null);
          onDone?.();
        }
      }}
    />
  );
}
