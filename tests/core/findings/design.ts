import { actionOf, drawnPlaces } from '../../../src/build/demos/notation.ts';
import { type AccidentFacts, accidentFacts } from '../../../src/core/findings/accident-facts.ts';
import { type AccidentLimits, USUAL_LIMITS } from '../../../src/core/findings/accident-limits.ts';
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
import { createRunCounter, type RunCounts } from '../../../src/core/needs/counts-runs.ts';
import { type Person, personAt } from '../../../src/core/typist/person.ts';

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

/** A text, a speed in words per minute, a factor for the chords' spread, and limits other than the usual ones. */
export interface Typing {
  readonly text: string;
  readonly wpm?: number;
  readonly spread?: number;
  readonly limits?: Partial<AccidentLimits>;
}

const known = new WeakMap<Typing, { readonly counts: RunCounts; readonly person: Person }>();

/** The counts and the typist of a text, worked out once: a typist's tables take long. */
function knownTyping(typing: Typing) {
  const counter = createRunCounter();
  counter.add(typing.text);
  const made = known.get(typing) ?? {
    counts: counter.counts(),
    person: personAt(typing.wpm ?? 75, typing.spread ?? 1),
  };
  known.set(typing, made);
  return made;
}

/** The accidents of a design for a text. */
export function accidentsOf(keymap: Keymap, typing: Typing | undefined): AccidentFacts | null {
  if (typing === undefined) return null;
  const { counts, person } = knownTyping(typing);
  return accidentFacts(keymap, usHost, counts, person, { ...USUAL_LIMITS, ...typing.limits });
}

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
  /** What is typed, by whom, and from where on its accidents are worth a finding; nothing is known of them without. */
  readonly typing?: Typing;
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
  const keymap = design(sketch);
  return factsOf(keymap, usHost, undefined, undefined, accidentsOf(keymap, sketch.typing));
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
