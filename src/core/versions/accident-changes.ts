import { keyName } from '../board/key-name.ts';
import { layerWords } from '../keymap/action-words.ts';
import { bindingOn } from '../keymap/lookup.ts';
import type { KeyId } from '../keymap/types.ts';
import type { Accidents } from '../typist/accidents.ts';
import { briefly, type Told } from './change-words.ts';
import { chordKeysWords } from './chord-words.ts';
import { matchedChords, matchedLayers } from './match.ts';

/** A rate of one chord or hold/tap key that another state of the design makes better or worse. */
export interface AccidentChange {
  /** Whose it is, in words: "Tab (left index home + left middle home)". */
  readonly who: string;
  /** Its keys on the design that has it, the later one if both do. */
  readonly keys: readonly KeyId[];
  /** Misfires per 1,000 words, or misses per 1,000 uses. */
  readonly rate: 'misfires' | 'misses';
  /** What is not there does nothing unasked: a misfire rate of 0. */
  readonly before: number;
  readonly after: number;
}

/** A design with its accidents. */
export interface WithAccidents {
  /** The design and the host on which it is put into words. */
  readonly told: Told;
  readonly accidents: Accidents;
}

interface Rates {
  /** Null for a chord of five keys, of which nothing is known without a simulation. */
  readonly misfiresPer1000Words: number | null;
  readonly missesPer1000Uses: number;
}

type Rated = Pick<AccidentChange, 'who' | 'keys'> & {
  readonly before: Rates | undefined;
  readonly after: Rates | undefined;
};

/** A difference below this share of the larger rate is within what an estimate can mean; our choice, without a source. */
const LEAST_SHARE = 0.1;

/**
 * What became better or worse with single chords and hold/tap keys, the greatest differences first, misfires before
 * misses. The rest differs by less than a tenth, or not in the first decimal. Misses of what is on one side only are no
 * change: nobody meant it there.
 */
export function accidentChanges(before: WithAccidents, after: WithAccidents): readonly AccidentChange[] {
  const all = [...ratedChords(before, after), ...ratedHolds(before, after)];
  const misfires = all.flatMap(({ who, keys, before: was, after: is }) => {
    const [one, other] = [was, is].map((rates) => (rates === undefined ? 0 : rates.misfiresPer1000Words));
    return changed({ who, keys, rate: 'misfires' }, one ?? null, other ?? null);
  });
  const misses = all.flatMap(({ who, keys, before: was, after: is }) =>
    changed({ who, keys, rate: 'misses' }, was?.missesPer1000Uses ?? null, is?.missesPer1000Uses ?? null),
  );
  return [...misfires.toSorted(byDifference), ...misses.toSorted(byDifference)];
}

/** Whether a change is for the worse. */
export function isWorse({ before, after }: AccidentChange): boolean {
  return after > before;
}

function changed(
  about: Pick<AccidentChange, 'who' | 'keys' | 'rate'>,
  before: number | null,
  after: number | null,
): readonly AccidentChange[] {
  if (before === null || after === null || before.toFixed(1) === after.toFixed(1)) return [];
  const isSlight = Math.abs(after - before) < LEAST_SHARE * Math.max(before, after);
  return isSlight ? [] : [{ ...about, before, after }];
}

function byDifference(one: AccidentChange, other: AccidentChange): number {
  return Math.abs(other.after - other.before) - Math.abs(one.after - one.before);
}

function ratedChords(before: WithAccidents, after: WithAccidents): readonly Rated[] {
  const pairs = matchedChords(before.told.keymap, after.told.keymap);
  return pairs.flatMap(({ before: was, after: is }): readonly Rated[] => {
    const chord = is ?? was;
    if (chord === null) return [];
    const { told } = is === null ? before : after;
    const of = ({ accidents }: WithAccidents, id: string | undefined) =>
      accidents.chords.find((each) => each.id === id);
    const who = `${briefly(chord.action, told)} (${chordKeysWords(told.keymap, chord)})`;
    return [{ who, keys: chord.keys, before: of(before, was?.id), after: of(after, is?.id) }];
  });
}

function ratedHolds(before: WithAccidents, after: WithAccidents): readonly Rated[] {
  const [was, is] = [before.told.keymap, after.told.keymap];
  return matchedLayers(was, is).flatMap(({ before: lower, after: upper }) => {
    const of = ({ accidents }: WithAccidents, key: KeyId, layer: string | undefined) =>
      accidents.holds.find((each) => each.key === key && each.layer === layer);
    const keys = new Set([...after.accidents.holds, ...before.accidents.holds].map(({ key }) => key));
    return [...keys].flatMap((key): readonly Rated[] => {
      const rates = { before: of(before, key, lower?.id), after: of(after, key, upper?.id) };
      const told = rates.after === undefined ? before.told : after.told;
      const layer = rates.after === undefined ? lower : upper;
      if (layer === null || (rates.before ?? rates.after) === undefined) return [];
      return [{ who: holdWords(told, layer.id, key), keys: [key], ...rates }];
    });
  });
}

/** "Left Shift (hold on left index home, Base)". */
function holdWords(told: Told, layer: string, key: KeyId): string {
  const found = told.keymap.layers.find(({ id }) => id === layer);
  const hold = found && bindingOn(found, key)?.hold;
  const where = `${keyName(told.keymap.board, key)}, ${layerWords(told.keymap, layer)}`;
  return hold === undefined ? where : `${briefly(hold, told)} (hold on ${where})`;
}
