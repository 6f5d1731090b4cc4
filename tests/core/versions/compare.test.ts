import { fc } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import { applyEdit } from '../../../src/core/keymap/apply-edit.ts';
import type { Edit } from '../../../src/core/keymap/edit.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { changeRows } from '../../../src/core/versions/change-rows.ts';
import { compareKeymaps, isSame } from '../../../src/core/versions/compare.ts';
import { keymapArbitrary } from '../arbitraries/keymap-arbitrary.ts';
import { documentArbitrary } from '../arbitraries/keymap-document.ts';
import { editArbitrary } from '../arbitraries/keymap-edits.ts';
import { edited } from '../keymap/edits.ts';
import { A, B, chord, layer, small, toLayer } from '../keymap/small.ts';

const start: Keymap = small(
  [
    layer('base', { k1: { tap: A, hold: toLayer('sym') }, k2: { tap: B } }),
    layer('sym', {
      k1: { tap: { do: 'key', code: 'Digit9', with: ['ShiftLeft'] } },
      k3: { tap: { do: 'nothing' } },
    }),
    layer('nav'),
  ],
  [chord('c1', ['k1', 'k2'], { name: 'Tab' }), chord('c2', ['k2', 'k3'], { layers: ['sym'] })],
);

const rowsOf = (before: Keymap, after: Keymap) =>
  changeRows(compareKeymaps(before, after), { before: usHost, after: usHost }).map(
    ({ where, what }) => `${where}: ${what}`,
  );

describe('a change in words', () => {
  test.each<[Edit, string[]]>([
    [
      { edit: 'bind', place: { layer: 'sym', key: 'k1' }, side: 'tap', action: { do: 'char', char: '{' } },
      [': ( became {'],
    ],
    [{ edit: 'bind', place: { layer: 'nav', key: 'k1' }, side: 'tap', action: B }, [': B is new']],
    [{ edit: 'unbind', place: { layer: 'sym', key: 'k3' } }, [': blank is gone']],
    [
      {
        edit: 'bind',
        place: { layer: 'base', key: 'k1' },
        side: 'hold',
        action: { do: 'key', code: 'ShiftLeft' },
      },
      [': hold: layer SYM while held became Left Shift'],
    ],
    [
      {
        edit: 'set-binding-timing',
        place: { layer: 'base', key: 'k1' },
        timing: { holdAfterMs: 180, holdBy: 'tap-inside' },
      },
      [': hold after 200 ms became 180 ms; hold by time only became a tap inside'],
    ],
    [
      { edit: 'swap-bindings', one: { layer: 'base', key: 'k2' }, other: { layer: 'base', key: 'k4' } },
      [': B is gone', ': B is new'],
    ],
    [{ edit: 'rename-layer', layer: 'sym', name: 'Signs' }, ['Signs: was called SYM']],
    [
      { edit: 'add-layer', layer: layer('num', { k1: { tap: A } }) },
      ['NUM: the layer is new, 1 key', ': A is new'],
    ],
    [{ edit: 'delete-layer', layer: 'nav' }, ['NAV: the layer is gone, 0 keys']],
    [{ edit: 'move-layer', layer: 'nav', to: 1 }, ['SYM: lies above NAV now']],
    [{ edit: 'change-chord', chord: 'c1', to: { windowMs: 60 } }, [': window 45 ms became 60 ms']],
    [
      { edit: 'change-chord', chord: 'c2', to: { layers: null, action: { do: 'key', code: 'Escape' } } },
      [': Tab became Escape; live on SYM became live on every layer'],
    ],
    [{ edit: 'delete-chord', chord: 'c1' }, [': Tab is gone']],
    [{ edit: 'rename-design', name: 'Other' }, [': the name “Small” became “Other”']],
    [
      { edit: 'set-timing', timing: { quietBeforeMs: 90 } },
      [': timing of the whole design: quiet before 0 ms became 90 ms'],
    ],
    [
      { edit: 'set-needs', needs: { lists: ['ascii'], own: ['≥'], waived: [{ need: 'a', why: 'never' }] } },
      [': needs that came: list ascii, ≥, waived: a'],
    ],
    [
      { edit: 'set-hosts', hosts: [{ system: 'linux', layout: 'de', variant: '' }] },
      [': computers: linux us became linux de'],
    ],
  ])('%j', (edit, wanted) => {
    const rows = rowsOf(start, edited(start, edit).keymap);
    expect(rows).toHaveLength(wanted.length);
    wanted.forEach((words, at) => {
      expect(rows[at]).toContain(words);
    });
  });

  test('the key is named as a person calls it, with its layer', () => {
    const after = edited(start, {
      edit: 'bind',
      place: { layer: 'sym', key: 'k1' },
      side: 'tap',
      action: { do: 'char', char: '{' },
    }).keymap;
    expect(rowsOf(start, after)).toEqual(['left far outer index middle, SYM: ( became {']);
  });

  test('a key that moves, turns, grows or gets another finger', () => {
    const keys = start.board.keys.map((key, at) =>
      at === 0
        ? { ...key, x: key.x + 3, y: key.y + 4, rotation: 10 }
        : at === 1
          ? { ...key, width: 20, finger: 'middle' as const }
          : key,
    );
    const after = { ...start, board: { ...start.board, keys } };
    expect(rowsOf(start, after).map((row) => row.replace(/^.*?: /, ''))).toEqual([
      'lies 5.0 mm from where it was; turned from 0° to 10°',
      'its cap is 20 × 16.5 mm now; left index became left middle',
    ]);
  });
});

test('layers and chords under other ids are the same where their names or keys say so', () => {
  const text = JSON.stringify(start).replaceAll('"sym"', '"s-7"').replaceAll('"c1"', '"k-1"');
  expect(isSame(compareKeymaps(start, JSON.parse(text)))).toBe(true);
});

test('a design is the same as itself, however it was copied', () => {
  void fc.assert(
    fc.property(documentArbitrary(), (keymap) => {
      expect(isSame(compareKeymaps(keymap, structuredClone(keymap)))).toBe(true);
    }),
    { numRuns: 100 },
  );
});

/** Whatever these change, somebody sees or feels; two bindings that change places may differ in timing without effect. */
const SEEN: readonly Edit['edit'][] = [
  'bind',
  'unbind',
  'move-binding',
  'fill-layer',
  'add-layer',
  'rename-layer',
  'delete-layer',
  'move-layer',
  'duplicate-layer',
  'add-chord',
  'delete-chord',
  'delete-key',
  'rename-design',
  'set-notes',
];

test('no edit that does something goes unseen; looking back shows as many places and chords', () => {
  const editing = keymapArbitrary({ maxKeys: 5 }).chain((keymap) =>
    fc.record({ keymap: fc.constant(keymap), edit: editArbitrary(keymap) }),
  );
  void fc.assert(
    fc.property(editing, ({ keymap, edit }) => {
      const outcome = applyEdit(keymap, edit);
      fc.pre(outcome.ok && JSON.stringify(outcome.value.keymap) !== JSON.stringify(keymap));
      const after = outcome.value.keymap;
      const there = compareKeymaps(keymap, after);
      const back = compareKeymaps(after, keymap);
      if (SEEN.includes(edit.edit)) expect(isSame(there)).toBe(false);
      expect([back.places.length, back.chords.length]).toEqual([there.places.length, there.chords.length]);
      const rows = changeRows(there, { before: usHost, after: null });
      expect(rows.length === 0).toBe(isSame(there));
      for (const { what } of rows) expect(what).toMatch(/\S/);
    }),
    { numRuns: 400 },
  );
});
