import { applyEdit } from '../keymap/apply-edit.ts';
import type { Edit } from '../keymap/edit.ts';
import { needText } from '../keymap/need.ts';
import type { KeyId, Keymap } from '../keymap/types.ts';
import { findRoutes } from '../routes/find-routes.ts';
import type { NeedRoute, Route } from '../routes/types.ts';
import { type Accidents, estimateAccidents } from '../typist/accidents.ts';
import type { AccidentFacts } from './accident-facts.ts';
import type { AccidentLimits } from './accident-limits.ts';
import type { Facts } from './facts.ts';

const present = new WeakMap<Facts, readonly NeedRoute[]>();

/** The routes of all needs and of all characters of the text as they are now. */
function presentRoutes(facts: Facts): readonly NeedRoute[] {
  const known = present.get(facts);
  if (known !== undefined) return known;
  const asked = new Set(facts.needs.map(({ need }) => needText(need)));
  const typed = (facts.accidents?.typed ?? []).filter((need) => !asked.has(needText(need)));
  const routes = [...facts.needs, ...findRoutes(facts.keymap, facts.host, typed)];
  present.set(facts, routes);
  return routes;
}

/** The design after edits made as one step; null where they are refused. */
export function designAfter({ keymap }: Facts, edits: readonly Edit[]): Keymap | null {
  const outcome = applyEdit(keymap, { edit: 'several', title: '', edits });
  return outcome.ok ? outcome.value.keymap : null;
}

/**
 * Whether everything is still typed by the same moves: timing that makes one route wait may make a clumsy one cheaper. Only
 * routes through `through` are looked at where it is given: where waits only grow, no other can change.
 */
export function keepsRoutes(facts: Facts, after: Keymap, through?: KeyId): boolean {
  const before = presentRoutes(facts).filter(
    ({ route }) => through === undefined || (route !== null && holds(route, through)),
  );
  if (before.length === 0) return true;
  const routes = findRoutes(
    after,
    facts.host,
    before.map(({ need }) => need),
  );
  return routes.every(({ route }, at) => moves(route) === moves(before[at]?.route ?? null));
}

function holds({ steps }: Route, key: KeyId): boolean {
  return steps.some((step) => step.move !== 'release' && step.side === 'hold' && step.keys.includes(key));
}

function moves(route: Route | null): string {
  return JSON.stringify(route?.steps ?? null);
}

/** Whether a change of chords brings no accident over its limit that was not over it before. */
export function bringsNoAccident({ situation, estimate, limits }: AccidentFacts, after: Keymap): boolean {
  const { runs, model } = situation;
  const before = new Set(overLimits(estimate, limits));
  return overLimits(estimateAccidents(after, runs, model.person), limits).every((each) => before.has(each));
}

/** Names of what is over its limit. */
function overLimits({ chords, delay }: Accidents, limits: AccidentLimits): readonly string[] {
  return [
    ...chords
      .filter((chord) => (chord.misfiresPer1000Words ?? 0) > limits.chordPer1000Words)
      .map(({ id }) => `chord ${id}`),
    ...delay.filter((each) => isLate(each, limits)).map(({ key, layer }) => `delay ${layer} ${key}`),
  ];
}

/** Whether a wait is over its limit on a key that is pressed often. */
export function isLate(
  { meanMs, per1000Words }: Accidents['delay'][number],
  { delayMs, frequentPer1000Words }: AccidentLimits,
): boolean {
  return meanMs > delayMs && per1000Words >= frequentPer1000Words;
}
