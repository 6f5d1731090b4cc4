import { useEffect, useRef } from 'react';

/**
 * Whenever `what` is shown becomes another, and the focus went with what was there before, it goes to what `next` finds;
 * so whoever uses the keyboard alone, or hears the page, is not put back to its beginning. What is there when the page
 * opens takes nothing.
 */
export function useFocusKept(what: string, next: () => HTMLElement | null | undefined): void {
  const shown = useRef(what);
  const latest = useRef(next);
  latest.current = next;
  useEffect(() => {
    if (shown.current === what) return;
    shown.current = what;
    if (isLost(document.activeElement)) latest.current()?.focus();
  }, [what]);
}

/** A button that went off keeps the focus until the next picture only, and then it is lost too. */
function isLost(element: Element | null): boolean {
  return element === null || element === document.body || element.matches(':disabled');
}
