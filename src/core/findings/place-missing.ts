import { isModifier } from '../keymap/codes.ts';
import type { Edit } from '../keymap/edit.ts';
import { type Need, needText } from '../keymap/need.ts';
import type { Action, Keymap, Place } from '../keymap/types.ts';
import { findRoutes } from '../routes/find-routes.ts';
import type { NeedRoute } from '../routes/types.ts';
import { actionForNeed } from './binding-for-need.ts';
import { designFacts, type Facts } from './facts.ts';
import { freePlaces } from './free-places.ts';
import { isHarmless } from './harmless.ts';
import { modifierMissing } from './rules/modifier-missing.ts';
import { designAfter } from './sound-mend.ts';

/** What giving all missing needs a place comes to. */
export interface Placing {
  /** Binds of taps at places that were empty; none where no need finds one. */
  readonly edits: readonly Edit[];
  /** Whether Shift came too, which nobody asked for by itself. */
  readonly withShift: boolean;
  /** The needs that are typed after it and were not before. */
  readonly placed: readonly Need[];
  /** The needs that are still missing after it. */
  readonly left: readonly Need[];
}

/** A design on the way, with what has been bound and the places that no key may come to. */
interface Way {
  readonly facts: Facts;
  readonly edits: readonly Edit[];
  readonly spoilt: ReadonlySet<string>;
}

type Wanted = (need: Need, action: Action) => boolean;

const isModifierKey: Wanted = (need) => need.kind === 'key' && isModifier(need.code);

/**
 * What comes when. Modifiers first, and then characters that one bare key gives: both bring others with them, which then
 * need no place of their own.
 */
const TURNS: readonly Wanted[] = [
  isModifierKey,
  (need, action) => need.kind === 'char' && action.do === 'key',
  (need) => need.kind === 'char',
  (need) => need.kind === 'key',
  () => true,
];

/**
 * Gives each missing need an empty place, by the rule by which a single one is offered its own: no place that a route
 * or a held key needs, none where a key does harm, home keys before others. A need that another's key brings with it
 * takes no place, and none that was typed before is lost.
 */
export function placeMissing(facts: Facts): Placing {
  const start = withShift({ facts, edits: [], spoilt: new Set() });
  const end = TURNS.reduce((way, isWanted) => turn(way, isWanted), start);
  const missing = facts.needs.flatMap(({ need, route }) => (route === null ? [need] : []));
  const still = new Set(
    end.facts.needs.flatMap(({ need, route }) => (route === null ? [needText(need)] : [])),
  );
  return {
    edits: end.edits,
    withShift: start.edits.length > 0,
    placed: missing.filter((need) => !still.has(needText(need))),
    left: missing.filter((need) => still.has(needText(need))),
  };
}

/** From so many missing characters on Shift is worth the place that it takes. */
const WORTH_SHIFT = 2;

/** With Shift on a free key first, where the design lacks it and missing characters are made with it. */
function withShift(way: Way): Way {
  const { facts } = way;
  const lacking = modifierMissing.check(facts).find(({ data }) => data.modifier === 'Shift');
  const edits = lacking?.mends[0]?.edits ?? [];
  const made = facts.needs.filter(({ need, route }) => route === null && isMadeWithShift(facts, need));
  if (made.length < WORTH_SHIFT) return way;
  return taken(
    way,
    edits.flatMap((edit) => (edit.edit === 'bind' && edit.side === 'tap' ? [edit] : [])),
  );
}

function isMadeWithShift({ host }: Facts, need: Need): boolean {
  const [stroke, ...more] = need.kind === 'char' ? (host.routesOf(need.char)[0] ?? []) : [];
  return stroke !== undefined && more.length === 0 && stroke.with.some((modifier) => /^Shift/.test(modifier));
}

/** Gives places to what is wanted at a turn and still missing, for as long as there are any. */
function turn(start: Way, isWanted: Wanted): Way {
  let way = start;
  for (;;) {
    const actions = actionsWanted(way.facts, isWanted);
    const places = freePlaces(way.facts).filter((place) => !way.spoilt.has(JSON.stringify(place)));
    const binds = actions.slice(0, places.length).flatMap((action, at) => {
      const place = places[at];
      return place === undefined ? [] : [bind(place, action)];
    });
    if (binds.length === 0) return way;
    way = taken(way, binds);
  }
}

function actionsWanted({ needs, host }: Facts, isWanted: Wanted): readonly Action[] {
  const actions = needs.flatMap(({ need, route }) => {
    const action = route === null ? actionForNeed(host, need) : null;
    return action !== null && isWanted(need, action) ? [action] : [];
  });
  return [...new Map(actions.map((action) => [JSON.stringify(action), action])).values()];
}

type Bind = Extract<Edit, { readonly edit: 'bind' }>;

function bind(place: Place, action: Action): Bind {
  return { edit: 'bind', place, side: 'tap', action };
}

/** Takes binds all at once, or where that does harm, half of them and then the other half; a place that does harm by itself is spoilt. */
function taken(way: Way, binds: readonly Bind[]): Way {
  const after = isHarmless(way.facts, binds) ? designAfter(way.facts, binds) : null;
  const needs = after === null ? null : keptNeeds(way.facts, after);
  if (after !== null && needs !== null) {
    const facts = { ...way.facts, ...designFacts(after, way.facts.host), needs };
    const spoilt = new Set([...way.spoilt, ...binds.map(({ place }) => JSON.stringify(place))]);
    return { facts, edits: [...way.edits, ...binds], spoilt };
  }
  const [first] = binds;
  if (first === undefined) return way;
  if (binds.length === 1) return { ...way, spoilt: new Set([...way.spoilt, JSON.stringify(first.place)]) };
  const half = Math.ceil(binds.length / 2);
  return taken(taken(way, binds.slice(0, half)), binds.slice(half));
}

/** The needs with their routes on the design as it would be; null where one that was typed would not be. */
function keptNeeds({ needs, host }: Facts, after: Keymap): readonly NeedRoute[] | null {
  const now = findRoutes(
    after,
    host,
    needs.map(({ need }) => need),
  );
  return now.every(({ route }, at) => route !== null || needs[at]?.route === null) ? now : null;
}
