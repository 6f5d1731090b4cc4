import { type Held, rankOf, type State } from './state.ts';

interface Entry {
  readonly rank: number;
  readonly order: number;
  readonly state: State;
}

/**
 * The states still to be looked at, cheapest first and of equal ones the first found; it passes over a state when one
 * that does the same with no other keys down was looked at before, at no higher cost.
 */
export class Frontier {
  readonly #heap: Entry[] = [];
  readonly #seen = new Map<string, Entry[]>();
  #order = 0;

  /** Takes a state in, unless one that was taken in before makes it needless. */
  push(state: State): void {
    const entry = { rank: rankOf(state), order: this.#order++, state };
    if (!this.#isNew(entry)) return;
    const heap = this.#heap;
    let at = heap.length;
    heap.push(entry);
    while (at > 0) {
      const above = (at - 1) >> 1;
      const parent = heap[above];
      if (parent === undefined || !isBefore(entry, parent)) break;
      heap[at] = parent;
      at = above;
    }
    heap[at] = entry;
  }

  /** The cheapest state; undefined when all have been looked at. */
  pop(): State | undefined {
    const heap = this.#heap;
    const first = heap[0];
    const last = heap.pop();
    if (first === undefined || last === undefined || heap.length === 0) return first?.state;
    let at = 0;
    for (;;) {
      let below = 2 * at + 1;
      let child = heap[below];
      const other = heap[below + 1];
      if (child !== undefined && other !== undefined && isBefore(other, child)) {
        below += 1;
        child = other;
      }
      if (child === undefined || !isBefore(child, last)) break;
      heap[at] = child;
      at = below;
    }
    heap[at] = last;
    return first.state;
  }

  #isNew(entry: Entry): boolean {
    const key = effectOf(entry.state);
    const before = this.#seen.get(key);
    if (before === undefined) {
      this.#seen.set(key, [entry]);
      return true;
    }
    if (before.some((other) => makesNeedless(other, entry))) return false;
    before.push(entry);
    return true;
  }
}

function isBefore(one: Entry, other: Entry): boolean {
  return one.rank < other.rank || (one.rank === other.rank && one.order < other.order);
}

/** Whether all that a state allows, another of the same effect allows too, at no higher cost: its keys down are among the state's. */
function makesNeedless(other: Entry, entry: Entry): boolean {
  const { state } = entry;
  if (other.rank > entry.rank || (other.state.clumsy && !state.clumsy)) return false;
  return other.state.held.every((one) =>
    one.keys.every((key) => state.held.some((held) => held.keys.includes(key))),
  );
}

/** What a state does and what it waits for, which keys are down left aside. */
export function effectOf(state: State): string {
  const { held, open, gathering, node, openAsTap, releasedSinceOpen, tapped, sinceDownMs } = state;
  const last = open !== null || gathering.length > 0 ? (held.at(-1)?.keys.join('+') ?? '') : '';
  const flags = (openAsTap ?? '') + (releasedSinceOpen ? 2 : 0) + (open === null ? 0 : 4);
  return `${heldEffect(held)} ${stayingEffect(state)} ${node} ${last} ${flags} ${tapped.join(',')} ${sinceDownMs}`;
}

function heldEffect(held: State['held']): string {
  const [only, ...more] = held;
  if (only === undefined) return '';
  if (more.length === 0) return effectOfHeld(only);
  return held.map(effectOfHeld).sort().join(',');
}

const effectOfHeld = ({ layers, modifiers, latch }: Held) => `${layers}.${modifiers}.${latch ? 1 : 0}`;

/** What stays on without a key; mostly nothing does. */
function stayingEffect(state: State): string {
  const { latchedLayers, latchedModifiers, lockedLayers, lockedModifiers, fresh } = state;
  if ((latchedLayers | latchedModifiers | lockedLayers | lockedModifiers | fresh) === 0) return '';
  return `${latchedLayers}.${latchedModifiers}.${lockedLayers}.${lockedModifiers}.${fresh}`;
}
