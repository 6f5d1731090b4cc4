import { needText } from '../keymap/need.ts';
import type { RunCounts } from '../needs/counts-runs.ts';
import { findRoutes } from '../routes/find-routes.ts';
import { type HoldPlace, holdPlaces } from '../typist/accidents.ts';
import { type Changeable, STRONGEST } from '../typist/hold-options.ts';
import {
  type Protections,
  protectionEdit,
  suggestProtections,
  type Unprotected,
} from '../typist/protections.ts';
import { accidentFacts } from './accident-facts.ts';
import type { Facts } from './facts.ts';
import { isLetter } from './letters.ts';
import { designAfter } from './sound-mend.ts';

/** The hold/tap letters of a design that can be reached. */
export function letterHolds({ keymap, host, places }: Facts): readonly HoldPlace[] {
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

/**
 * The fewest changes that bring all hold/tap letters together under a rate, misfires per 1,000 words; null where the facts know
 * nothing of the typing. Left out is what would make a need missing or clumsy. What comes of the changes is worked out on
 * the design after them.
 */
export function protectLetters(facts: Facts, counts: RunCounts, most: number): Protections | null {
  const { accidents, host } = facts;
  if (accidents === null) return null;
  const letters = letterHolds(facts);
  const holds = letters.map((place): Unprotected => ({ place, changeable: changeableOf(facts, place) }));
  const suggested = suggestProtections(accidents.situation, holds, most);
  if (suggested.changes === 0) return suggested;
  const after = designAfter(facts, [protectionEdit(suggested)]);
  if (after === null) return suggested;
  const { person } = accidents.situation.model;
  const { estimate } = accidentFacts(after, host, counts, person, accidents.limits);
  const isLetterHold = new Set(letters.map(({ key, layer }) => `${layer} ${key}`));
  const misfires = estimate.holds
    .filter(({ key, layer }) => isLetterHold.has(`${layer} ${key}`))
    .reduce((sum, { misfiresPer1000Words }) => sum + misfiresPer1000Words, 0);
  return { ...suggested, after: misfires, enough: misfires <= most };
}

/** Which fields may be changed without a need going missing or becoming clumsy. */
function changeableOf(facts: Facts, place: HoldPlace): Changeable {
  const through = facts.needs.filter(({ route }) =>
    route?.steps.some(
      (step) => step.move !== 'release' && step.side === 'hold' && step.keys.includes(place.key),
    ),
  );
  const may = (field: keyof Changeable): boolean => {
    if (through.length === 0) return true;
    const after = designAfter(facts, [
      {
        edit: 'set-binding-timing',
        place: { key: place.key, layer: place.layer },
        timing: { [field]: STRONGEST[field] },
      },
    ]);
    if (after === null) return false;
    const wasClumsy = new Set(through.flatMap(({ need, route }) => (route?.clumsy ? needText(need) : [])));
    return findRoutes(
      after,
      facts.host,
      through.map(({ need }) => need),
    ).every(({ need, route }) => route !== null && (!route.clumsy || wasClumsy.has(needText(need))));
  };
  return {
    holdAfterMs: may('holdAfterMs'),
    quietBeforeMs: may('quietBeforeMs'),
    sameHandTaps: may('sameHandTaps'),
    holdBy: may('holdBy'),
  };
}
