import { type ReactNode, type RefObject, useEffect, useLayoutEffect, useRef } from 'react';
import { besideOf } from './beside-of.ts';
import { keepBeside } from './keep-beside.ts';
import styles from './popover.module.css';

export interface PopoverProps {
  /** What the popover belongs to and stands beside. */
  readonly anchor: RefObject<Element | null>;
  readonly onClose: () => void;
  readonly label: string;
  readonly role?: 'dialog' | 'menu' | 'listbox';
  readonly children: ReactNode;
}

/**
 * A small sheet beside its anchor, in the platform's top layer. Escape and a press outside close it. It is open
 * for as long as it is rendered, and gives the focus back to its anchor if it had it.
 */
export function Popover({ anchor, onClose, label, role = 'dialog', children }: PopoverProps) {
  const sheet = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const element = sheet.current;
    if (element === null) return;
    element.showPopover();
    return keepBeside(element, (size, win) => {
      const box = anchor.current?.getBoundingClientRect();
      return box === undefined ? null : besideOf(box, size, win);
    });
  }, [anchor]);
  useFocusBack(sheet, anchor);
  useClosing(sheet, anchor, onClose);
  const named = { role, 'aria-label': label };
  return (
    <div ref={sheet} popover="manual" tabIndex={-1} className={styles.popover} {...named}>
      {children}
    </div>
  );
}

function useFocusBack(sheet: RefObject<HTMLElement | null>, anchor: RefObject<Element | null>): void {
  useLayoutEffect(() => {
    const element = sheet.current;
    const target = anchor.current;
    return () => {
      const had = element?.contains(document.activeElement) === true;
      if (had && (target instanceof HTMLElement || target instanceof SVGElement)) target.focus();
    };
  }, [sheet, anchor]);
}

function useClosing(
  sheet: RefObject<HTMLElement | null>,
  anchor: RefObject<Element | null>,
  onClose: () => void,
): void {
  useEffect(() => {
    const element = sheet.current;
    const pressed = ({ target }: PointerEvent) => {
      if (!(target instanceof Node)) return;
      const inside = [element, anchor.current].some((part) => part?.contains(target));
      if (!inside) onClose();
    };
    const escaped = (event: Event) => {
      if (!(event instanceof KeyboardEvent) || event.key !== 'Escape' || event.defaultPrevented) return;
      event.stopPropagation();
      event.preventDefault();
      onClose();
    };
    document.addEventListener('pointerdown', pressed, true);
    const owners = [element, anchor.current].filter((part) => part !== null);
    for (const owner of owners) owner.addEventListener('keydown', escaped);
    return () => {
      document.removeEventListener('pointerdown', pressed, true);
      for (const owner of owners) owner.removeEventListener('keydown', escaped);
    };
  }, [sheet, anchor, onClose]);
}
