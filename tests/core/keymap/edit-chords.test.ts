import { describe, expect, test } from 'vitest';
import type { Edit } from '../../../src/core/keymap/edit.ts';
import { edited, refusal } from './edits.ts';
import { chord, layer, small, toLayer } from './small.ts';

const start = small(
  [layer('base'), layer('sym')],
  [
    chord('one', ['k1', 'k2'], { name: 'Tab' }),
    chord('two', ['k2', 'k3'], { layers: ['sym'], quietBeforeMs: 90 }),
  ],
);

describe('chords', () => {
  test('the first one makes the field, more come after it', () => {
    const first = edited(small(), { edit: 'add-chord', chord: chord('c1', ['k1', 'k2', 'k3']) });
    expect(first.keymap.chords).toEqual([chord('c1', ['k1', 'k2', 'k3'])]);
    expect(first.title).toBe('Make chord Tab');
    const second = edited(first.keymap, { edit: 'add-chord', chord: chord('c2', ['k4', 'k5']) });
    expect(second.keymap.chords?.map(({ id }) => id)).toEqual(['c1', 'c2']);
  });

  test('some fields change, the others and the order stay', () => {
    const { keymap } = edited(start, {
      edit: 'change-chord',
      chord: 'one',
      to: { windowMs: 60, layers: ['sym'] },
    });
    expect(keymap.chords).toEqual([
      chord('one', ['k1', 'k2'], { name: 'Tab', windowMs: 60, layers: ['sym'] }),
      start.chords?.[1],
    ]);
  });

  test('null takes an optional field away', () => {
    const bare = edited(start, {
      edit: 'change-chord',
      chord: 'two',
      to: { layers: null, quietBeforeMs: null },
    });
    expect(bare.keymap.chords?.[1]).toEqual(chord('two', ['k2', 'k3']));
    const nameless = edited(start, { edit: 'change-chord', chord: 'one', to: { name: null } });
    expect(nameless.keymap.chords?.[0]).toEqual(chord('one', ['k1', 'k2']));
  });

  test('all fields change at once', () => {
    const to = {
      name: 'Other',
      keys: ['k4', 'k5'],
      windowMs: 30,
      layers: ['base'],
      quietBeforeMs: 50,
      action: toLayer('sym'),
    };
    const outcome = edited(start, { edit: 'change-chord', chord: 'one', to });
    expect(outcome.keymap.chords?.[0]).toEqual({ id: 'one', ...to });
    expect(outcome.title).toBe('Change chord Other');
  });

  test('one goes', () => {
    const outcome = edited(start, { edit: 'delete-chord', chord: 'one' });
    expect(outcome.keymap.chords).toEqual([start.chords?.[1]]);
    expect(outcome.title).toBe('Delete chord Tab');
  });

  test.each<[string, Edit]>([
    ['There is a chord with the id "one" already.', { edit: 'add-chord', chord: chord('one', ['k3', 'k4']) }],
    ['The board has no key with the id "k9".', { edit: 'add-chord', chord: chord('c', ['k1', 'k9']) }],
    ['A chord names each of its keys once.', { edit: 'add-chord', chord: chord('c', ['k1', 'k1']) }],
    [
      'chords[2].keys: found a list of 1, expected 2 items at least.',
      { edit: 'add-chord', chord: chord('c', ['k1']) },
    ],
    [
      'There is no layer with the id "nav".',
      { edit: 'add-chord', chord: chord('c', ['k1', 'k3'], { layers: ['nav'] }) },
    ],
    [
      'A chord names each of its layers once.',
      { edit: 'change-chord', chord: 'one', to: { layers: ['sym', 'sym'] } },
    ],
    [
      'chords[0].layers: found an empty list, expected one item at least.',
      { edit: 'change-chord', chord: 'one', to: { layers: [] } },
    ],
    [
      'chords[0].windowMs: found 10001, expected 10000 at most.',
      { edit: 'change-chord', chord: 'one', to: { windowMs: 10_001 } },
    ],
    [
      'chords[0].action.layer: found "base", expected a layer above the base, which is always on.',
      { edit: 'change-chord', chord: 'one', to: { action: toLayer('base') } },
    ],
    ['There is no chord with the id "three".', { edit: 'change-chord', chord: 'three', to: {} }],
    ['There is no chord with the id "three".', { edit: 'delete-chord', chord: 'three' }],
  ])('refused: %s', (sentence, edit) => {
    expect(refusal(start, edit)).toBe(sentence);
  });

  test('a chord beyond the limit is refused', () => {
    const full = small(
      [layer('base')],
      Array.from({ length: 500 }, (_, index) => chord(`c${index}`, ['k1', 'k2'])),
    );
    expect(refusal(full, { edit: 'add-chord', chord: chord('more', ['k1', 'k2']) })).toBe(
      'chords: found a list of 501, expected 500 items at most.',
    );
  });
});
