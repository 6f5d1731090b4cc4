import {
  type KeyboardEvent,
  type ReactNode,
  type RefObject,
  useEffect,
  useLayoutEffect,
  useRef,
} from 'react';
import { MARGIN } from '../../widgets/beside-of.ts';
import { IconButton } from '../../widgets/button.tsx';
import { keepBeside } from '../../widgets/keep-beside.ts';
import { besideKey, boxAround } from './beside-key.ts';
import styles from './cards.module.css';

interface CardSheetProps {
  readonly title: string;
  /** The drawn parts that the card belongs to; it stands beside them and gives the focus back to the first. */
  readonly anchors: () => readonly SVGElement[];
  /** The board: a press there is its own affair and does not close the card. */
  readonly board: RefObject<Element | null>;
  /** Takes the focus whenever this number changes, and at first if it is not 0. */
  readonly focusRequest: number;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A card beside its key or chord, in the platform's top layer. Escape and a press elsewhere close it. */
export function CardSheet({ title, anchors, board, focusRequest, onClose, children }: CardSheetProps) {
  const sheet = useRef<HTMLDivElement>(null);
  usePlace(sheet, board, anchors);
  useFocusRequest(sheet, focusRequest);
  useClosing(sheet, board, onClose);
  const close = () => closeWithFocus(sheet.current, anchors, onClose);
  // Through React, so that a field in the card that has its own use for the key has it first.
  const pressed = (event: KeyboardEvent) => {
    if (event.key !== 'Escape' || event.defaultPrevented) return;
    event.preventDefault();
    event.stopPropagation();
    close();
  };
  return (
    <div
      ref={sheet}
      popover="manual"
      role="dialog"
      aria-label={title}
      tabIndex={-1}
      className={styles.sheet}
      onKeyDown={pressed}
    >
      <header className={styles.header}>
        <h2>{title}</h2>
        <IconButton label="Close" onClick={close}>
          ×
        </IconButton>
      </header>
      <div className={styles.body}>{children}</div>
    </div>
  );
}

function usePlace(
  sheet: RefObject<HTMLElement | null>,
  board: RefObject<Element | null>,
  anchors: () => readonly SVGElement[],
): void {
  useLayoutEffect(() => {
    const element = sheet.current;
    if (element === null) return;
    element.showPopover();
    return () => element.hidePopover();
  }, [sheet]);
  // After every drawing: the key may have changed, the camera moved or the card grown.
  useLayoutEffect(() => {
    const element = sheet.current;
    if (element === null) return;
    return keepBeside(element, (size, win) => {
      // Below the page's header, however long the card is: what does not fit is scrolled inside it.
      const top = board.current?.closest('main')?.getBoundingClientRect().top ?? 0;
      element.style.maxHeight = `${win.height - Math.max(0, top) - 2 * MARGIN}px`;
      const box = boxAround(anchors().map((anchor) => anchor.getBoundingClientRect()));
      return box === null ? null : besideKey(box, size, win, top);
    });
  });
}

function useFocusRequest(sheet: RefObject<HTMLElement | null>, request: number): void {
  useEffect(() => {
    if (request === 0) return;
    const first =
      sheet.current?.querySelector<HTMLElement>('[data-first]') ??
      sheet.current?.querySelector<HTMLElement>('select, input');
    (first ?? sheet.current)?.focus();
  }, [sheet, request]);
}

function closeWithFocus(
  sheet: HTMLElement | null,
  anchors: () => readonly SVGElement[],
  onClose: () => void,
): void {
  if (sheet?.contains(document.activeElement)) anchors()[0]?.focus();
  onClose();
}

function useClosing(
  sheet: RefObject<HTMLElement | null>,
  board: RefObject<Element | null>,
  onClose: () => void,
): void {
  useEffect(() => {
    const element = sheet.current;
    const pressed = ({ target }: PointerEvent) => {
      if (!(target instanceof Node)) return;
      if ([element, board.current].some((part) => part?.contains(target))) return;
      finishField(element);
      onClose();
    };
    document.addEventListener('pointerdown', pressed, true);
    return () => document.removeEventListener('pointerdown', pressed, true);
  }, [sheet, board, onClose]);
}

/** A field that goes with its card would never hear that it is left, and its text would be lost. */
function finishField(sheet: HTMLElement | null): void {
  const { activeElement } = document;
  if (activeElement instanceof HTMLElement && sheet?.contains(activeElement)) activeElement.blur();
}
