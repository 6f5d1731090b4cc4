import { test as propertyTest } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { checkKeymap, readKeymap } from '../../../src/core/keymap/read.ts';
import { writeKeymap } from '../../../src/core/keymap/write.ts';
import { documentArbitrary } from '../arbitraries/keymap-document.ts';
import { A, B, boardKey, chord, layer, small } from './small.ts';

const $schema = 'neutral-keymap.schema.json';

describe('what is written is read back equal', () => {
  propertyTest.prop([documentArbitrary()], { numRuns: 400 })(
    'for random documents',
    (keymap) => {
      expect(checkKeymap(keymap)).toEqual({ ok: true, value: keymap });
      expect(readKeymap(writeKeymap(keymap))).toEqual({ ok: true, value: { $schema, ...keymap } });
    },
    30_000,
  );

  propertyTest.prop([documentArbitrary()], { numRuns: 200 })('writing again changes nothing', (keymap) => {
    const text = writeKeymap(keymap);
    const read = readKeymap(text);
    expect(read.ok && writeKeymap(read.value)).toBe(text);
    expect(JSON.parse(text)).toEqual({ $schema, ...keymap });
  });
});

describe('the text', () => {
  test('keeps small things on one line, fields and bindings in order, and ends in a line break', () => {
    const keymap = {
      ...small(
        [
          layer('base', {
            k2: { hold: { do: 'key', code: 'ShiftLeft' }, tap: B, holdAfterMs: 180 },
            k1: { tap: A },
          }),
          layer('sym'),
        ],
        [chord('c1', ['k1', 'k2'], { layers: ['base'] })],
      ),
      board: { keys: ['k1', 'k2'].map(boardKey), name: 'Two' },
    };
    expect(writeKeymap(keymap)).toBe(
      [
        '{',
        '  "$schema": "neutral-keymap.schema.json",',
        '  "format": "neutral-keymap",',
        '  "version": 1,',
        '  "name": "Small",',
        '  "board": {',
        '    "name": "Two",',
        '    "keys": [',
        '      { "id": "k1", "x": 0, "y": 0, "rotation": 0, "width": 17.5, "height": 16.5, "hand": "left", "finger": "index", "home": false },',
        '      { "id": "k2", "x": 20, "y": 0, "rotation": 0, "width": 17.5, "height": 16.5, "hand": "left", "finger": "index", "home": false }',
        '    ]',
        '  },',
        '  "hosts": [{ "system": "linux", "layout": "us", "variant": "" }],',
        '  "layers": [',
        '    {',
        '      "id": "base",',
        '      "name": "Base",',
        '      "places": {',
        '        "k1": { "tap": { "do": "key", "code": "KeyA" } },',
        '        "k2": { "tap": { "do": "key", "code": "KeyB" }, "hold": { "do": "key", "code": "ShiftLeft" }, "holdAfterMs": 180 }',
        '      }',
        '    },',
        '    { "id": "sym", "name": "SYM", "places": {} }',
        '  ],',
        '  "chords": [{ "id": "c1", "keys": ["k1", "k2"], "windowMs": 45, "layers": ["base"], "action": { "do": "key", "code": "Tab" } }]',
        '}',
        '',
      ].join('\n'),
    );
  });

  test('does not depend on the order in which fields were made', () => {
    const one = small([layer('base', { k1: { tap: A, hold: B, holdAfterMs: 1 }, k2: { tap: A } })]);
    const other = small([layer('base', { k2: { tap: A }, k1: { holdAfterMs: 1, hold: B, tap: A } })]);
    const reversed = Object.fromEntries(Object.entries(other).reverse());
    const read = checkKeymap(reversed);
    expect(read.ok && writeKeymap(read.value)).toBe(writeKeymap(one));
  });

  test('loses nothing of a keymap that was broken in memory', () => {
    const broken = small([layer('base', { k1: { tap: A }, gone: { tap: B } })]);
    expect(JSON.parse(writeKeymap(broken))).toEqual({ $schema, ...broken });
  });
});
