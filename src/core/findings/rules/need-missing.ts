import type { Edit } from '../../keymap/edit.ts';
import { type Need, needText } from '../../keymap/need.ts';
import type { Place } from '../../keymap/types.ts';
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
    const place = placeForAny(facts);
    return missing.map(({ need }) => found(facts, need, place));
  },
};

/** The first empty place where a key that types does no harm; whichever need is bound there, the place is as good. */
function placeForAny(facts: Facts): Place | undefined {
  const mends = freePlaces(facts).map((place): Mend => {
    const edit: Edit = { edit: 'bind', place, side: 'tap', action: { do: 'key', code: 'Space' } };
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
