import { expect, test } from 'vitest';
import { bindingSchema, chordSchema, keymapSchema, layerSchema } from '../../../src/core/keymap/schema.ts';

/**
 * Fields that comparing and bringing together know of. Where one is added to the format, `compare.ts`, `change-words.ts`,
 * `parts.ts` and `conflict-words.ts` must learn of it, or a version would hide it and a merge would drop it.
 */
test.each([
  [
    'document',
    keymapSchema,
    [
      '$schema',
      'format',
      'version',
      'name',
      'notes',
      'board',
      'hosts',
      'timing',
      'needs',
      'layers',
      'chords',
      'diary',
    ],
  ],
  ['layer', layerSchema, ['id', 'name', 'onWhile', 'places']],
  [
    'binding',
    bindingSchema,
    [
      'tap',
      'onShift',
      'hold',
      'holdAfterMs',
      'holdBy',
      'quietBeforeMs',
      'againWithinMs',
      'sameHandTaps',
      'tapIfAlone',
    ],
  ],
  [
    'chord',
    chordSchema,
    [
      'id',
      'name',
      'keys',
      'windowMs',
      'layers',
      'quietBeforeMs',
      'release',
      'action',
      'onShift',
      'hold',
      'holdAfterMs',
      'holdBy',
      'againWithinMs',
      'tapIfAlone',
    ],
  ],
])('every field of a %s is compared and brought together', (_, schema, known) => {
  expect(Object.keys(schema.shape).toSorted()).toEqual(known.toSorted());
});
