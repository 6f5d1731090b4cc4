import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compileKeymap } from '../../../src/core/engine/compile.ts';
import { createEngine } from '../../../src/core/engine/engine.ts';
import { playCompiled } from '../../../src/core/engine/play.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { chordsOf } from '../../../src/core/keymap/timing.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { grownKeymapArbitrary } from '../arbitraries/grown-keymap.ts';
import { type PlayableCase, playableArbitrary, playableOn } from '../arbitraries/stream-arbitrary.ts';

const anything = playableOn(grownKeymapArbitrary());
const crowded = playableOn(grownKeymapArbitrary({ maxKeys: 5, maxLayers: 2, maxChords: 4 }), 60);

function holdsFor(arbitrary: fc.Arbitrary<PlayableCase>, law: (one: PlayableCase) => void): void {
  fc.assert(fc.property(arbitrary, law), { numRuns: 200 });
}

function play({ keymap, events }: PlayableCase) {
  const played = playCompiled(compileKeymap(keymap, usHost), events);
  if (!played.ok) throw new Error(`event ${played.problem.index}: ${played.problem.reason}`);
  return played.value;
}

describe.each([
  ['any design', anything],
  ['crowded designs', crowded],
])('for %s with the later fields and every stream that ends with all keys up', (_, arbitrary) => {
  test('every pressed code has been released, locks, unused latches and what is lifted of them apart', () => {
    holdsFor(arbitrary, (one) => {
      const { output, trace } = play(one);
      const pressed = new Set<string>();
      const lifted = new Set<string>();
      for (const { type, code, lifting } of output) {
        if (type === 'press') pressed.add(code);
        else pressed.delete(code);
        if (lifting && type === 'release') lifted.add(code);
        else lifted.delete(code);
      }
      const counts = new Map<string, number>();
      for (const { what, code } of trace) {
        if (code === undefined) continue;
        const step = what === 'lock-on' || what === 'latch-on' ? 1 : -1;
        counts.set(code, (counts.get(code) ?? 0) + step);
      }
      const kept = [...counts].filter(([, count]) => count > 0).map(([code]) => code);
      expect(pressed).toEqual(new Set(kept.filter((code) => !lifted.has(code))));
    });
  });

  test('presses and releases alternate for each code, the press first; only a Shift is ever lifted', () => {
    holdsFor(arbitrary, (one) => {
      const isDown = new Map<string, boolean>();
      for (const { type, code, lifting } of play(one).output) {
        expect(isDown.get(code) ?? false).toBe(type === 'release');
        isDown.set(code, type === 'press');
        if (lifting) expect(code).toMatch(/^Shift/);
      }
    });
  });

  test('output times never decrease and never lie ahead of now', () => {
    holdsFor(arbitrary, ({ keymap, events }) => {
      let latest = -Infinity;
      let now = -Infinity;
      const engine = createEngine(compileKeymap(keymap, usHost), {
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
    });
  });

  test('a down that no chord took, and every firing, acts exactly once or has no binding', () => {
    holdsFor(arbitrary, (one) => {
      const { trace } = play(one);
      const acts = ['tap', 'hold', 'no-binding'];
      for (const { id } of one.keymap.board.keys) {
        const taken = trace.filter(
          ({ what, chord }) =>
            what === 'chord' &&
            chordsOf(one.keymap).some((each) => each.id === chord && each.keys.includes(id)),
        );
        const acted = trace.filter(({ what, key }) => acts.includes(what) && key === id);
        const downs = one.events.filter((event) => event.key === id && event.type === 'down');
        expect(acted.length + taken.length).toBe(downs.length);
      }
      for (const { id } of chordsOf(one.keymap)) {
        const of = trace.filter(({ chord }) => chord === id);
        const fired = of.filter(({ what }) => what === 'chord');
        expect(of.filter(({ what }) => acts.includes(what))).toHaveLength(fired.length);
      }
    });
  });

  test('a stroke of a result under Shift is never pressed with a Shift down that is not its own', () => {
    const marked = (keymap: Keymap): Keymap => ({
      ...keymap,
      layers: keymap.layers.map((layer) => ({
        ...layer,
        places: Object.fromEntries(
          Object.entries(layer.places).map(([key, binding]) => [
            key,
            binding.tap
              ? { ...binding, onShift: { do: 'key' as const, code: 'LaunchMail' as const } }
              : binding,
          ]),
        ),
      })),
    });
    holdsFor(playableOn(grownKeymapArbitrary({ maxLayers: 2 }), 40, marked), (one) => {
      const down = new Set<string>();
      for (const { type, code } of play(one).output) {
        if (type === 'press' && code === 'LaunchMail')
          expect([...down].filter((each) => /^Shift/.test(each))).toEqual([]);
        if (type === 'press') down.add(code);
        else down.delete(code);
      }
    });
  });
});

/** Every later field that has a value for "off", given in full. */
function allOff(keymap: Keymap): Keymap {
  return {
    ...keymap,
    timing: { ...keymap.timing, tapIfAlone: false },
    layers: keymap.layers.map((layer) => ({
      ...layer,
      places: Object.fromEntries(
        Object.entries(layer.places).map(([key, binding]) => [key, { ...binding, tapIfAlone: false }]),
      ),
    })),
    ...(keymap.chords
      ? {
          chords: keymap.chords.map((chord) => ({
            ...chord,
            release: 'first-up' as const,
            tapIfAlone: false,
            holdAfterMs: 1,
            holdBy: 'press-inside' as const,
            againWithinMs: 300,
          })),
        }
      : {}),
  };
}

test('with every later field off, and a chord’s timing without a hold, output and trace are what they are without them', () => {
  fc.assert(
    fc.property(playableArbitrary(), ({ keymap, events }) => {
      expect(play({ keymap: allOff(keymap), events })).toEqual(play({ keymap, events }));
    }),
    { numRuns: 400 },
  );
});
