import { type KeyboardEvent, useId, useState } from 'react';
import type { HostLayout } from '../../../core/host/host-layout.ts';
import { codeInWords } from '../../../core/host/legend.ts';
import type { Code } from '../../../core/keymap/codes.ts';
import { TextField } from '../../widgets/text-field.tsx';
import styles from './cards.module.css';
import { type FoundCode, searchCodes } from './code-search.ts';

/** How many matches are shown. */
const MOST = 8;

/** A key chosen by searching its name: type, walk the matches with the arrows, Enter takes one. */
export function CodeField({
  label,
  value,
  host,
  onChoose,
}: {
  readonly label: string;
  readonly value: Code | null;
  readonly host: HostLayout | null;
  readonly onChoose: (code: Code) => void;
}) {
  const id = useId();
  const [search, setSearch] = useState<string | null>(null);
  const [at, setAt] = useState(0);
  const found = search === null ? [] : searchCodes(search, host, MOST);
  const close = () => {
    setSearch(null);
    setAt(0);
  };
  const choose = (choice: FoundCode | undefined) => {
    if (choice === undefined) return;
    close();
    onChoose(choice.code);
  };
  const pressed = (event: KeyboardEvent) => {
    if (search === null) return;
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step !== undefined) setAt(Math.max(0, Math.min(at + step, found.length - 1)));
    if (event.key === 'Enter') choose(found[at]);
    if (event.key === 'Escape') close();
    if (step !== undefined || event.key === 'Enter' || event.key === 'Escape') {
      event.preventDefault();
      event.stopPropagation();
    }
  };
  return (
    <div className={styles.codeField}>
      <TextField
        label={label}
        value={search ?? (value === null ? '' : codeInWords(value, host))}
        placeholder="Search a key by its name"
        role="combobox"
        aria-expanded={search !== null}
        aria-controls={`${id}-list`}
        aria-autocomplete="list"
        aria-activedescendant={found[at] === undefined ? undefined : `${id}-${found[at].code}`}
        autoComplete="off"
        spellCheck={false}
        onChange={(text) => {
          setSearch(text);
          setAt(0);
        }}
        onFocus={(event) => event.target.select()}
        onBlur={close}
        onKeyDown={pressed}
      />
      <div
        id={`${id}-list`}
        role="listbox"
        aria-label="Keys found"
        className={styles.found}
        hidden={found.length === 0}
      >
        {found.map((choice, index) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the field has the focus and hears the keys
          <div
            key={choice.code}
            id={`${id}-${choice.code}`}
            role="option"
            tabIndex={-1}
            aria-selected={index === at}
            className={styles.choice}
            // The field would lose the focus, and with it the list, before the click.
            onPointerDown={(event) => event.preventDefault()}
            onClick={() => choose(choice)}
          >
            {choice.words}
          </div>
        ))}
      </div>
    </div>
  );
}
