import { fc } from '@fast-check/vitest';
import { expect, test } from 'vitest';
import { applyEdit } from '../../../src/core/keymap/apply-edit.ts';
import type { Edit } from '../../../src/core/keymap/edit.ts';
import { checkKeymap, readKeymap } from '../../../src/core/keymap/read.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { writeKeymap } from '../../../src/core/keymap/write.ts';
import { grownKeymapArbitrary } from '../arbitraries/grown-keymap.ts';
import { keymapArbitrary } from '../arbitraries/keymap-arbitrary.ts';
import { diaryArbitrary } from '../arbitraries/keymap-document.ts';
import { editArbitrary } from '../arbitraries/keymap-edits.ts';

const caseArbitrary = grownKeymapArbitrary()
  .chain((keymap) =>
    diaryArbitrary(keymap).map((diary) => (diary.length > 0 ? { ...keymap, diary } : keymap)),
  )
  .chain((keymap) => fc.record({ keymap: fc.constant(keymap), edit: editArbitrary(keymap) }));

function frozen<Value>(value: Value): Value {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}

function law(keymap: Keymap, edit: Edit): 'made' | 'refused' {
  const before = JSON.stringify([keymap, edit]);
  const outcome = applyEdit(frozen(keymap), frozen(edit));
  expect(JSON.stringify([keymap, edit])).toBe(before);
  if (!outcome.ok) {
    expect(outcome.problem).toMatch(/^\S.*\.$/);
    return 'refused';
  }
  const { keymap: after, title, alongside } = outcome.value;
  expect(checkKeymap(after)).toEqual({ ok: true, value: after });
  expect(readKeymap(writeKeymap(after))).toMatchObject({
    ok: true,
    value: JSON.parse(JSON.stringify(after)),
  });
  expect(title).toMatch(/^\S/);
  for (const sentence of alongside) expect(sentence).toMatch(/^\S.*\.$/);
  return 'made';
}

test('every edit leaves a valid keymap or says why it cannot be made; neither changes what it was given', () => {
  const count = new Map<string, number>();
  void fc.assert(
    fc.property(caseArbitrary, ({ keymap, edit }) => {
      const how = `${edit.edit} ${law(keymap, edit)}`;
      count.set(how, (count.get(how) ?? 0) + 1);
    }),
    { numRuns: 1500 },
  );
  const kinds = new Set([...count.keys()].map((how) => how.split(' ')[0]));
  expect(kinds.size).toBe(30);
  for (const kind of kinds) expect([kind, count.get(`${kind} made`)]).not.toEqual([kind, undefined]);
}, 30_000);

test('edits one after another, each taken back by its snapshot, lead back to the beginning', () => {
  const editing = keymapArbitrary({ maxKeys: 4 }).chain((keymap) =>
    fc.record({ keymap: fc.constant(keymap), edits: fc.array(editArbitrary(keymap), { maxLength: 12 }) }),
  );
  void fc.assert(
    fc.property(editing, ({ keymap, edits }) => {
      const first = JSON.stringify(keymap);
      const snapshots: Keymap[] = [keymap];
      for (const edit of edits) {
        const outcome = applyEdit(snapshots.at(-1) ?? keymap, edit);
        if (outcome.ok) snapshots.push(outcome.value.keymap);
      }
      expect(snapshots.every((one) => checkKeymap(one).ok)).toBe(true);
      expect(JSON.stringify(snapshots[0])).toBe(first);
    }),
    { numRuns: 150 },
  );
}, 30_000);

test('what an edit does not touch stays the same object', () => {
  void fc.assert(
    fc.property(keymapArbitrary({ maxLayers: 3 }), (keymap) => {
      const outcome = applyEdit(keymap, { edit: 'rename-layer', layer: 'base', name: 'Ground' });
      if (!outcome.ok) throw new Error(outcome.problem);
      expect(outcome.value.keymap.board).toBe(keymap.board);
      expect(outcome.value.keymap.layers[0]?.places).toBe(keymap.layers[0]?.places);
      expect(outcome.value.keymap.chords).toBe(keymap.chords);
    }),
    { numRuns: 50 },
  );
});
