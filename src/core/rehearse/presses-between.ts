import type { Press } from './run.ts';

/** The place of the first item at or after t, in a list that is in order of time. */
export function firstAt<Item>(items: readonly Item[], t: number, timeOf: (item: Item) => number): number {
  let low = 0;
  let high = items.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const item = items[middle];
    if (item !== undefined && timeOf(item) < t) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The presses that went down from one time to another, both included, ms. */
export function pressesBetween(presses: readonly Press[], from: number, to: number): readonly Press[] {
  const found: Press[] = [];
  for (let at = firstAt(presses, from, ({ down }) => down); at < presses.length; at++) {
    const press = presses[at];
    if (press === undefined || press.down > to) break;
    found.push(press);
  }
  return found;
}
