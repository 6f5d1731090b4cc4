import { useEffect, useRef, useState } from 'react';
import { useBench } from '../../store/bench.ts';
import type { OpenCard } from '../../store/bench-state.ts';

/**
 * Whether a card that opens takes the focus. A click on a key leaves the focus on the board, where typing binds at
 * once, and so does walking with a card open; a card asked for by keyboard or from elsewhere takes it. The number
 * that comes back changes with each request and is 0 while there is none.
 */
export function useFocusRequest() {
  const [focusRequest, setFocusRequest] = useState(0);
  const isQuiet = useRef(false);
  useEffect(
    () =>
      useBench.subscribe(({ openCard }, before) => {
        if (openCard === null || isSameCard(before.openCard, openCard)) return;
        if (isQuiet.current) setFocusRequest(0);
        else setFocusRequest((request) => request + 1);
        isQuiet.current = false;
      }),
    [],
  );
  /** Told before a card is opened from the board itself. */
  const opening = (takeFocus: boolean) => {
    isQuiet.current = !takeFocus;
    // The card may be open already: then it is only asked to take the focus.
    if (takeFocus) setFocusRequest((request) => request + 1);
  };
  return { focusRequest, opening };
}

function isSameCard(one: OpenCard | null, other: OpenCard): boolean {
  if (one === null || one.card !== other.card) return false;
  if (one.card === 'key' && other.card === 'key') return one.key === other.key;
  if (one.card === 'chord' && other.card === 'chord') return one.chord === other.chord;
  // A draft that is being changed is the same card to the eye.
  return one.card === 'new-chord';
}
