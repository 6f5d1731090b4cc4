import fc from 'fast-check';
import type {
  Action,
  Binding,
  Board,
  BoardKey,
  Chord,
  HoldBy,
  Host,
  KeyId,
  Keymap,
  Layer,
  LayerId,
  Timing,
} from '../../../src/core/keymap/types.ts';
import { ACTION_KINDS, type ActionKind, actionArbitrary, CHARS } from './keymap-actions.ts';

/** What the random keymaps may hold; everything is allowed where nothing is said. */
export interface KeymapChoice {
  readonly minKeys?: number;
  readonly maxKeys?: number;
  readonly maxLayers?: number;
  readonly maxChords?: number;
  /** Kinds of action for taps, holds and chords. */
  readonly kinds?: readonly ActionKind[];
  /** Characters for `char` and `text` actions. */
  readonly chars?: readonly string[];
  /** false: no binding has both a tap and a hold. */
  readonly holdTaps?: boolean;
  /** false: no timing fields, so that the defaults are in force. */
  readonly timing?: boolean;
  /** false: no layer comes on with others. */
  readonly onWhile?: boolean;
  readonly hosts?: readonly Host[];
}

const ALL: Required<KeymapChoice> = {
  minKeys: 3,
  maxKeys: 8,
  maxLayers: 4,
  maxChords: 3,
  kinds: ACTION_KINDS,
  chars: CHARS,
  holdTaps: true,
  timing: true,
  onWhile: true,
  hosts: [{ system: 'linux', layout: 'us', variant: '' }],
};

const HOLD_BYS: readonly HoldBy[] = ['time-only', 'press-inside', 'tap-inside'];

/** Durations in ms: round ones often, so that things fall on the same ms, fractions at times. */
export const durationArbitrary: fc.Arbitrary<number> = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(0, 1, 30, 45, 60, 100, 150, 200) },
  { weight: 3, arbitrary: fc.integer({ min: 0, max: 300 }) },
  { weight: 1, arbitrary: fc.double({ min: 0, max: 300, noNaN: true }).map((ms) => ms + 0) },
);

/** Some of the five timing fields. */
export const timingArbitrary: fc.Arbitrary<Timing> = fc.record(
  {
    holdAfterMs: durationArbitrary,
    holdBy: fc.constantFrom(...HOLD_BYS),
    quietBeforeMs: durationArbitrary,
    againWithinMs: durationArbitrary,
    sameHandTaps: fc.boolean(),
  },
  { requiredKeys: [] },
);

/** A board of caps in two rows that do not overlap; left half first, the last key of each half a thumb key. */
export function boardArbitrary(least: number, most: number): fc.Arbitrary<Board> {
  return fc.integer({ min: least, max: most }).map((count) => ({
    name: 'Random',
    keys: Array.from({ length: count }, (_, at) => boardKey(at, count)),
  }));
}

function boardKey(at: number, count: number): BoardKey {
  const inLeft = Math.ceil(count / 2);
  const left = at < inLeft;
  const place = left ? at : at - inLeft;
  const last = place === (left ? inLeft : count - inLeft) - 1;
  const fingers = ['little', 'ring', 'middle', 'index'] as const;
  return {
    id: `${left ? 'L' : 'R'}${place}`,
    x: (left ? -150 : 50) + 20 * Math.floor(place / 2),
    y: 20 * (place % 2),
    rotation: 0,
    width: 17.5,
    height: 16.5,
    hand: left ? 'left' : 'right',
    finger: last ? 'thumb' : (fingers[Math.floor(place / 2) % 4] ?? 'index'),
    home: place % 2 === 0,
  };
}

function bindingArbitrary(
  action: fc.Arbitrary<Action>,
  choice: Required<KeymapChoice>,
): fc.Arbitrary<Binding> {
  const sides: fc.Arbitrary<Binding>[] = [fc.record({ tap: action }), fc.record({ hold: action })];
  if (choice.holdTaps) sides.push(fc.record({ tap: action, hold: action }));
  const weights = [4, 2, 5];
  const binding = fc.oneof(...sides.map((arbitrary, at) => ({ weight: weights[at] ?? 1, arbitrary })));
  if (!choice.timing) return binding;
  const fields = fc.oneof({ weight: 2, arbitrary: fc.constant<Timing>({}) }, timingArbitrary);
  return fc.tuple(binding, fields).map(([sidesOf, timing]) => ({ ...sidesOf, ...timing }));
}

