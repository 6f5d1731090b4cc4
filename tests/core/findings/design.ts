import { actionOf, drawnPlaces } from '../../../src/build/demos/notation.ts';
import { type Facts, factsOf } from '../../../src/core/findings/facts.ts';
import type { Finding } from '../../../src/core/findings/find.ts';
import type { Rule } from '../../../src/core/findings/rule.ts';
import { usHost } from '../../../src/core/host/us.ts';
import type {
  Board,
  BoardKey,
  Chord,
  Finger,
  Hand,
  Keymap,
  Layer,
  Timing,
} from '../../../src/core/keymap/types.ts';

const FINGERS: readonly Finger[] = ['little', 'ring', 'middle', 'index'];

function key(id: string, hand: Hand, finger: Finger, x: number, y: number, home = true): BoardKey {
  return { id, x: hand === 'left' ? x : 200 - x, y, rotation: 0, width: 17, height: 16, hand, finger, home };
}

function half(hand: Hand): BoardKey[] {
  const letter = hand === 'left' ? 'L' : 'R';
  return [
    ...FINGERS.map((finger, at) => key(`${letter}${at + 1}`, hand, finger, at * 18, 0)),
    key(`${letter}T`, hand, 'thumb', 80, 40),
  ];
}

/** Ten keys: a home row L1 to L4 and R4 to R1, each counted from the little finger, and the thumb keys LT and RT. */
export const BOARD: Board = { name: 'Ten keys', keys: [...half('left'), ...half('right')] };

/** What a test design may say; a layer is drawn as `L1 L2 L3 L4 R4 R3 R2 R1 LT RT`. */
export interface Sketch {
  readonly layers: Readonly<Record<string, string>>;
  readonly onWhile?: Readonly<Record<string, readonly string[]>>;
  readonly chords?: readonly Chord[];
  readonly timing?: Timing;
  readonly board?: Board;
  readonly needs?: readonly string[];
  readonly waived?: readonly string[];
  readonly lists?: readonly string[];
  readonly system?: 'linux' | 'macos';
}

/** A whole keymap from a sketch; the first layer is the base layer, ids are the names. */
export function design(sketch: Sketch): Keymap {
  const board = sketch.board ?? BOARD;
  const layers = Object.entries(sketch.layers).map(([id, drawing]): Layer => {
    const onWhile = sketch.onWhile?.[id];
    return {
      id,
      name: `the ${id} layer`,
      places: drawnPlaces(board, drawing),
      ...(onWhile ? { onWhile } : {}),
    };
  });
  return {
    format: 'neutral-keymap',
    version: 1,
    name: 'Test',
    board,
    hosts: [{ system: sketch.system ?? 'linux', layout: 'us', variant: '' }],
    needs: {
      lists: sketch.lists ?? [],
      own: sketch.needs ?? [],
      waived: (sketch.waived ?? []).map((need) => ({ need, why: 'never used' })),
    },
    layers,
    ...(sketch.timing ? { timing: sketch.timing } : {}),
    ...(sketch.chords ? { chords: sketch.chords } : {}),
  };
}

/** A chord: `chord('tab', 'L1 L2', 45, 'Tab', ['base'])`. */
export function chord(
  id: string,
  keys: string,
  windowMs: number,
  action: string,
  layers?: readonly string[],
  quietBeforeMs?: number,
): Chord {
  return {
    id,
    name: `chord ${id}`,
    keys: keys.split(' '),
    windowMs,
    action: actionOf(action),
    ...(layers ? { layers } : {}),
    ...(quietBeforeMs === undefined ? {} : { quietBeforeMs }),
  };
}

/** The facts of a sketch on the `us` layout. */
export function factsFor(sketch: Sketch): Facts {
  return factsOf(design(sketch), usHost);
}

/** What a rule says about a sketch. */
export function says(rule: Rule, sketch: Sketch): readonly Finding[] {
  return rule.check(factsFor(sketch));
}

/** A finding as a test asserts it: message id, and the parts it is about as `keys | layers | chords`. */
export function inShort(findings: readonly Finding[]): readonly string[] {
  return findings.map(({ messageId, subjects }) =>
    [messageId, subjects.keys.join(' '), subjects.layers.join(' '), subjects.chords.join(' ')].join(' | '),
  );
}
