import type { KeyEvent } from '../../core/base/key-event.ts';
import type { KeyId } from '../../core/keymap/types.ts';

/** A small seeded generator (mulberry32, public domain), uniform in [0, 1). */
function generator(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Keys down at once at most: more than hands do, so that queues and waiting keys are well used. */
const MOST_DOWN = 5;

/**
 * A valid random stream of `count` events (even) over the keys of a board, beginning after `start` ms and ending with
 * all keys up. Gaps are exponential with a mean of 45 ms, so presses come every 90 ms or so: fast typing.
 */
export function randomStream(keys: readonly KeyId[], count: number, seed: number, start: number): KeyEvent[] {
  const next = generator(seed);
  const up = [...keys];
  const down: KeyId[] = [];
  const events: KeyEvent[] = [];
  let t = start;
  const move = (from: KeyId[], to: KeyId[], type: KeyEvent['type']): void => {
    const [key] = from.splice(Math.floor(next() * from.length), 1);
    if (key === undefined) return;
    to.push(key);
    t += Math.round(-45 * Math.log(1 - next()) * 4) / 4;
    events.push({ t, key, type });
  };
  while (events.length < count) {
    const mustRelease = down.length === MOST_DOWN || down.length === count - events.length;
    if (down.length === 0 || (!mustRelease && next() < 0.5)) move(up, down, 'down');
    else move(down, up, 'up');
  }
  return events;
}
