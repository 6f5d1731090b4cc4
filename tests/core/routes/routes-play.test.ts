import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { play } from '../../../src/core/engine/play.ts';
import { producesExactly } from '../../../src/core/host/produces-exactly.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { needText, parseNeed } from '../../../src/core/keymap/need.ts';
import { findRoutes } from '../../../src/core/routes/find-routes.ts';
import { type KeymapChoice, keymapArbitrary } from '../arbitraries/keymap-arbitrary.ts';
import { isForHands } from './for-hands.ts';

const NEEDS = [
  ...['a', 'e', 'Q', 'A', '1', '!', ' ', '~', '"', 'key:ArrowLeft', 'key:Enter', 'key:KeyA', 'key:ShiftLeft'],
  ...[
    'key:ControlLeft',
    'key:AltRight',
    'shortcut:Control+KeyA',
    'shortcut:Control+Shift+KeyA',
    'shortcut:Meta+Enter',
  ],
].map((text) => {
  const need = parseNeed(text);
  if (!need.ok) throw new Error(need.problem);
  return need.value;
});

const FAMILIES: readonly (readonly [string, KeymapChoice])[] = [
  ['anything', {}],
  ['keys, layers, modifiers', { kinds: ['key', 'layer', 'modifier', 'char'], maxLayers: 4, maxChords: 2 }],
  ['many chords', { kinds: ['key', 'layer', 'char'], maxKeys: 6, maxChords: 8, maxLayers: 3 }],
];

describe('every route, played by the engine, produces exactly its need', () => {
  test.each(FAMILIES)(
    '%s',
    (_, choice) => {
      fc.assert(
        fc.property(keymapArbitrary(choice).filter(isForHands), (keymap) => {
          for (const { need, route } of findRoutes(keymap, usHost, NEEDS)) {
            if (route === null) continue;
            const played = play(keymap, route.events, usHost);
            if (!played.ok) throw new Error(`${needText(need)}: ${played.problem.reason}`);
            const told = `${needText(need)} by ${JSON.stringify(route.events)} gives ${JSON.stringify(played.value.output)}`;
            expect(producesExactly(usHost, played.value.output, need), told).toBe(true);
            expect(route.events.filter(({ type }) => type === 'down').length).toBe(route.cost.presses);
          }
        }),
        { numRuns: 300, seed: 36 },
      );
    },
    60_000,
  );
});
