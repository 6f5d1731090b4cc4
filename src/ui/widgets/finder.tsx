import { useId, useRef, useState } from 'react';
import { Dialog } from './dialog.tsx';
import styles from './finder.module.css';
import { TextField } from './text-field.tsx';

/** Something that can be found by typing a part of its name. */
export interface Findable {
  readonly id: string;
  readonly label: string;
  /** Other words by which it is found, though not as readily. */
  readonly also?: string;
  /** What kind of thing it is, or how it stands. */
  readonly hint: string;
  readonly onChoose: () => void;
}

/** A dialog with one field and what it finds: arrows move, Enter chooses, a click does both. */
export function Finder({
  title,
  placeholder,
  find,
  onClose,
}: {
  readonly title: string;
  /** What can be found, for as long as nothing is typed. */
  readonly placeholder: string;
  readonly find: (query: string) => readonly Findable[];
  readonly onClose: () => void;
}) {
  const [query, setQuery] = useState('');
  const [at, setAt] = useState(0);
  const list = useRef<HTMLDivElement>(null);
  const id = useId();
  const found = find(query);
  const choose = (one: Findable | undefined) => {
    if (one === undefined) return;
    onClose();
    one.onChoose();
  };
  const moveTo = (next: number) => {
    setAt(next);
    list.current?.children[next]?.scrollIntoView({ block: 'nearest' });
  };
  return (
    <Dialog title={title} onClose={onClose}>
      <TextField
        label={title}
        hideLabel
        placeholder={placeholder}
        autoFocus
        autoComplete="off"
        spellCheck={false}
        role="combobox"
        aria-expanded
        aria-controls={id}
        aria-activedescendant={found[at] === undefined ? undefined : `${id} ${at}`}
        value={query}
        onChange={(text) => {
          setQuery(text);
          moveTo(0);
        }}
        onKeyDown={(event) => {
          if (event.key === 'ArrowDown') moveTo(Math.min(at + 1, found.length - 1));
          else if (event.key === 'ArrowUp') moveTo(Math.max(at - 1, 0));
          else if (event.key === 'Enter') choose(found[at]);
          else return;
          event.preventDefault();
        }}
      />
      <div ref={list} id={id} role="listbox" aria-label="Found" className={styles.list}>
        {found.map((one, index) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the field above has the keys
          <div
            key={one.id}
            id={`${id} ${index}`}
            role="option"
            tabIndex={-1}
            aria-selected={index === at}
            className={styles.option}
            onPointerMove={() => setAt(index)}
            onClick={() => choose(one)}
          >
            <span className={styles.label}>{one.label}</span>
            <span className={styles.hint}>{one.hint}</span>
          </div>
        ))}
      </div>
      {found.length === 0 && <p role="status">Nothing here goes by that name.</p>}
    </Dialog>
  );
}
