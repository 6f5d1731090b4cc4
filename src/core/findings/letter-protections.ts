import { bindingOn } from '../keymap/lookup.ts';
import { needText } from '../keymap/need.ts';
import type { Keymap } from '../keymap/types.ts';
import type { RunCounts } from '../needs/counts-runs.ts';
import { findRoutes } from '../routes/find-routes.ts';
import { type HoldPlace, holdPlaces } from '../typist/accidents.ts';
import type { ProtectingField } from '../typist/hold-options.ts';
import {
  type Protections,
  type ProtectionWish,
  protectionEdit,
  suggestProtections,
} from '../typist/protections.ts';
import { accidentFacts } from './accident-facts.ts';
import type { Facts } from './facts.ts';
import { isLetter } from './letters.ts';
import { designAfter } from './sound-mend.ts';

/** Protections for the hold/tap letters of a design, with what they do to its needs. */
export interface LetterProtections extends Protections {
  /** Needs, as they are written, that would be missing or have become clumsy. */
  readonly hurt: readonly string[];
}

/** Tried one after the other until no need is hurt: everything may change, then ever less. */
const FIXED: readonly (readonly ProtectingField[])[] = [
  [],
  ['holdBy'],
  ['holdBy', 'holdAfterMs'],
  ['holdBy', 'holdAfterMs', 'quietBeforeMs'],
];

/**
 * The fewest changes that bring all hold/tap letters together under a rate; null where the facts know nothing of the typing.
 * Changes that hurt no need are taken before others. What comes of them is worked out on the design after them.
 */
export function protectLetters(
  facts: Facts,
  counts: RunCounts,
  wish: Omit<ProtectionWish, 'fixed'>,
): LetterProtections | null {
  const { accidents } = facts;
  if (accidents === null) return null;
  const letters = letterHolds(facts);
  const groups = groupsOf(facts.keymap, letters);
  let best: LetterProtections | null = null;
  for (const fixed of FIXED) {
    const tried = suggestProtections(accidents.situation, groups, { ...wish, fixed });
    const after = designAfter(facts, [protectionEdit(tried)]);
    const hurt = after === null || tried.changes === 0 ? [] : hurtNeeds(facts, after);
    const isBetter = best === null || (tried.enough && hurt.length < best.hurt.length);
    if (isBetter) best = { ...tried, hurt };
    if (hurt.length === 0 || !tried.enough) break;
  }
  return best === null ? null : workedOut(facts, counts, letters, best, wish.most);
}

/** The hold/tap letters of a design that can be reached. */
function letterHolds({ keymap, host, places }: Facts): readonly HoldPlace[] {
  const letters = new Set(
    places
      .filter(({ reached, binding: { tap, hold } }) => {
        if (!reached || tap === undefined || hold === undefined) return false;
        return hold.do !== 'nothing' && isLetter(host, tap);
      })
      .map(({ key, layer }) => `${layer.id} ${key.id}`),
  );
  return holdPlaces(keymap).filter(({ key, layer }) => letters.has(`${layer} ${key}`));
}

/** Keys with the same hold, left and right modifiers alike, in the order of their first. */
function groupsOf(keymap: Keymap, letters: readonly HoldPlace[]): readonly (readonly HoldPlace[])[] {
  const groups = new Map<string, HoldPlace[]>();
  for (const place of letters) {
    const layer = keymap.layers.find(({ id }) => id === place.layer);
    const hold = layer === undefined ? undefined : bindingOn(layer, place.key)?.hold;
    const name = JSON.stringify(hold ?? null).replace(/(Shift|Control|Alt|Meta)(Left|Right)/g, '$1');
    groups.set(name, [...(groups.get(name) ?? []), place]);
  }
  return [...groups.values()];
}

/** The needs that a changed design no longer reaches, or only with one finger holding and pressing at once. */
function hurtNeeds(facts: Facts, after: Keymap): readonly string[] {
  const routes = findRoutes(
    after,
    facts.host,
    facts.needs.map(({ need }) => need),
  );
  return facts.needs.flatMap(({ need, route }, at) => {
    const now = routes[at]?.route ?? null;
    const isHurt = route !== null && (now === null || (now.clumsy && !route.clumsy));
    return isHurt ? [needText(need)] : [];
  });
}

/** The same with the rate as the changed design really has it: other ways of typing may have become the shortest. */
function workedOut(
  facts: Facts,
  counts: RunCounts,
  letters: readonly HoldPlace[],
  protections: LetterProtections,
  most: number,
): LetterProtections {
  const after = designAfter(facts, [protectionEdit(protections)]);
  if (facts.accidents === null || after === null || protections.changes === 0) return protections;
  const { situation, limits } = facts.accidents;
  const { estimate } = accidentFacts(after, facts.host, counts, situation.model.person, limits);
  const isLetterHold = new Set(letters.map(({ key, layer }) => `${layer} ${key}`));
  const rate = estimate.holds
    .filter(({ key, layer }) => isLetterHold.has(`${layer} ${key}`))
    .reduce((sum, { misfiresPer1000Words }) => sum + misfiresPer1000Words, 0);
  return { ...protections, after: rate, enough: rate <= most };
}
