import { fail, ok, type Result } from '../base/result.ts';
import { samePlain } from '../base/same-plain.ts';
import { checkKeymap } from '../keymap/read.ts';
import type { Keymap } from '../keymap/types.ts';
import { assembled } from './assemble.ts';
import { withoutMissing } from './clean-up.ts';
import { withFreshIds } from './fresh-ids.ts';
import { isReordered, mergedOrder } from './merged-order.ts';
import { type Part, type PartKind, partName, partsOf, placeId } from './parts.ts';

/** Whose state of a part is taken. */
export type Choice = 'mine' | 'theirs';

/** A part that both changed, each in another way. Null: deleted there, or never made. */
export interface Conflict {
  /** By which a choice is given. */
  readonly part: string;
  readonly kind: PartKind;
  readonly id: string;
  readonly base: Part | null;
  readonly mine: Part | null;
  readonly theirs: Part | null;
}

/** Two states of one design brought together. */
export interface Merge {
  readonly keymap: Keymap;
  /** All parts that both changed, whether a choice was given or not. */
  readonly conflicts: readonly Conflict[];
  /** What had to go because it names what the other one deleted, in sentences. */
  readonly leftOut: readonly string[];
}

/**
 * Brings two states of a design together that both began as `base`: what only one of them changed is taken, what both
 * changed alike too. What they changed in different ways is a conflict, in which `choices` decides and theirs stands where
 * it says nothing. A layer that one deleted and the other worked on is one conflict. The problem is a sentence: the two do
 * not fit together with these choices.
 */
export function mergeKeymaps(
  base: Keymap,
  my: Keymap,
  theirs: Keymap,
  choices: ReadonlyMap<string, Choice> = new Map(),
): Result<Merge, string> {
  const mine = withFreshIds(base, my, theirs);
  if (mine.layers[0]?.id !== theirs.layers[0]?.id) {
    return fail('The two have different base layers, so they cannot be brought together.');
  }
  const [was, one, other] = [base, mine, theirs].map(partsOf);
  if (was === undefined || one === undefined || other === undefined)
    return fail('Nothing to bring together.');
  const states: States = { was, mine: one, theirs: other };
  const conflicts: Conflict[] = [];
  const settled = settledLayers({ base, mine, theirs }, states, choices, conflicts);
  const kept = new Map<string, Part>();
  for (const name of new Set([...other.keys(), ...one.keys(), ...was.keys()])) {
    const part = settled.has(name) ? settled.get(name) : taken(name, states, choices, conflicts);
    if (part) kept.set(name, part);
  }
  const order = layerOrder({ base, mine, theirs }, choices, conflicts);
  const clean = withoutMissing(assembled([...kept.values()], order, { mine, theirs }), [mine, theirs, base]);
  if (!clean.ok) return clean;
  const checked = checkKeymap(clean.value.keymap);
  if (!checked.ok) return fail(`The two do not fit together: ${checked.problem[0]?.sentence ?? ''}`);
  return ok({ keymap: checked.value, conflicts, leftOut: clean.value.leftOut });
}

interface States {
  readonly was: ReadonlyMap<string, Part>;
  readonly mine: ReadonlyMap<string, Part>;
  readonly theirs: ReadonlyMap<string, Part>;
}

interface Three {
  readonly base: Keymap;
  readonly mine: Keymap;
  readonly theirs: Keymap;
}

function taken(
  name: string,
  { was, mine, theirs }: States,
  choices: ReadonlyMap<string, Choice>,
  conflicts: Conflict[],
): Part | null {
  const [base, one, other] = [was.get(name) ?? null, mine.get(name) ?? null, theirs.get(name) ?? null];
  if (samePlain(one?.value, other?.value) || samePlain(one?.value, base?.value)) return other;
  if (samePlain(other?.value, base?.value)) return one;
  const part = one ?? other;
  if (part === null) return null;
  conflicts.push({ part: name, kind: part.kind, id: part.id, base, mine: one, theirs: other });
  return choices.get(name) === 'mine' ? one : other;
}

/** What becomes of the parts of layers that one deleted and the other changed: all of a layer goes or stays. */
function settledLayers(
  { base, mine, theirs }: Three,
  states: States,
  choices: ReadonlyMap<string, Choice>,
  conflicts: Conflict[],
): ReadonlyMap<string, Part | null> {
  const settled = new Map<string, Part | null>();
  for (const layer of base.layers) {
    const [here, there] = [mine, theirs].map(({ layers }) => layers.find(({ id }) => id === layer.id));
    const left = here ?? there;
    if (left === undefined || (here !== undefined && there !== undefined) || samePlain(left, layer)) continue;
    const name = partName('layer', layer.id);
    const part = (state: ReadonlyMap<string, Part>) => state.get(name) ?? null;
    conflicts.push({
      part: name,
      kind: 'layer',
      id: layer.id,
      base: part(states.was),
      mine: part(states.mine),
      theirs: part(states.theirs),
    });
    const chosen = choices.get(name) === 'mine' ? states.mine : states.theirs;
    const places = [layer, left].flatMap(({ places }) => Object.keys(places));
    for (const each of [name, ...places.map((key) => partName('place', placeId(layer.id, key)))]) {
      settled.set(each, chosen.get(each) ?? null);
    }
  }
  return settled;
}

function layerOrder(
  { base, mine, theirs }: Three,
  choices: ReadonlyMap<string, Choice>,
  conflicts: Conflict[],
): readonly string[] {
  const [was, one, other] = [base, mine, theirs].map(({ layers }) => layers.map(({ id }) => id));
  if (was === undefined || one === undefined || other === undefined) return [];
  const both = isReordered(was, one) && isReordered(was, other) && isReordered(one, other);
  const part = (value: readonly string[]): Part => ({ kind: 'layer order', id: '', value });
  const name = partName('layer order', '');
  if (both) {
    const conflict = { base: part(was), mine: part(one), theirs: part(other) };
    conflicts.push({ part: name, kind: 'layer order', id: '', ...conflict });
  }
  const leads = both ? choices.get(name) === 'mine' : isReordered(was, one);
  return leads ? mergedOrder(one, other) : mergedOrder(other, one);
}
