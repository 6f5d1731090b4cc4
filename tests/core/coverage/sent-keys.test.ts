import { fc, test as propertyTest } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { sentKeys } from '../../../src/core/coverage/sent-keys.ts';
import { play } from '../../../src/core/engine/play.ts';
import { hostFromTable } from '../../../src/core/host/host-from-table.ts';
import { typedText } from '../../../src/core/host/typed.ts';
import type { Action } from '../../../src/core/keymap/types.ts';
import { findRoutes } from '../../../src/core/routes/find-routes.ts';
import { SHIPPED_TABLES, shippedTable } from '../host/shipped-tables.ts';
import { chord, layer, small, toLayer } from '../keymap/small.ts';

const host = (name: string) => hostFromTable(shippedTable(name));
const char = (one: string): Action => ({ do: 'char', char: one });
const tapping = (action: Action) => small([layer('base', { k1: { tap: action } })]);
const met = (action: Action, from: string, to: string) =>
  sentKeys(tapping(action), host(from), host(to)).layers[0]?.places.k1?.tap;

describe('what another computer meets', () => {
  test.each<[string, Action, string, string, Action]>([
    ['one key', char('z'), 'us', 'de', { do: 'key', code: 'KeyZ', with: [] }],
    ['one key with modifiers', char('ł'), 'pl', 'us', { do: 'key', code: 'KeyL', with: ['AltRight'] }],
    ['a dead key and its letter', char('ü'), 'us-mac', 'us-mac', char('ü')],
    [
      'the same strokes, read otherwise',
      char('é'),
      'de',
      'es',
      { do: 'board', label: 'types no single character' },
    ],
    ['a text of one character', { do: 'text', text: 'a' }, 'us', 'fr', { do: 'key', code: 'KeyA', with: [] }],
    [
      'a text of several',
      { do: 'text', text: 'ab' },
      'us',
      'us',
      { do: 'board', label: 'types no single character' },
    ],
    ['what had no strokes', char('あ'), 'us', 'us', { do: 'board', label: 'types nothing' }],
    ['a key is a key', { do: 'key', code: 'KeyZ' }, 'us', 'de', { do: 'key', code: 'KeyZ' }],
    ['layers are none of its business', toLayer('sym'), 'us', 'de', toLayer('sym')],
  ])('%s', (_, action, from, to, expected) => {
    expect(met(action, from, to)).toEqual(expected);
  });

  test('holds and chords are met alike, and the design itself stays as it is', () => {
    const keymap = small(
      [layer('base', { k1: { hold: char('z') } })],
      [chord('c1', ['k2', 'k3'], { action: char('y') })],
    );
    const before = structuredClone(keymap);
    const there = sentKeys(keymap, host('us'), host('de'));
    expect(there.layers[0]?.places.k1?.hold).toMatchObject({ code: 'KeyZ' });
    expect(there.chords?.[0]?.action).toMatchObject({ code: 'KeyY' });
    expect(keymap).toEqual(before);
  });
});

propertyTest.prop(
  [
    fc.constantFrom(...SHIPPED_TABLES),
    fc.constantFrom(...SHIPPED_TABLES),
    fc.constantFrom(...'azyq@{;ß€łüéñ'),
    fc.constantFrom(...'azyq@{;ß€łüéñ'),
  ],
  { numRuns: 300, seed: 36 },
)('a need is reached there exactly where the real presses type it there', (from, to, bound, wanted) => {
  const keymap = tapping(char(bound));
  const tap = [
    { t: 0, key: 'k1', type: 'down' },
    { t: 50, key: 'k1', type: 'up' },
  ] as const;
  const played = play(keymap, tap, host(from));
  const typed = played.ok ? typedText(played.value.output, host(to)) : '';
  const [found] = findRoutes(sentKeys(keymap, host(from), host(to)), host(to), [
    { kind: 'char', char: wanted },
  ]);
  expect(found?.route !== null).toBe(typed === wanted);
});
