import { type Code, isModifier } from '../../keymap/codes.ts';
import { type Need, needText } from '../../keymap/need.ts';
import type { Place } from '../../keymap/types.ts';
import type { NeedRoute } from '../../routes/types.ts';
import { actionForNeed } from '../binding-for-need.ts';
import type { Facts } from '../facts.ts';
import type { Finding, Mend } from '../find.ts';
import { freePlaces, placeInWords } from '../free-places.ts';
import { isHarmless } from '../harmless.ts';
import { finding, type Rule } from '../rule.ts';
import { needInWords, sentence } from '../wording.ts';

const id = 'need-missing';

/** Looks at every need without a route. */
export const needMissing: Rule = {
  id,
  title: 'Need missing from all layers',
  why: 'The typist has said that this must be typed, and no presses type it.',
  check(facts) {
    const missing = facts.needs.filter(({ route }) => route === null);
    if (missing.length === 0) return [];
    const placed = missing.filter(({ need }) => actionForNeed(facts.host, need) !== null);
    const modifiers = placed.filter(isModifierAlone);
    const others = placed.filter((each) => !isModifierAlone(each));
    const free = freePlaces(facts);
    const forModifiers = placesFor(facts, free, 'ShiftLeft', modifiers.length);
    const left = free.filter((place) => !forModifiers.includes(place));
    const forTyping = placesFor(facts, left.length === 0 ? free : left, 'Space', others.length);
    const places = new Map([...dealt(modifiers, forModifiers), ...dealt(others, forTyping)]);
    return missing.map((each) => found(facts, each.need, places.get(each)));
  },
};

/** So many needs are offered places of their own at most: each place must be looked at before. */
const MOST_PLACES = 12;
/** So many places are looked at at most, those that do harm among them. */
const MOST_LOOKED_AT = 16;

/** A modifier does not type, so it does not use up the latch that a key in its place might have to. */
function isModifierAlone({ need }: NeedRoute): boolean {
  return need.kind === 'key' && isModifier(need.code);
}

/**
 * Each need with the place it is offered: the first need the best one, the next the next, so that no two of them are
 * offered the same; where there are more needs than places, from the first again.
 */
function dealt(
  needs: readonly NeedRoute[],
  places: readonly Place[],
): readonly (readonly [NeedRoute, Place | undefined])[] {
  return needs.map((need, at) => [need, places[at % Math.max(1, places.length)]] as const);
}

/** The first of some empty places where a key of that kind does no harm; whichever of its kind is bound there. */
function placesFor(facts: Facts, free: readonly Place[], code: Code, count: number): readonly Place[] {
  const found: Place[] = [];
  for (const place of free.slice(0, MOST_LOOKED_AT)) {
    if (found.length >= Math.min(count, MOST_PLACES)) break;
    if (isHarmless(facts, [{ edit: 'bind', place, side: 'tap', action: { do: 'key', code } }]))
      found.push(place);
  }
  return found;
}

function found(facts: Facts, need: Need, place: Place | undefined): Finding {
  const words = needInWords(facts.host, need);
  const impossible = actionForNeed(facts.host, need) === null;
  return finding({
    rule: id,
    messageId: impossible ? 'host-cannot-type' : 'no-route',
    severity: 'broken',
    message: sentence(
      impossible
        ? `${words} is missing, and the host layout ${facts.host.layout} has no way to type it.`
        : `${words} is missing: no presses on any layer type it.`,
    ),
    data: { need: needText(need), name: words },
    mends: place === undefined ? [] : mendsOf(facts, need, words, place),
  });
}

function mendsOf({ host, keymap }: Facts, need: Need, words: string, place: Place): readonly Mend[] {
  const action = actionForNeed(host, need);
  if (action === null) return [];
  const title = `Bind ${words} at ${placeInWords(keymap, place)}`;
  return [{ title, edits: [{ edit: 'bind', place, side: 'tap', action }] }];
}
