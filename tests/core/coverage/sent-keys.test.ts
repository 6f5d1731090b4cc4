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

test('from any host to any other, a need is reached exactly where the real presses type it there', () => {
  const chars = [...'azyq@{;ß€łüéñ'];
  const needs = chars.map((one) => ({ kind: 'char', char: one }) as const);
  const hosts = SHIPPED_TABLES.map(host);
  const tap = [
    { t: 0, key: 'k1', type: 'down' },
    { t: 50, key: 'k1', type: 'up' },
  ] as const;
  for (const from of hosts) {
    for (const bound of chars) {
      const keymap = tapping(char(bound));
      const played = play(keymap, tap, from);
      for (const to of hosts) {
        const typed = played.ok ? typedText(played.value.output, to) : '';
        const found = findRoutes(sentKeys(keymap, from, to), to, needs);
        const reached = chars.filter((_, at) => found[at]?.route !== null);
        const told = `${bound} of ${from.layout} ${from.variant} read by ${to.layout} ${to.variant}`;
        expect(reached, told).toEqual(chars.filter((one) => one === typed));
      }
    }
  }
}, 60_000);
