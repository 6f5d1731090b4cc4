import { type KeyboardEvent, type ReactNode, useEffect, useRef, useState } from 'react';
import { Button } from './button.tsx';
import styles from './menu.module.css';
import { itemAfterKey } from './menu-keys.ts';
import { Popover } from './popover.tsx';

export type MenuItem =
  | {
      readonly label: string;
      readonly onSelect: () => void;
      /** Tells items apart whose labels may be the same. */
      readonly key?: string;
      /** Small print at the right, such as a shortcut. */
      readonly hint?: string;
      readonly disabled?: boolean;
      /** Present on items of which one is in force. */
      readonly checked?: boolean;
      readonly tone?: 'danger';
    }
  | 'line';

/** A button that opens a list of commands: arrows, Home, End and first letters move, Enter and Space choose. */
export function MenuButton({
  label,
  items,
  children,
  tone = 'quiet',
  className,
}: {
  readonly label: string;
  readonly items: readonly MenuItem[];
  readonly children?: ReactNode;
  readonly tone?: 'plain' | 'quiet';
  readonly className?: string | undefined;
}) {
  const anchor = useRef<HTMLButtonElement>(null);
  const [open, setOpen] = useState(false);
  return (
    <>
      <Button
        ref={anchor}
        tone={tone}
        className={className}
        aria-haspopup="menu"
        aria-expanded={open}
        aria-label={children === undefined ? undefined : label}
        title={children === undefined ? undefined : label}
        onClick={() => setOpen(!open)}
        onKeyDown={(event) => {
          if (event.key === 'ArrowDown') {
            event.preventDefault();
            setOpen(true);
          }
        }}
      >
        {children ?? (
          <>
            {label}
            <span className={styles.caret} aria-hidden="true" />
          </>
        )}
      </Button>
      {open && (
        <Popover anchor={anchor} onClose={() => setOpen(false)} label={label} role="menu">
          <MenuList items={items} close={() => setOpen(false)} />
        </Popover>
      )}
    </>
  );
}

function roleOf(checked: boolean | undefined) {
  return checked === undefined ? { role: 'menuitem' } : { role: 'menuitemradio', 'aria-checked': checked };
}

function MenuList({ items, close }: { readonly items: readonly MenuItem[]; readonly close: () => void }) {
  const list = useRef<HTMLDivElement>(null);
  const buttons = () => [
    ...(list.current?.querySelectorAll<HTMLButtonElement>('button:not(:disabled)') ?? []),
  ];
  // After the popover has been shown: what is hidden cannot take the focus.
  useEffect(() => {
    list.current?.querySelector<HTMLButtonElement>('button:not(:disabled)')?.focus();
  }, []);
  const moved = (event: KeyboardEvent) => {
    if (event.key === 'Tab') return close();
    const all = buttons();
    const now = all.findIndex((button) => button.contains(document.activeElement));
    const next = itemAfterKey(
      event.key,
      all.map((button) => button.dataset.label ?? ''),
      now,
    );
    if (next === null) return;
    event.preventDefault();
    all[next]?.focus();
  };
  return (
    <div ref={list} role="presentation" className={styles.list}>
      {items.map((item, index) =>
        item === 'line' ? (
          // biome-ignore lint/suspicious/noArrayIndexKey: lines have no identity but their place
          <hr key={`line ${index}`} className={styles.line} />
        ) : (
          <button
            key={item.key ?? item.label}
            type="button"
            {...roleOf(item.checked)}
            tabIndex={-1}
            data-label={item.label}
            data-tone={item.tone}
            disabled={item.disabled}
            className={styles.item}
            onKeyDown={moved}
            onClick={() => {
              close();
              item.onSelect();
            }}
          >
            <span className={styles.check} aria-hidden="true">
              {item.checked === true ? '✓' : ''}
            </span>
            <span className={styles.name}>{item.label}</span>
            {item.hint !== undefined && <span className={styles.hint}>{item.hint}</span>}
          </button>
        ),
      )}
    </div>
  );
}