function placesArbitrary(
  keys: readonly KeyId[],
  binding: fc.Arbitrary<Binding>,
): fc.Arbitrary<Layer['places']> {
  const maybe = fc.option(binding, { freq: 3, nil: undefined });
  return fc.tuple(...keys.map(() => maybe)).map((bindings) => {
    const bound = keys.flatMap((key, at): [KeyId, Binding][] => {
      const here = bindings[at];
      return here ? [[key, here]] : [];
    });
    return Object.fromEntries(bound);
  });
}

function layerArbitrary(
  at: number,
  places: fc.Arbitrary<Layer['places']>,
  choice: Required<KeymapChoice>,
): fc.Arbitrary<Layer> {
  const id = layerIdAt(at);
  const name = at === 0 ? 'Base' : `Layer ${at}`;
  const plain: fc.Arbitrary<Layer> = places.map((bound) => ({ id, name, places: bound }));
  if (at < 2 || !choice.onWhile) return plain;
  const lower = Array.from({ length: at }, (_, below) => layerIdAt(below));
  const onWhile = fc.option(fc.uniqueArray(fc.constantFrom(...lower), { minLength: 2, maxLength: at }));
  return fc.tuple(plain, onWhile).map(([layer, names]) => (names ? { ...layer, onWhile: names } : layer));
}

function layerIdAt(at: number): LayerId {
  return at === 0 ? 'base' : `layer-${at}`;
}

function chordArbitrary(
  keys: readonly KeyId[],
  layers: readonly LayerId[],
  action: fc.Arbitrary<Action>,
): fc.Arbitrary<Omit<Chord, 'id'>> {
  return fc.record(
    {
      name: fc.constantFrom('Chord', 'Another'),
      keys: fc.uniqueArray(fc.constantFrom(...keys), { minLength: 2, maxLength: Math.min(4, keys.length) }),
      windowMs: durationArbitrary,
      layers: fc.uniqueArray(fc.constantFrom(...layers), { minLength: 1 }),
      quietBeforeMs: durationArbitrary,
      action,
    },
    { requiredKeys: ['keys', 'windowMs', 'action'] },
  );
}

function keymapOn(board: Board, layerCount: number, choice: Required<KeymapChoice>): fc.Arbitrary<Keymap> {
  const keys = board.keys.map(({ id }) => id);
  const ids = Array.from({ length: layerCount }, (_, at) => layerIdAt(at));
  const action = actionArbitrary({ kinds: choice.kinds, chars: choice.chars, layers: ids.slice(1) });
  const places = placesArbitrary(keys, bindingArbitrary(action, choice));
  const chord = chordArbitrary(keys, ids, action);
  const chords = fc
    .array(chord, { maxLength: keys.length < 2 ? 0 : choice.maxChords })
    .map((all) => all.map((one, at): Chord => ({ id: `c${at}`, ...one })));
  const timing = choice.timing ? fc.option(timingArbitrary, { nil: undefined }) : fc.constant(undefined);
  return fc
    .tuple(fc.tuple(...ids.map((_, at) => layerArbitrary(at, places, choice))), chords, timing)
    .map(([layers, some, fields]) => ({
      format: 'neutral-keymap',
      version: 1,
      name: 'Random',
      board,
      hosts: choice.hosts,
      ...(fields ? { timing: fields } : {}),
      layers,
      ...(some.length > 0 ? { chords: some } : {}),
    }));
}

/**
 * Random valid keymaps: small boards of both hands, layer actions to every layer but the base, chords that share
 * keys, all timing fields, layers that come on with others. Kept small, so that a failing case can be read.
 */
export function keymapArbitrary(wanted: KeymapChoice = {}): fc.Arbitrary<Keymap> {
  const choice = { ...ALL, ...wanted };
  return fc
    .tuple(boardArbitrary(choice.minKeys, choice.maxKeys), fc.integer({ min: 1, max: choice.maxLayers }))
    .chain(([board, layerCount]) => keymapOn(board, layerCount, choice));
}
