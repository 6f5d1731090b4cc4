import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hostFromTable } from '../../../src/core/host/host-from-table.ts';
import type { Need } from '../../../src/core/keymap/need.ts';
import { FewestPresses } from '../../../src/core/routes/fewest-presses.ts';
import { findRoutes } from '../../../src/core/routes/find-routes.ts';
import { goalsOf } from '../../../src/core/routes/goals.ts';
import { meansOf } from '../../../src/core/routes/means.ts';
import { planOf } from '../../../src/core/routes/plan.ts';
import { strokePlacesOf } from '../../../src/core/routes/stroke-places.ts';
import { type GrownChoice, grownKeymapArbitrary } from '../arbitraries/grown-keymap.ts';
import { shippedTable } from '../host/shipped-tables.ts';

const CHARS = ['a', 'A', 'á', 'Á', 'â', '^', '´', '1', '!', '{', 'ß'];
const NEEDS: readonly Need[] = [
  ...CHARS.map((char) => ({ kind: 'char', char }) as const),
  { kind: 'key', code: 'Enter' },
  { kind: 'key', code: 'ShiftLeft' },
  { kind: 'key', code: 'AltRight' },
  { kind: 'shortcut', code: 'KeyA', modifiers: ['Control', 'Shift'] },
];

const FAMILIES: readonly GrownChoice[] = [
  { chars: CHARS },
  { kinds: ['key', 'layer', 'modifier', 'char'], maxLayers: 5, maxKeys: 10, chars: CHARS },
];

test('no route takes fewer presses than were reckoned, and many take just these', () => {
  const host = hostFromTable(shippedTable('de'));
  const count = { sure: 0, longer: 0 };
  for (const choice of FAMILIES) {
    fc.assert(
      fc.property(grownKeymapArbitrary(choice), (keymap) => {
        const plan = planOf(keymap, host);
        const every = NEEDS.map((_, index) => index);
        const [one, two, three] = [1, 2, 3].map((strokes) => {
          const goals = goalsOf(NEEDS, every, host, strokes, meansOf(plan));
          return new FewestPresses(plan, goals, strokePlacesOf(plan)).fromRest();
        });
        for (const [index, { route }] of findRoutes(keymap, host, NEEDS).entries()) {
          if (route === null) continue;
          const least = [one, two, three][route.cost.strokes - 1]?.get(index);
          expect(least).toBeDefined();
          expect(least).toBeLessThanOrEqual(route.cost.presses);
          if (least !== route.cost.presses) continue;
          count[route.cost.presses > 1 ? 'longer' : 'sure'] += 1;
        }
      }),
      { numRuns: 25, seed: 36 },
    );
  }
  // A reckoning that is always far below would hold the law and be of no use.
  expect(count.sure).toBeGreaterThan(10);
  expect(count.longer).toBeGreaterThan(10);
});
