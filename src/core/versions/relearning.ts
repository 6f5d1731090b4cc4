import type { Board, BoardKey, KeyId } from '../keymap/types.ts';
import type { Route } from '../routes/types.ts';

/** A character that the hands have to learn anew. */
export interface RelearntCharacter {
  readonly char: string;
  /** How often it stands in the text. */
  readonly count: number;
  /** Presses of the later design for one of it, and how many of them are new. */
  readonly presses: number;
  readonly changed: number;
}

/** How much of a text changes under the fingers. */
export interface Relearning {
  /** Changed presses in 100 presses that the text takes on the later design; 0 where it takes none. */
  readonly percent: number;
  /** Presses of the text on the later design, and those that change. */
  readonly presses: number;
  readonly changed: number;
  /** The characters that change, those with the most changed presses in the text first; of equal ones in the text's order. */
  readonly characters: readonly RelearntCharacter[];
  /** Characters of the text, with repetition, that the later design does not type: they take no presses. */
  readonly untypable: number;
}

/** One thing that the fingers do: which keys go down, and whether they stay down. */
type Press = string;

/**
 * How much of a text changes under the fingers between two designs. A press is a tap or a hold of one key, or of a
 * chord's keys together; it is the same as before where the same keys, in the care of the same fingers, are pressed in the
 * same way and in the same order for the same character (the longest common part of both rows of presses). Keys moved
 * without changing the finger are the same keys. All presses of a character that could not be typed before are new.
 */
export function relearning(
  chars: ReadonlyMap<string, number>,
  before: { readonly board: Board; readonly routeOf: (char: string) => Route | null },
  after: { readonly board: Board; readonly routeOf: (char: string) => Route | null },
): Relearning {
  const characters: RelearntCharacter[] = [];
  let [presses, changed, untypable] = [0, 0, 0];
  for (const [char, count] of chars) {
    const route = after.routeOf(char);
    if (route === null) {
      untypable += count;
      continue;
    }
    const is = pressesOf(after.board, route);
    const was = before.routeOf(char);
    const kept = was === null ? 0 : commonLength(pressesOf(before.board, was), is);
    const anew = weightOf(is) - kept;
    presses += count * weightOf(is);
    changed += count * anew;
    if (anew > 0) characters.push({ char, count, presses: weightOf(is), changed: anew });
  }
  const share = (each: RelearntCharacter) => each.count * each.changed;
  return {
    percent: presses === 0 ? 0 : (100 * changed) / presses,
    presses,
    changed,
    characters: characters.toSorted((one, other) => share(other) - share(one)),
    untypable,
  };
}

/** A press with the number of keys that it takes: those are the presses that are counted. */
interface Counted {
  readonly press: Press;
  readonly keys: number;
}

function pressesOf(board: Board, { steps }: Pick<Route, 'steps'>): readonly Counted[] {
  const keys = new Map<KeyId, BoardKey>(board.keys.map((key) => [key.id, key]));
  return steps.flatMap((step): Counted[] => {
    if (step.move === 'release') return [];
    const fingers = step.keys.map((id) => {
      const key = keys.get(id);
      return `${id} ${key?.hand ?? ''} ${key?.finger ?? ''}`;
    });
    return [{ press: `${step.move} ${fingers.toSorted().join(', ')}`, keys: step.keys.length }];
  });
}

function weightOf(presses: readonly Counted[]): number {
  return presses.reduce((sum, { keys }) => sum + keys, 0);
}

/** Keys in the longest common subsequence of two rows of presses. */
function commonLength(one: readonly Counted[], other: readonly Counted[]): number {
  let row: number[] = new Array(other.length + 1).fill(0);
  for (const { press } of one) {
    const next = [0];
    other.forEach((each, at) => {
      const both = press === each.press ? (row[at] ?? 0) + each.keys : 0;
      next.push(Math.max(both, row[at + 1] ?? 0, next[at] ?? 0));
    });
    row = next;
  }
  return row[other.length] ?? 0;
}
