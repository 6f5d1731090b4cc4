import type { Edit } from '../keymap/edit.ts';
import type { KeyId, LayerId } from '../keymap/types.ts';
import type { HoldPlace } from './accidents.ts';
import { changes, type HoldOption, optionsOf, type ProtectingField, targets } from './hold-options.ts';
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
  /** Only keys that change, group by group. */
  readonly holds: readonly ProtectedHold[];
  /** Fields changed in all. */
  readonly changes: number;
  /** Misfires of all the keys together, per 1,000 words. */
  readonly before: number;
  readonly after: number;
  /** False where no changes that are allowed reach the rate; then these bring the least. */
  readonly enough: boolean;
}

/** What is asked of protections. */
export interface ProtectionWish {
  /** Misfires of all the keys together, per 1,000 words. */
  readonly most: number;
  /** A key may miss no more uses than this, per 1,000, unless it does so now. */
  readonly mostMisses: number;
  /** Fields that stay as they are. */
  readonly fixed: readonly ProtectingField[];
}

/** One target for all keys of a group: what it changes about each. */
interface GroupOption {
  readonly options: readonly HoldOption[];
  readonly changes: number;
  readonly misfires: number;
  /** Of the key that misses most, per 1,000. */
  readonly misses: number;
}

/**
 * The fewest changed timing fields after which these keys together misfire no more than the wish allows. The keys of a group,
 * such as Shift on both sides, are given the same, for else the one that waits less is used for everything. Among as
 * many changes those are taken that reach the lowest rate; then each group, in the order given, is given the changes with
 * the fewest misses that still keep all of them under it. What changes for one key does not change another's misfires.
 */
export function suggestProtections(
  situation: Situation,
  groups: readonly (readonly HoldPlace[])[],
  wish: ProtectionWish,
): Protections {
  const options = groups.map((group) => groupOptions(situation, group, wish));
  const chosen = gentler(options, fewest(options, wish.most), wish.most);
  const now = options.map(([first]) => first);
  const after = total(chosen);
  return {
    holds: groups.flatMap((group, at) => protectedHolds(group, now[at]?.options, chosen[at]?.options)),
    changes: chosen.reduce((sum, option) => sum + option.changes, 0),
    before: now.reduce((sum, option) => sum + (option?.misfires ?? 0), 0),
    after,
    enough: after <= wish.most,
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

function protectedHolds(
  group: readonly HoldPlace[],
  now: readonly HoldOption[] = [],
  chosen: readonly HoldOption[] = [],
): readonly ProtectedHold[] {
  return group.flatMap(({ key, layer }, at) => {
    const [was, option] = [now[at], chosen[at]];
    if (was === undefined || option === undefined || changes(option) === 0) return [];
    return [
      {
        key,
        layer,
        change: option.change,
        misfiresBefore: was.misfires,
        misfiresAfter: option.misfires,
        missesBefore: was.misses,
        missesAfter: option.misses,
      },
    ];
  });
}

/** The first changes nothing; then by fields changed, misses and misfires. */
function groupOptions(
  situation: Situation,
  group: readonly HoldPlace[],
  { mostMisses, fixed }: ProtectionWish,
): readonly GroupOption[] {
  const optionFor = group.map((place) => optionsOf(situation, place));
  const [now, ...rest] = targets(fixed).map((target): GroupOption => {
    const options = optionFor.map((option) => option(target));
    return {
      options,
      changes: options.reduce((sum, option) => sum + changes(option), 0),
      misfires: options.reduce((sum, { misfires }) => sum + misfires, 0),
      misses: Math.max(0, ...options.map(({ misses }) => misses)),
    };
  });
  if (now === undefined) return [];
  const bearable = rest.filter(
    ({ changes: many, misses }) => many > 0 && misses <= Math.max(mostMisses, now.misses),
  );
  return [
    now,
    ...bearable.sort(
      (one, other) =>
        one.changes - other.changes || one.misses - other.misses || one.misfires - other.misfires,
    ),
  ];
}

type Chosen = readonly GroupOption[];

/** By the number of changes in all, the lowest rate that it reaches; the first number that is low enough, else the lowest of all. */
function fewest(options: readonly (readonly GroupOption[])[], most: number): Chosen {
  let best = new Map<number, Chosen>([[0, []]]);
  for (const own of options) {
    const next = new Map<number, Chosen>();
    for (const [spent, soFar] of best)
      for (const option of leastByChanges(own)) {
        const tried = [...soFar, option];
        const known = next.get(spent + option.changes);
        if (known === undefined || total(tried) < total(known)) next.set(spent + option.changes, tried);
      }
    best = next;
  }
  const all = [...best].sort(([one], [other]) => one - other).map(([, chosen]) => chosen);
  const enough = all.find((chosen) => total(chosen) <= most);
  if (enough !== undefined) return enough;
  return all.reduce((one, other) => (total(other) < total(one) - 1e-9 ? other : one), all[0] ?? []);
}

/** Of the options with as many changes, the one that misfires least. */
function leastByChanges(options: readonly GroupOption[]): Iterable<GroupOption> {
  const least = new Map<number, GroupOption>();
  for (const option of options) {
    const known = least.get(option.changes);
    if (known === undefined || option.misfires < known.misfires) least.set(option.changes, option);
  }
  return least.values();
}

/** No more changes for each group, but fewer misses where the rate leaves room. */
function gentler(options: readonly (readonly GroupOption[])[], chosen: Chosen, most: number): Chosen {
  const result = [...chosen];
  for (const [at, own] of options.entries()) {
    const now = result[at];
    if (now === undefined || total(result) > most) continue;
    const room = most - total(result) + now.misfires;
    const fits = own
      .filter((option) => option.changes <= now.changes && option.misfires <= room)
      .toSorted((one, other) => one.misses - other.misses)[0];
    if (fits !== undefined && fits.misses < now.misses) result[at] = fits;
  }
  return result;
}

function total(chosen: Chosen): number {
  return chosen.reduce((sum, { misfires }) => sum + misfires, 0);
}
