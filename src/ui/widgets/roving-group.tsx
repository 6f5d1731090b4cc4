import { type KeyboardEvent, type ReactNode, useRef } from 'react';

/**
 * A group of buttons that is one stop of the Tab key: arrows walk through it by where the buttons lie, Home and End go
 * to its ends. The button that was last in focus is the one that Tab comes back to.
 */
export function RovingGroup({
  label,
  className,
  children,
}: {
  readonly label: string;
  readonly className?: string | undefined;
  readonly children: ReactNode;
}) {
  const group = useRef<HTMLDivElement>(null);
  const buttons = () => [...(group.current?.querySelectorAll<HTMLElement>('[data-roving]') ?? [])];
  const moved = (event: KeyboardEvent) => {
    const all = buttons();
    const now = all.findIndex((button) => button.contains(document.activeElement));
    const next = now === -1 ? undefined : nextOf(all, now, event.key);
    if (next === undefined) return;
    event.preventDefault();
    for (const button of all) button.tabIndex = button === next ? 0 : -1;
    next.focus();
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields of a form
    <div ref={group} role="group" aria-label={label} className={className} onKeyDown={moved}>
      {children}
    </div>
  );
}

/** The button that a key leads to from the one in focus. */
function nextOf(all: readonly HTMLElement[], now: number, key: string): HTMLElement | undefined {
  if (key === 'ArrowRight') return all[now + 1];
  if (key === 'ArrowLeft') return all[now - 1];
  if (key === 'Home') return all[0];
  if (key === 'End') return all.at(-1);
  if (key === 'ArrowDown') return nearestIn(all.slice(now + 1), all[now], 1);
  if (key === 'ArrowUp') return nearestIn(all.slice(0, now).reverse(), all[now], -1);
  return undefined;
}

/** The button of the next row, down (1) or up (-1), that lies nearest; rows are told apart by their tops. */
function nearestIn(others: readonly HTMLElement[], from: HTMLElement | undefined, way: 1 | -1) {
  const start = from?.getBoundingClientRect();
  if (start === undefined) return undefined;
  const middle = (rect: DOMRect) => rect.left + rect.width / 2;
  let best: HTMLElement | undefined;
  let bestDistance = Number.POSITIVE_INFINITY;
  let row: number | undefined;
  for (const other of others) {
    const rect = other.getBoundingClientRect();
    if ((rect.top - start.top) * way < start.height / 2) continue;
    row ??= rect.top;
    if (Math.abs(rect.top - row) > start.height / 2) break;
    const distance = Math.abs(middle(rect) - middle(start));
    if (distance < bestDistance) {
      bestDistance = distance;
      best = other;
    }
  }
  return best;
}
