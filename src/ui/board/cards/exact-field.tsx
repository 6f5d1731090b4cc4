import { useState } from 'react';
import { TextField } from '../../widgets/text-field.tsx';

/**
 * A line of text that is taken over as it is, spaces included, when it is finished: on Enter and on leaving. Escape
 * puts back what was there; so does leaving it with a text that `problemOf` objects to.
 */
export function ExactField({
  label,
  value,
  problemOf,
  onCommit,
}: {
  readonly label: string;
  readonly value: string;
  /** What is wrong with a text, in a sentence; undefined where nothing is. */
  readonly problemOf: (text: string) => string | undefined;
  readonly onCommit: (text: string) => void;
}) {
  const [draft, setDraft] = useState<string | null>(null);
  const problem = draft === null ? undefined : problemOf(draft);
  const finish = () => {
    setDraft(null);
    if (draft !== null && problem === undefined && draft !== value) onCommit(draft);
  };
  return (
    <TextField
      label={label}
      value={draft ?? value}
      // An empty field is where one begins, not yet a fault.
      error={draft === '' ? undefined : problem}
      autoComplete="off"
      spellCheck={false}
      onChange={setDraft}
      onFocus={(event) => event.target.select()}
      onBlur={finish}
      onKeyDown={(event) => {
        if (event.key === 'Enter') finish();
        if (event.key !== 'Escape' || draft === null) return;
        event.preventDefault();
        event.stopPropagation();
        setDraft(null);
      }}
    />
  );
}
