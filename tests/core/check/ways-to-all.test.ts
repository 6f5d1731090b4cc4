import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeName, waysToAll } from '../../../src/core/check/ways-to-all.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { actionsOf, type StandingAction } from '../../../src/core/keymap/actions-of.ts';
import { CODES, type Code } from '../../../src/core/keymap/codes.ts';
import type { Action, Binding, Keymap } from '../../../src/core/keymap/types.ts';
import { findRoutes } from '../../../src/core/routes/find-routes.ts';
import { keymapArbitrary } from '../arbitraries/keymap-arbitrary.ts';
import { layer, small, toLayer } from '../keymap/small.ts';
import { isForHands } from '../routes/for-hands.ts';

/** A key that the design has nowhere. */
function absentKey(keymap: Keymap): Code {
  const used = new Set(actionsOf(keymap).map(({ action }) => (action.do === 'key' ? action.code : null)));
  const absent = CODES.find((code) => /^F\d/.test(code) && !used.has(code));
  if (absent === undefined) throw new Error('every function key is in use');
  return absent;
}

/** The design with that key at one place. */
function markedAt(keymap: Keymap, at: StandingAction['at'], code: Code): Keymap {
  const marker: Action = { do: 'key', code };
  if ('chord' in at) {
    const field = at.side === 'tap' ? 'action' : at.side;
    const chords = keymap.chords?.map((one) => (one.id === at.chord ? { ...one, [field]: marker } : one));
    return chords === undefined ? keymap : { ...keymap, chords };
  }
  const { layer: id, key } = at.place;
  const layers = keymap.layers.map((one) =>
    one.id === id
      ? { ...one, places: { ...one.places, [key]: { ...one.places[key], [at.side]: marker } } }
      : one,
  );
  return { ...keymap, layers };
}

test('on any design: a way found with all others is the one that a search for it alone finds', () => {
  fc.assert(
    fc.property(keymapArbitrary({ maxChords: 3 }).filter(isForHands), (keymap) => {
      const ways = waysToAll(keymap, usHost);
      const code = absentKey(keymap);
      for (const { at } of actionsOf(keymap)) {
        const [alone] = findRoutes(markedAt(keymap, at, code), usHost, [{ kind: 'key', code }]);
        const together = ways.get(placeName(at)) ?? null;
        expect([placeName(at), together?.steps, together?.events]).toEqual([
          placeName(at),
          alone?.route?.steps,
          alone?.route?.events,
        ]);
      }
    }),
    { numRuns: 30 },
  );
});

describe('more places than there are keys to mark them with', () => {
  const names = Array.from({ length: 6 }, (_, at) => `l${at}`);
  const onAll: Record<string, Binding> = Object.fromEntries(
    Array.from({ length: 40 }, (_, at) => [`k${at + 1}`, { tap: { do: 'key', code: 'KeyA' } }]),
  );
  const holds = Object.fromEntries(names.map((name, at) => [`k${at + 41}`, { hold: toLayer(name) }]));
  const layers = [layer('base', { ...onAll, ...holds }), ...names.map((name) => layer(name, onAll))];
  const keymap = small(layers);
  const board = keymap.board;
  const keys = board.keys
    .slice(0, 1)
    .flatMap((first) => Array.from({ length: 46 }, (_, at) => ({ ...first, id: `k${at + 1}` })));

  test('all are found', () => {
    const ways = waysToAll({ ...keymap, board: { ...board, keys } }, usHost);
    expect(ways.size).toBe(7 * 40 + 6);
    expect([...ways].filter(([, route]) => route === null)).toEqual([]);
    expect(ways.get('l5 k40 tap')?.steps.map(({ move, keys: pressed }) => `${move} ${pressed}`)).toEqual([
      'hold k46',
      'press k40',
    ]);
  });
});
