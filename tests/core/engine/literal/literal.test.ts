import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { KeyEvent } from '../../../../src/core/base/key-event.ts';
import { play } from '../../../../src/core/engine/play.ts';
import type { OutputEvent } from '../../../../src/core/engine/types.ts';
import { hostFromTable } from '../../../../src/core/host/host-from-table.ts';
import { chordsOf, timingOf } from '../../../../src/core/keymap/timing.ts';
import type { Keymap } from '../../../../src/core/keymap/types.ts';
import { type GrownChoice, grownKeymapArbitrary } from '../../arbitraries/grown-keymap.ts';
import { type KeymapChoice, keymapArbitrary } from '../../arbitraries/keymap-arbitrary.ts';
import { shippedTable } from '../../host/shipped-tables.ts';
import { tinyHost } from '../tiny-host.ts';
import { literalPlay } from './literal-engine.ts';

/** Gaps between events: none, a few ms, and the keymap's own thresholds exactly, just before and just after. */
function gapsOf(keymap: Keymap): number[] {
  const own = [
    ...chordsOf(keymap).flatMap((chord) => [
      chord.windowMs,
      chord.quietBeforeMs ?? 0,
      chord.holdAfterMs ?? 0,
    ]),
    ...keymap.layers
      .flatMap((layer) => Object.values(layer.places).map((binding) => timingOf(keymap, binding)))
      .flatMap((timing) => [timing.holdAfterMs, timing.quietBeforeMs, timing.againWithinMs]),
  ].filter((ms) => ms > 0);
  return [0, 0, 1, 5, 10, 20, 20, ...own.flatMap((ms) => [ms, ms / 2, ms + 0.25, Math.max(ms - 0.25, 0)])];
}

/** A valid stream: each draw picks a gap and a key, which goes down or comes up, and at the end all come up. */
function streamOf(keymap: Keymap, draws: readonly (readonly [number, number])[]): KeyEvent[] {
  const gaps = gapsOf(keymap);
  const down = new Set<string>();
  const events: KeyEvent[] = [];
  let t = 0;
  const add = (key: string) => {
    const type = down.has(key) ? 'up' : 'down';
    if (type === 'up') down.delete(key);
    else down.add(key);
    events.push({ t, key, type });
  };
  for (const [gap, pick] of draws) {
    t += gaps[gap % gaps.length] ?? 0;
    add(keymap.board.keys[pick % keymap.board.keys.length]?.id ?? '');
  }
  for (const key of [...down]) add(key);
  return events;
}

const draws = fc.array(fc.tuple(fc.nat(1000), fc.nat(1000)), { minLength: 2, maxLength: 40 });

const written = (output: readonly OutputEvent[]) =>
  output.map(({ t, type, code, lifting }) => `${t} ${type} ${code}${lifting ? ' lifting' : ''}`).join('\n');

const FAMILIES: readonly (readonly [string, KeymapChoice])[] = [
  ['anything', {}],
  ['few keys, so that everything meets', { maxKeys: 4, maxLayers: 3, maxChords: 3 }],
  ['latches and locks', { kinds: ['key', 'layer', 'modifier', 'text'], maxKeys: 5, maxLayers: 3 }],
  ['chords and hold/tap keys only', { kinds: ['key'], maxKeys: 5, maxChords: 6, maxLayers: 2 }],
];

const GROWN: readonly (readonly [string, GrownChoice])[] = [
  ['anything', {}],
  ['few keys, so that everything meets', { maxKeys: 4, maxLayers: 3, maxChords: 3 }],
  [
    'Shift on and off',
    { kinds: ['key', 'modifier', 'char', 'repeat', 'word-shift'], maxKeys: 5, maxLayers: 2 },
  ],
  ['chords and hold/tap keys only', { kinds: ['key'], maxKeys: 5, maxChords: 6, maxLayers: 2 }],
];

function agree(keymap: Keymap, drawn: readonly (readonly [number, number])[], host = tinyHost): void {
  const events = streamOf(keymap, drawn);
  const played = play(keymap, events, host);
  if (!played.ok) throw new Error(`refused at ${played.problem.index}: ${played.problem.reason}`);
  expect(written(played.value.output)).toBe(written(literalPlay(keymap, host, events)));
}

describe('the engine and the rules to the letter give the same output for designs with the later fields', () => {
  test.each(GROWN)(
    '%s',
    (_, choice) => {
      fc.assert(
        fc.property(grownKeymapArbitrary(choice), draws, (keymap, drawn) => agree(keymap, drawn)),
        { numRuns: 800 },
      );
    },
    60_000,
  );

  test('under a host with level 3 and dead keys, Shift held often', () => {
    const host = hostFromTable(shippedTable('pt'));
    const holdsShift = (keymap: Keymap): Keymap => {
      const [base, ...others] = keymap.layers;
      const [first, second] = keymap.board.keys;
      if (base === undefined || first === undefined || second === undefined) return keymap;
      const places: typeof base.places = {
        ...base.places,
        [first.id]: { tap: { do: 'key', code: 'ShiftLeft' } },
        [second.id]: { tap: { do: 'word-shift' } },
      };
      return { ...keymap, layers: [{ ...base, places }, ...others] };
    };
    const choice: GrownChoice = {
      kinds: ['key', 'char', 'text', 'modifier', 'repeat'],
      chars: ['a', 'e', 'é', 'ã', 'Ñ', '€', '1', ' ', '-', '_'],
      maxLayers: 1,
      maxChords: 1,
    };
    fc.assert(
      fc.property(grownKeymapArbitrary(choice), draws, (keymap, drawn) =>
        agree(holdsShift(keymap), drawn, host),
      ),
      { numRuns: 800 },
    );
  }, 60_000);
});

describe('the engine and the rules to the letter give the same output', () => {
  test.each(FAMILIES)(
    '%s',
    (_, choice) => {
      fc.assert(
        fc.property(keymapArbitrary(choice), draws, (keymap, drawn) => {
          const events = streamOf(keymap, drawn);
          const played = play(keymap, events, tinyHost);
          if (!played.ok) throw new Error(`refused at ${played.problem.index}: ${played.problem.reason}`);
          expect(written(played.value.output)).toBe(written(literalPlay(keymap, tinyHost, events)));
        }),
        { numRuns: 3000 },
      );
    },
    60_000,
  );
});
