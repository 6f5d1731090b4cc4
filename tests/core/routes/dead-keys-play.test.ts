import fc from 'fast-check';
import { expect, test } from 'vitest';
import { play } from '../../../src/core/engine/play.ts';
import { hostFromTable } from '../../../src/core/host/host-from-table.ts';
import { producesExactly } from '../../../src/core/host/produces-exactly.ts';
import { needText } from '../../../src/core/keymap/need.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { findRoutes } from '../../../src/core/routes/find-routes.ts';
import { keymapArbitrary } from '../arbitraries/keymap-arbitrary.ts';
import { shippedTable } from '../host/shipped-tables.ts';
import { layer, small } from '../keymap/small.ts';
import { isForHands } from './for-hands.ts';

/** Per host: codes of its dead keys that take the place of ordinary ones, and characters of two strokes and three. */
const HOSTS = [
  ['de', 'Equal', 'Backquote', ['a', 'á', 'à', 'Á', 'ê', 'Ê', '^', '´', 'ä', '{']],
  ['us-mac', 'KeyU', 'KeyE', ['a', 'ä', 'Ä', 'á', 'E', 'ü', '´', '¨']],
  ['us-intl', 'Quote', 'BracketLeft', ['a', 'á', 'ä', 'Á', '´', '¨', "'", 'ấ']],
] as const;

/** The same design with other codes, so that two of its ordinary keys are dead keys on the host. */
function withDeadKeys(keymap: Keymap, one: string, other: string): Keymap {
  return JSON.parse(
    JSON.stringify(keymap).replaceAll('"KeyB"', `"${one}"`).replaceAll('"KeyC"', `"${other}"`),
  );
}

test('a tap that stays down for being quick is no way where the hold before it took too long', () => {
  const keymap: Keymap = {
    ...small([
      layer('base', {
        k1: { tap: { do: 'key', code: 'KeyA' } },
        k2: { tap: { do: 'key', code: 'ShiftLeft' }, hold: { do: 'key', code: 'Quote' } },
      }),
    ]),
    timing: { holdAfterMs: 48, holdBy: 'press-inside', quietBeforeMs: 51, sameHandTaps: false },
  };
  const [found] = findRoutes(keymap, hostFromTable(shippedTable('us-intl')), [{ kind: 'char', char: 'Á' }]);
  expect(found?.route).toBeNull();
});

test.each(HOSTS)(
  'dead keys of %s: every route, played, produces exactly its need',
  (name, one, other, chars) => {
    const host = hostFromTable(shippedTable(name));
    const needs = chars.map((char) => ({ kind: 'char', char }) as const);
    let sequences = 0;
    const keymaps = keymapArbitrary({ kinds: ['key', 'layer', 'modifier', 'char'], chars, maxChords: 2 })
      .filter(isForHands)
      .map((keymap) => withDeadKeys(keymap, one, other));
    fc.assert(
      fc.property(keymaps, (keymap) => {
        for (const { need, route } of findRoutes(keymap, host, needs)) {
          if (route === null) continue;
          const played = play(keymap, route.events, host);
          const told = `${needText(need)} by ${JSON.stringify(route.events)}`;
          expect(played.ok && producesExactly(host, played.value.output, need), told).toBe(true);
          if (route.cost.strokes > 1 && route.cost.presses > 1) sequences += 1;
        }
      }),
      { numRuns: 120, seed: 36 },
    );
    // Without ways over several strokes, the law would have been held against nothing.
    expect(sequences).toBeGreaterThan(10);
  },
);
