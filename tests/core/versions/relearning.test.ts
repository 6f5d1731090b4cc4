import { fc } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { createRunCounter } from '../../../src/core/needs/counts-runs.ts';
import { needOfCharacter } from '../../../src/core/needs/text-needs.ts';
import { personAt } from '../../../src/core/typist/person.ts';
import { compareTyping } from '../../../src/core/versions/compare-typing.ts';
import { type boardKey, layer, small, toLayer } from '../keymap/small.ts';

const char = (text: string) => ({ do: 'char', char: text }) as const;

const countsOf = (text: string) => {
  const counter = createRunCounter();
  counter.add(text);
  return counter.counts();
};

const compared = (before: Keymap, after: Keymap, text: string) =>
  compareTyping(
    { keymap: before, host: usHost, needs: [needOfCharacter('a'), needOfCharacter('z')] },
    { keymap: after, host: usHost, needs: [needOfCharacter('b')] },
    countsOf(text),
    personAt(50),
  );

const start = small([
  layer('base', { k1: { tap: char('a') }, k2: { tap: char('b') }, k5: { hold: toLayer('up') } }),
  layer('up', { k1: { tap: char('c') } }),
]);

const withPlaces = (at: number, places: Keymap['layers'][number]['places']): Keymap => ({
  ...start,
  layers: start.layers.map((each, index) => (index === at ? { ...each, places } : each)),
});

describe('relearning, worked out by hand', () => {
  test('nothing changes: 0 %', () => {
    expect(compared(start, start, 'abc').relearning).toEqual({
      percent: 0,
      presses: 4,
      changed: 0,
      characters: [],
      untypable: 0,
    });
  });

  test('a and b change places: 6 of the 8 presses of "aaabbbc" do, the two of c stay', () => {
    const swapped = withPlaces(0, {
      ...start.layers[0]?.places,
      k1: { tap: char('b') },
      k2: { tap: char('a') },
    });
    const { percent, presses, changed, characters } = compared(start, swapped, 'aaabbbc').relearning;
    expect([presses, changed, percent]).toEqual([8, 6, 75]);
    expect(characters.map((each) => each.char)).toEqual(['a', 'b']);
  });

  test('c moves to another key of its layer: one of its two presses changes', () => {
    const moved = withPlaces(1, { k2: { tap: char('c') } });
    expect(compared(start, moved, 'ccab').relearning).toMatchObject({
      presses: 6,
      changed: 2,
      characters: [{ char: 'c', count: 2, presses: 2, changed: 1 }],
    });
  });

  test('what could not be typed before is new, and what no longer can be takes no presses', () => {
    const other = withPlaces(1, { k1: { tap: char('d') } });
    const result = compared(start, other, 'cdda');
    expect(result.relearning).toMatchObject({ presses: 5, changed: 4, untypable: 1 });
  });

  test('a chord counts by its keys', () => {
    const chorded: Keymap = {
      ...withPlaces(1, {}),
      chords: [{ id: 'c', keys: ['k3', 'k4'], windowMs: 40, action: char('c') }],
    };
    expect(compared(start, chorded, 'ca').relearning).toMatchObject({ presses: 3, changed: 2 });
  });

  test('a key in another finger’s care is another key; one that only moved is the same', () => {
    const on = (change: Partial<ReturnType<typeof boardKey>>): Keymap => ({
      ...start,
      board: {
        ...start.board,
        keys: start.board.keys.map((key) => (key.id === 'k1' ? { ...key, ...change } : key)),
      },
    });
    expect(compared(start, on({ y: 4 }), 'ab').relearning.percent).toBe(0);
    expect(compared(start, on({ finger: 'middle' }), 'ab').relearning.percent).toBe(50);
  });

  test('never less than nothing, never more than all, whatever is bound where', () => {
    const bound = fc.record({
      k1: fc.constantFrom('a', 'b', 'c'),
      k2: fc.constantFrom('a', 'b', 'c'),
      k3: fc.constantFrom('a', 'b', 'c'),
    });
    const design = (keys: Record<string, string>) =>
      withPlaces(
        0,
        Object.fromEntries(Object.entries(keys).map(([key, text]) => [key, { tap: char(text) }])),
      );
    void fc.assert(
      fc.property(bound, bound, (one, other) => {
        const { percent, changed, presses } = compared(design(one), design(other), 'aabbbcccc').relearning;
        expect(percent).toBeGreaterThanOrEqual(0);
        expect(percent).toBeLessThanOrEqual(100);
        expect(changed).toBeLessThanOrEqual(presses);
      }),
      { numRuns: 40 },
    );
  });
});

describe('needs and accidents', () => {
  test('over the needs of both designs', () => {
    const lost = withPlaces(0, { k2: { tap: char('b') }, k3: { tap: char('z') } });
    const { needs } = compared(start, lost, 'ab');
    expect(needs.before).toEqual({ asked: 3, reached: 2, clumsy: 0 });
    expect(needs.after).toEqual({ asked: 3, reached: 2, clumsy: 0 });
    expect(needs.gained).toEqual([needOfCharacter('z')]);
    expect(needs.lost).toEqual([needOfCharacter('a')]);
  });

  test('a need that takes more presses is dearer, and cheaper looking back', () => {
    const dear = {
      ...start,
      layers: [
        { ...start.layers[0], places: { k2: { tap: char('b') }, k5: { hold: toLayer('up') } } },
        { ...start.layers[1], places: { k1: { tap: char('a') } } },
      ],
    } as Keymap;
    const change = { need: needOfCharacter('a'), before: 1, after: 2 };
    expect(compared(start, dear, 'ab').needs).toMatchObject({ dearer: [change], cheaper: [] });
    expect(compared(dear, start, 'ab').needs).toMatchObject({
      dearer: [],
      cheaper: [{ ...change, before: 2, after: 1 }],
    });
  });

  test('a chord over two letters that follow each other misfires where there was none', () => {
    const chorded: Keymap = {
      ...start,
      chords: [{ id: 'c', keys: ['k1', 'k2'], windowMs: 80, action: { do: 'key', code: 'Escape' } }],
    };
    const { accidents } = compared(start, chorded, 'ababab abab');
    expect(accidents.before.misfiresPer1000Words).toBe(0);
    expect(accidents.after.misfiresPer1000Words).toBeGreaterThan(0);
    expect(accidents.after.meanDelayMs).toBeGreaterThan(0);
  });
});
