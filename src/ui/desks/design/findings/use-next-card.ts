import { type FocusEvent, type RefObject, useLayoutEffect, useRef } from 'react';

/** What had the focus in a list of cards, and the place of its card among those in view. */
interface Held {
  readonly element: Element;
  readonly at: number;
}

/**
 * Keeps the focus in a list whose cards go as they are settled: where the part that had it is gone, the card that now
 * stands in its place takes it, after the last one the one before, and the list itself where none is left.
 */
export function useNextCard(list: RefObject<HTMLElement | null>) {
  const held = useRef<Held | null>(null);
  useLayoutEffect(() => {
    const last = held.current;
    if (last === null || last.element.isConnected) return;
    held.current = null;
    // Whoever has it in the meantime keeps it.
    if (document.activeElement !== null && document.activeElement !== document.body) return;
    const cards = cardsOf(list.current);
    (cards[Math.min(last.at, cards.length - 1)] ?? list.current)?.focus();
  });
  return {
    onFocus: ({ target }: FocusEvent) => {
      const card = target.closest<HTMLElement>('[data-card]');
      held.current = card === null ? null : { element: target, at: cardsOf(list.current).indexOf(card) };
    },
    onBlur: () => {
      held.current = null;
    },
  };
}

/** The cards that are not folded away. */
function cardsOf(list: HTMLElement | null): readonly HTMLElement[] {
  const all = [...(list?.querySelectorAll<HTMLElement>('[data-card]') ?? [])];
  return all.filter((card) => card.closest('details:not([open])') === null);
}
