import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import type { KeyEvent } from '../../../src/core/base/key-event.ts';
import { compileKeymap } from '../../../src/core/engine/compile.ts';
import { createEngine } from '../../../src/core/engine/engine.ts';
import { ItemLine } from '../../../src/core/engine/item-line.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { playableArbitrary } from '../arbitraries/stream-arbitrary.ts';
import { both, design, key } from './design.ts';
import { tinyHost } from './tiny-host.ts';

function run(keymap: Keymap, events: readonly KeyEvent[]): void {
  const engine = createEngine(compileKeymap(keymap, tinyHost), { output: () => undefined });
  for (const event of events) engine.feed(event);
  engine.finish();
}

/** For each event, how many keys are down just before it. */
function downBefore(events: readonly KeyEvent[]): number[] {
  let down = 0;
  return events.map(({ type }) => {
    const before = down;
    down += type === 'down' ? 1 : -1;
    return before;
  });
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);

function watched<Answer>(method: 'push' | 'enqueue', work: (calls: readonly unknown[][]) => Answer): Answer {
  const spy = vi.spyOn(ItemLine.prototype, method);
  try {
    return work(spy.mock.calls);
  } finally {
    spy.mockRestore();
  }
}

test('stage 2 sees items in order of physical time', () => {
  const law = fc.property(playableArbitrary({ maxKeys: 5, maxChords: 4 }, 60), ({ keymap, events }) => {
    watched('push', (calls) => {
      run(keymap, events);
      const times = calls.map(([, , t]) => Number(t));
      expect(times).toEqual(times.toSorted((a, b) => a - b));
    });
  });
  fc.assert(law, { numRuns: 1000 });
});

test('an item goes into a queue at most once per key that is down', () => {
  const law = fc.property(playableArbitrary({ maxKeys: 6, maxChords: 0 }, 60), ({ keymap, events }) => {
    watched('enqueue', (calls) => {
      run(keymap, events);
      expect(calls.length).toBeLessThanOrEqual(sum(downBefore(events)));
    });
  });
  fc.assert(law, { numRuns: 1000 });
});

test('keys that are all open one after the other are requeued as often as keys are down, not as the stream is long', () => {
  const keys = [...'ASDFG'];
  const binding = both(key('A'), key('ShiftLeft'), { holdAfterMs: 10_000 });
  const keymap = design({ base: Object.fromEntries(keys.map((id) => [id, binding])) });
  // A rollover that never ends: each key comes up when four others are down.
  const events = Array.from({ length: 5000 }, (_, at): KeyEvent[] => {
    const id = keys[at % keys.length] ?? '';
    const down: KeyEvent = { t: at, key: id, type: 'down' };
    return at < keys.length ? [down] : [{ t: at, key: id, type: 'up' }, down];
  }).flat();
  watched('enqueue', (calls) => {
    run(keymap, events);
    expect(calls.length).toBeGreaterThan(events.length);
    expect(calls.length).toBeLessThanOrEqual(5 * events.length);
  });
});
