import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compileKeymap } from '../../../src/core/engine/compile.ts';
import { createEngine } from '../../../src/core/engine/engine.ts';
import { playCompiled } from '../../../src/core/engine/play.ts';
import type { OutputEvent, TraceEntry } from '../../../src/core/engine/types.ts';
import { chordsOf } from '../../../src/core/keymap/timing.ts';
import type { KeyId, Keymap } from '../../../src/core/keymap/types.ts';
import { type PlayableCase, playableArbitrary } from '../arbitraries/stream-arbitrary.ts';
import { tinyHost } from './tiny-host.ts';

/** The characters of the tiny host, and one that it lacks. */
const CHARS = ['a', 'A', 'é', 'ñ', 'ß'];
const anything = playableArbitrary({ chars: CHARS });
const crowded = playableArbitrary({ chars: CHARS, maxKeys: 5, maxLayers: 3, maxChords: 4 }, 60);

function holdsFor(arbitrary: fc.Arbitrary<PlayableCase>, law: (one: PlayableCase) => void): void {
  fc.assert(fc.property(arbitrary, law), { numRuns: 1000 });
}

function play({ keymap, events }: PlayableCase) {
  const played = playCompiled(compileKeymap(keymap, tinyHost), events);
  if (!played.ok) throw new Error(`event ${played.problem.index}: ${played.problem.reason}`);
  return played.value;
}

function stillPressed(output: readonly OutputEvent[]): Set<string> {
  const pressed = new Set<string>();
  for (const { type, code } of output) {
    if (type === 'press') pressed.add(code);
    else pressed.delete(code);
  }
  return pressed;
}

/** Codes that a lock or a latch keeps pressed, by the trace. */
function kept(trace: readonly TraceEntry[]): Set<string> {
  const counts = new Map<string, number>();
  for (const { what, code } of trace) {
    if (code === undefined) continue;
    const step = what === 'lock-on' || what === 'latch-on' ? 1 : -1;
    counts.set(code, (counts.get(code) ?? 0) + step);
  }
  return new Set([...counts].filter(([, count]) => count > 0).map(([code]) => code));
}

describe.each([
  ['any design', anything],
  ['crowded designs', crowded],
])('for %s and every stream that ends with all keys up', (_, arbitrary) => {
  test('every pressed code has been released, locks and unused latches apart', () => {
    holdsFor(arbitrary, (one) => {
      const { output, trace } = play(one);
      expect(stillPressed(output)).toEqual(kept(trace));
    });
  });

  test('a latch that stays on is unused: the next typing press finds all of them still on', () => {
    holdsFor(arbitrary, ({ keymap, events }) => {
      const t = (events.at(-1)?.t ?? 0) + 100_000;
      const output = play({
        keymap: withTypingKey(keymap),
        events: [...events, { t, key: 'extra', type: 'down' }],
      }).output.filter((event) => event.t === t);
      expect(output).toEqual([{ t, type: 'press', code: 'LaunchMail' }]);
    });
  });

  test('presses and releases alternate for each code, the press first', () => {
    holdsFor(arbitrary, (one) => {
      const isDown = new Map<string, boolean>();
      for (const { type, code } of play(one).output) {
        expect(isDown.get(code) ?? false).toBe(type === 'release');
        isDown.set(code, type === 'press');
      }
    });
  });

  test('output times never decrease and never lie ahead of now', () => {
    holdsFor(arbitrary, ({ keymap, events }) => {
      let latest = -Infinity;
      let now = -Infinity;
      const engine = createEngine(compileKeymap(keymap, tinyHost), {
        output: (t) => {
          expect(t).toBeGreaterThanOrEqual(latest);
          expect(t).toBeLessThanOrEqual(now);
          latest = t;
        },
      });
      for (const event of events) {
        now = event.t;
        engine.feed(event);
      }
      now = Infinity;
      engine.finish();
      expect(latest).toBeLessThan(Infinity);
    });
  });

  test('a down that no chord took acts exactly once or has no binding', () => {
    holdsFor(arbitrary, (one) => {
      const { trace } = play(one);
      const acts = (entry: TraceEntry) => ['tap', 'hold', 'no-binding'].includes(entry.what);
      for (const { id } of one.keymap.board.keys) {
        const taken = trace.filter((entry) => entry.what === 'chord' && hasKey(one.keymap, entry, id));
        const acted = trace.filter((entry) => acts(entry) && entry.key === id);
        expect(acted.length + taken.length).toBe(
          one.events.filter((e) => e.key === id && e.type === 'down').length,
        );
      }
      for (const { id } of chordsOf(one.keymap)) {
        const fired = trace.filter((entry) => entry.what === 'chord' && entry.chord === id);
        expect(trace.filter((entry) => entry.what === 'tap' && entry.chord === id)).toHaveLength(
          fired.length,
        );
      }
    });
  });

  test('the same input gives the same output and the same trace', () => {
    holdsFor(arbitrary, (one) => {
      expect(play(one)).toEqual(play(structuredClone({ keymap: one.keymap, events: one.events })));
    });
  });
});

function hasKey(keymap: Keymap, entry: TraceEntry, key: KeyId): boolean {
  return chordsOf(keymap).some((chord) => chord.id === entry.chord && chord.keys.includes(key));
}

/** One more key, which types a code that nothing else types, on every layer. */
function withTypingKey(keymap: Keymap): Keymap {
  const [first] = keymap.board.keys;
  if (first === undefined) throw new Error('a board has keys');
  const keys = [...keymap.board.keys, { ...first, id: 'extra' }];
  const extra = { tap: { do: 'key', code: 'LaunchMail' } } as const;
  const layers = keymap.layers.map((layer) => ({ ...layer, places: { ...layer.places, extra } }));
  return { ...keymap, board: { ...keymap.board, keys }, layers };
}

test('with a code of its own for every action, each tap and hold is one press and one release of it', () => {
  const codes = ['KeyA', 'KeyB', 'KeyC', 'KeyD', 'KeyE', 'KeyF', 'KeyG', 'KeyH', 'KeyI', 'KeyJ'] as const;
  const ofOwn = (keymap: Keymap): Keymap => {
    let next = 0;
    const swap = (name: string, value: unknown): unknown =>
      ['tap', 'hold', 'action'].includes(name) ? { do: 'key', code: codes[next++] } : value;
    const copy: Keymap = JSON.parse(JSON.stringify(keymap, swap));
    return copy;
  };
  const arbitrary = playableArbitrary({ maxKeys: 4, maxLayers: 1, maxChords: 2 }, 40, ofOwn);
  holdsFor(arbitrary, (one) => {
    const { output, trace } = play(one);
    const acted = trace.filter(({ what }) => what === 'tap' || what === 'hold').length;
    expect(output.filter(({ type }) => type === 'press')).toHaveLength(acted);
    expect(output.filter(({ type }) => type === 'release')).toHaveLength(acted);
  });
});
