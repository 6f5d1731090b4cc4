import type { Edit } from '../keymap/edit.ts';
import type { KeyId, LayerId } from '../keymap/types.ts';
import { type HoldPlace, holdAccidents } from './accidents.ts';
import { type Changeable, changes, type HoldOption, holdOptions } from './hold-options.ts';
import type { Situation } from './situation.ts';

/** What to change about one hold/tap key. */
export interface ProtectedHold {
  readonly key: KeyId;
  readonly layer: LayerId;
  readonly change: HoldOption['change'];
  readonly misfiresBefore: number;
  readonly misfiresAfter: number;
  readonly missesBefore: number;
  readonly missesAfter: number;
}

/** The fewest changes that bring hold/tap keys under a rate. */
export interface Protections {
  /** Only keys that change, in the order given. */
  readonly holds: readonly ProtectedHold[];
  /** Fields changed in all. */
  readonly changes: number;
  /** Misfires of all the keys together, per 1,000 words. */
  readonly before: number;
  readonly after: number;
  /** False where even all protections together do not reach the rate; then these bring the least. */
  readonly enough: boolean;
}

/** A key to protect, with the fields that may be changed. */
export interface Unprotected {
  readonly place: HoldPlace;
  readonly changeable: Changeable;
}

/**
 * The fewest changed timing fields after which these keys together misfire no more than `most` times in 1,000 words. Among as
 * many changes those are taken that reach the lowest rate; then each key, in the order given, is given the changes with
 * the fewest misses that still keep all of them under the rate. What changes for one key does not change another's misfires.
 */
export function suggestProtections(
  situation: Situation,
  holds: readonly Unprotected[],
  most: number,
): Protections {
  const options = holds.map(({ place, changeable }) => holdOptions(situation, place, changeable));
  const chosen = gentler(options, fewest(options, most), most);
  const before = holds.map(({ place }) => holdAccidents(situation, place));
  const after = total(chosen);
  return {
    holds: holds.flatMap(({ place: { key, layer } }, at): readonly ProtectedHold[] => {
      const option = chosen[at];
      const was = before[at];
      if (option === undefined || was === undefined || changes(option) === 0) return [];
      return [
        {
          key,
          layer,
          change: option.change,
          misfiresBefore: was.misfiresPer1000Words,
          misfiresAfter: option.misfires,
          missesBefore: was.missesPer1000Uses,
          missesAfter: option.misses,
        },
      ];
    }),
    changes: chosen.reduce((sum, option) => sum + changes(option), 0),
    before: before.reduce((sum, { misfiresPer1000Words }) => sum + misfiresPer1000Words, 0),
    after,
    enough: after <= most,
  };
}

/** The change of a design that puts protections in force, as one step. */
export function protectionEdit({ holds }: Protections): Edit {
  return {
    edit: 'several',
    title: `Protect ${holds.length === 1 ? 'a hold' : `${holds.length} holds`} from misfires`,
    edits: holds.map(({ key, layer, change }) => ({
      edit: 'set-binding-timing',
      place: { key, layer },
      timing: change,
    })),
  };
}

type Chosen = readonly HoldOption[];

/** By the number of changes in all, the lowest rate that it reaches; the first number that is low enough, else the lowest of all. */
function fewest(options: readonly (readonly HoldOption[])[], most: number): Chosen {
  let best: readonly (Chosen | undefined)[] = [[]];
  for (const own of options) {
    const byChanges = cheapestByChanges(own);
    const next: (Chosen | undefined)[] = [];
    for (const [spent, soFar] of best.entries())
      for (const [more, option] of byChanges.entries()) {
        if (soFar === undefined || option === undefined) continue;
        const tried = [...soFar, option];
        const known = next[spent + more];
        if (known === undefined || total(tried) < total(known)) next[spent + more] = tried;
      }
    best = next;
  }
  const reached =
    best.flatMap((chosen) => chosen ?? []).length === 0 ? [] : best.filter((each) => each !== undefined);
  const enough = reached.find((chosen) => total(chosen) <= most);
  if (enough !== undefined) return enough;
  return reached.reduce((one, other) => (total(other) < total(one) - 1e-9 ? other : one), reached[0] ?? []);
}

/** Of the options with as many changes, the one that misfires least; by the number of changes. */
function cheapestByChanges(options: readonly HoldOption[]): readonly (HoldOption | undefined)[] {
  const cheapest: (HoldOption | undefined)[] = [];
  for (const option of options) {
    const known = cheapest[changes(option)];
    if (known === undefined || option.misfires < known.misfires) cheapest[changes(option)] = option;
  }
  return cheapest;
}

/** As many changes for each key, but with fewer misses where the rate leaves room. */
function gentler(options: readonly (readonly HoldOption[])[], chosen: Chosen, most: number): Chosen {
  const result = [...chosen];
  for (const [at, own] of options.entries()) {
    const now = result[at];
    if (now === undefined) continue;
    const room = most - total(result) + now.misfires;
    const fits = own.find((option) => changes(option) === changes(now) && option.misfires <= room);
    if (fits !== undefined && fits.misses < now.misses) result[at] = fits;
  }
  return result;
}

function total(chosen: Chosen): number {
  return chosen.reduce((sum, { misfires }) => sum + misfires, 0);
}
