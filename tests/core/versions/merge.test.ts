import { fc } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { keyName } from '../../../src/core/board/key-name.ts';
import { applyEdit } from '../../../src/core/keymap/apply-edit.ts';
import type { Edit } from '../../../src/core/keymap/edit.ts';
import { checkKeymap } from '../../../src/core/keymap/read.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { compareKeymaps, isSame } from '../../../src/core/versions/compare.ts';
import { type Choice, mergeKeymaps } from '../../../src/core/versions/merge.ts';
import { keymapArbitrary } from '../arbitraries/keymap-arbitrary.ts';
import { editArbitrary } from '../arbitraries/keymap-edits.ts';
import { edited } from '../keymap/edits.ts';
import { A, B, chord, layer, small, toLayer } from '../keymap/small.ts';

const base: Keymap = {
  ...small(
    [
      layer('base', { k1: { tap: A, hold: toLayer('sym') }, k2: { tap: B } }),
      layer('sym', { k3: { tap: A } }),
      layer('nav', { k4: { tap: B } }),
    ],
    [chord('c1', ['k1', 'k2'])],
  ),
  needs: { lists: ['ascii'], own: ['≥'], waived: [] },
};

const having = (...edits: Edit[]): Keymap =>
  edits.reduce((keymap, edit) => edited(keymap, edit).keymap, base);
const bind = (key: string, code: 'KeyX' | 'KeyY', on = 'base'): Edit => ({
  edit: 'bind',
  place: { layer: on, key },
  side: 'tap',
  action: { do: 'key', code },
});

function merged(mine: Keymap, theirs: Keymap, choices: Record<string, Choice> = {}) {
  const outcome = mergeKeymaps(base, mine, theirs, new Map(Object.entries(choices)));
  if (!outcome.ok) throw new Error(outcome.problem);
  expect(checkKeymap(outcome.value.keymap)).toEqual({ ok: true, value: outcome.value.keymap });
  return { ...outcome.value, parts: outcome.value.conflicts.map(({ part }) => part) };
}

describe('what only one of the two changed is taken', () => {
  test.each<[string, Edit, Edit]>([
    ['keys of one layer', bind('k3', 'KeyX'), bind('k5', 'KeyY')],
    ['tap here, another layer there', bind('k1', 'KeyX'), bind('k1', 'KeyY', 'nav')],
    ['name and notes', { edit: 'rename-design', name: 'New' }, { edit: 'set-notes', notes: 'some' }],
    [
      'a chord and a layer',
      { edit: 'delete-chord', chord: 'c1' },
      { edit: 'rename-layer', layer: 'nav', name: 'Moves' },
    ],
    ['a layer here, a key there', { edit: 'delete-layer', layer: 'nav' }, bind('k5', 'KeyY')],
    [
      'order here, a layer there',
      { edit: 'move-layer', layer: 'nav', to: 1 },
      { edit: 'add-layer', layer: layer('num', {}) },
    ],
    [
      'timing and computers',
      { edit: 'set-timing', timing: { holdAfterMs: 150 } },
      { edit: 'set-hosts', hosts: [{ system: 'linux', layout: 'de', variant: '' }] },
    ],
    [
      'needs of both',
      { edit: 'set-needs', needs: { lists: ['ascii', 'editing'], own: ['≥'], waived: [] } },
      { edit: 'set-needs', needs: { lists: ['ascii'], own: ['≥', '≤'], waived: [{ need: 'a', why: 'no' }] } },
    ],
  ])('%s', (_, my, their) => {
    const one = merged(having(my), having(their));
    const other = merged(having(their), having(my));
    expect([one.conflicts, one.leftOut]).toEqual([[], []]);
    expect(isSame(compareKeymaps(one.keymap, other.keymap))).toBe(true);
    // Needs are put as wholes by one edit after the other, so they have a test of their own.
    if (my.edit !== 'set-needs') expect(isSame(compareKeymaps(one.keymap, having(my, their)))).toBe(true);
  });

  test('needs are brought together one by one', () => {
    const needs = (lists: string[], own: string[]): Edit => ({
      edit: 'set-needs',
      needs: { lists, own, waived: [] },
    });
    const { keymap } = merged(
      having(needs(['ascii', 'media'], [])),
      having(needs(['ascii', 'editing'], ['≥', '≤'])),
    );
    expect(keymap.needs).toEqual({ lists: ['ascii', 'media', 'editing'].sort(), own: ['≤'], waived: [] });
  });

  test('timing is brought together field by field', () => {
    const timing = (fields: Keymap['timing']): Keymap => ({ ...base, ...(fields && { timing: fields }) });
    const was = timing({ holdAfterMs: 200, quietBeforeMs: 90 });
    const mine = timing({ holdAfterMs: 150, quietBeforeMs: 90, holdBy: 'tap-inside' });
    const outcome = mergeKeymaps(was, mine, timing({ holdAfterMs: 180 }));
    if (!outcome.ok) throw new Error(outcome.problem);
    expect(outcome.value.conflicts.map(({ part }) => part)).toEqual(['timing holdAfterMs']);
    expect(outcome.value.keymap.timing).toEqual({ holdAfterMs: 180, holdBy: 'tap-inside' });
  });

  test('chords and layers made by both under one id are both kept', () => {
    const mine = having(
      { edit: 'add-chord', chord: chord('c2', ['k2', 'k3']) },
      { edit: 'add-layer', layer: layer('num', { k1: { tap: A } }) },
      { edit: 'bind', place: { layer: 'base', key: 'k5' }, side: 'hold', action: toLayer('num') },
    );
    const theirs = having(
      { edit: 'add-chord', chord: chord('c2', ['k3', 'k4']) },
      { edit: 'add-layer', layer: layer('num', { k2: { tap: B } }) },
    );
    const { keymap, conflicts } = merged(mine, theirs);
    expect(conflicts).toEqual([]);
    expect(keymap.chords?.map(({ keys }) => keys.join())).toEqual(['k1,k2', 'k3,k4', 'k2,k3']);
    expect(keymap.layers.map(({ places }) => Object.keys(places).join())).toEqual([
      'k1,k2,k5',
      'k3',
      'k4',
      'k2',
      'k1',
    ]);
    // What led to my layer still does.
    expect(keymap.layers[0]?.places.k5?.hold).toEqual(toLayer(keymap.layers[4]?.id ?? ''));
  });
});

