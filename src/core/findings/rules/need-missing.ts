import { type Code, isModifier } from '../../keymap/codes.ts';
import type { Edit } from '../../keymap/edit.ts';
import { type Need, needText } from '../../keymap/need.ts';
import type { Place } from '../../keymap/types.ts';
import type { NeedRoute } from '../../routes/types.ts';
import { actionForNeed } from '../binding-for-need.ts';
import type { Facts } from '../facts.ts';
import type { Finding, Mend } from '../find.ts';
import { freePlaces, placeInWords } from '../free-places.ts';
import { firstHarmless } from '../harmless.ts';
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
    const free = freePlaces(facts);
    const [modifiers, others] = [
      missing.filter(isModifierAlone),
      missing.filter((each) => !isModifierAlone(each)),
    ];
    const forModifier = modifiers.length > 0 ? placeFor(facts, free, 'ShiftLeft') : undefined;
    const forTyping = others.length > 0 ? placeFor(facts, free, 'Space') : undefined;
    return missing.map((each) => found(facts, each.need, isModifierAlone(each) ? forModifier : forTyping));
  },
};

/** A modifier does not type, so it does not use up the latch that a key in its place might have to. */
function isModifierAlone({ need }: NeedRoute): boolean {
  return need.kind === 'key' && isModifier(need.code);
}

/** The first of some empty places where a key of that kind does no harm; whichever of its kind is bound there. */
function placeFor(facts: Facts, free: readonly Place[], code: Code): Place | undefined {
  const mends = free.map((place): Mend => {
    const edit: Edit = { edit: 'bind', place, side: 'tap', action: { do: 'key', code } };
    return { title: '', edits: [edit] };
  });
  const edit = firstHarmless(facts, mends)?.edits[0];
  return edit?.edit === 'bind' ? edit.place : undefined;
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