describe('what both changed in different ways is asked', () => {
  test('theirs stands until mine is chosen', () => {
    const [mine, theirs] = [having(bind('k1', 'KeyX')), having(bind('k1', 'KeyY'))];
    const asked = merged(mine, theirs);
    expect(asked.parts).toEqual(['place base k1']);
    expect(asked.keymap.layers[0]?.places.k1).toEqual(theirs.layers[0]?.places.k1);
    expect(merged(mine, theirs, { 'place base k1': 'mine' }).keymap.layers[0]?.places.k1).toEqual(
      mine.layers[0]?.places.k1,
    );
  });

  test('a layer that one deleted and the other worked on goes or stays as a whole', () => {
    const mine = having({ edit: 'delete-layer', layer: 'sym' });
    const theirs = having(bind('k4', 'KeyX', 'sym'));
    const stays = merged(mine, theirs);
    expect(stays.parts).toEqual(['layer sym']);
    expect(stays.keymap.layers.find(({ id }) => id === 'sym')?.places).toEqual(theirs.layers[1]?.places);
    const goes = merged(mine, theirs, { 'layer sym': 'mine' });
    expect(goes.keymap.layers.map(({ id }) => id)).toEqual(['base', 'nav']);
  });

  test('what newly leads to a layer that the other deleted goes with it, and is told', () => {
    const mine = having({
      edit: 'bind',
      place: { layer: 'base', key: 'k5' },
      side: 'hold',
      action: toLayer('nav'),
    });
    const { keymap, leftOut, conflicts } = merged(mine, having({ edit: 'delete-layer', layer: 'nav' }));
    expect(conflicts).toEqual([]);
    const k5 = keyName(keymap.board, 'k5');
    expect(leftOut).toEqual([`Took away what led to the layer: ${k5} on Base (hold).`]);
    expect(keymap.layers[0]?.places).not.toHaveProperty('k5');
  });

  test('two orders of the layers', () => {
    const [mine, theirs] = [
      having({ edit: 'add-layer', layer: layer('num') }, { edit: 'move-layer', layer: 'nav', to: 1 }),
      having({ edit: 'add-layer', layer: layer('fn') }, { edit: 'move-layer', layer: 'nav', to: 1 }),
    ];
    // The same order of what both have: nothing to ask.
    expect(merged(mine, theirs).parts).toEqual([]);
    const three = { ...base, layers: [...base.layers, layer('x')] };
    const order = (...ids: string[]): Keymap => ({
      ...three,
      layers: ids.map((id) => three.layers.find((each) => each.id === id) ?? layer(id)),
    });
    const outcome = mergeKeymaps(three, order('base', 'x', 'sym', 'nav'), order('base', 'nav', 'sym', 'x'));
    expect(outcome.ok && outcome.value.conflicts.map(({ kind }) => kind)).toEqual(['layer order']);
    expect(outcome.ok && outcome.value.keymap.layers.map(({ id }) => id)).toEqual([
      'base',
      'nav',
      'sym',
      'x',
    ]);
  });

  test('other base layers cannot be brought together', () => {
    const mine: Keymap = { ...base, layers: [layer('ground'), ...base.layers.slice(1)] };
    expect(mergeKeymaps(base, mine, base)).toMatchObject({ ok: false });
  });
});

const three = keymapArbitrary({ maxKeys: 4, maxLayers: 3 }).chain((keymap) =>
  fc.record({
    keymap: fc.constant(keymap),
    mine: fc.array(editArbitrary(keymap), { maxLength: 4 }),
    theirs: fc.array(editArbitrary(keymap), { maxLength: 4 }),
  }),
);

const applied = (keymap: Keymap, edits: readonly Edit[]) =>
  edits.reduce((now, edit) => {
    const outcome = applyEdit(now, edit);
    return outcome.ok ? outcome.value.keymap : now;
  }, keymap);

test('whoever changed nothing gets what the other made, and a merge is valid or says why there is none', () => {
  void fc.assert(
    fc.property(three, ({ keymap, mine, theirs }) => {
      const [one, other] = [applied(keymap, mine), applied(keymap, theirs)];
      for (const [my, their, wanted] of [
        [one, keymap, one],
        [keymap, other, other],
        [one, one, one],
      ] as const) {
        const outcome = mergeKeymaps(keymap, my, their);
        if (!outcome.ok) {
          expect(outcome.problem).toMatch(/base layers/);
          continue;
        }
        expect([outcome.value.conflicts, outcome.value.leftOut]).toEqual([[], []]);
        expect(isSame(compareKeymaps(outcome.value.keymap, wanted))).toBe(true);
      }
      const both = mergeKeymaps(keymap, one, other);
      if (both.ok) expect(checkKeymap(both.value.keymap).ok).toBe(true);
      else expect(both.problem).toMatch(/^\S.*\.$/s);
    }),
    { numRuns: 120 },
  );
});
