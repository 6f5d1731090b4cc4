import { keyName } from '../../board/key-name.ts';
import type { Edit } from '../../keymap/edit.ts';
import { type HoldAccidents, holdPlaces } from '../../typist/accidents.ts';
import { type HoldOption, holdOptions } from '../../typist/hold-options.ts';
import { oftenInWords, plainNumber } from '../../typist/uncertainty.ts';
import type { AccidentFacts } from '../accident-facts.ts';
import { causesInWords } from '../causes-in-words.ts';
import type { Facts } from '../facts.ts';
import type { Finding, Mend } from '../find.ts';
import { isLetter } from '../letters.ts';
import type { BoundPlace } from '../places.ts';
import { finding, type Rule } from '../rule.ts';
import { designAfter, keepsRoutes } from '../sound-mend.ts';
import { actionInWords, sentence } from '../wording.ts';

const id = 'letter-hold-misfires';

const MOST_MENDS = 2;

/** Looks at how often ordinary typing turns each letter into its hold. */
export const letterHoldMisfires: Rule = {
  id,
  title: 'Letter that turns into its hold',
  why: 'A letter that is meant and comes as its hold takes the next one with it.',
  about: 'accidents',
  check(facts) {
    const { accidents } = facts;
    if (accidents === null) return [];
    const rates = new Map(accidents.estimate.holds.map((each) => [`${each.layer} ${each.key}`, each]));
    return facts.places.flatMap((place) => {
      const own = rates.get(`${place.layer.id} ${place.key.id}`);
      if (own === undefined || own.misfiresPer1000Words <= accidents.limits.holdPer1000Words) return [];
      const { tap, hold } = place.binding;
      if (!place.reached || tap === undefined || hold === undefined || hold.do === 'nothing') return [];
      return isLetter(facts.host, tap) ? [found(facts, accidents, place, own)] : [];
    });
  },
};

function found(facts: Facts, accidents: AccidentFacts, place: BoundPlace, own: HoldAccidents): Finding {
  const { keymap, host } = facts;
  const name = keyName(keymap.board, place.key.id);
  const [tap = '', hold = ''] = place.sides.map(({ action }) => actionInWords(keymap, host, action));
  const causes = causesInWords(facts, accidents, own.causes);
  const often = oftenInWords(own.misfiresPer1000Words);
  return finding({
    rule: id,
    messageId: 'misfires',
    severity: 'risky',
    message: sentence(`${tap} on ${name} turns into ${hold} ${often}${causes}.`),
    keys: [place.key.id],
    layers: [place.layer.id],
    data: {
      key: name,
      misfiresPer1000Words: own.misfiresPer1000Words,
      limit: accidents.limits.holdPer1000Words,
    },
    mends: mendsOf(facts, accidents, place),
  });
}

/** The gentlest timings that are enough, one for the fields they change, the fewest first; every route stays as it is. */
function mendsOf(facts: Facts, accidents: AccidentFacts, place: BoundPlace): readonly Mend[] {
  const own = holdPlaces(facts.keymap).find(
    ({ key, layer }) => key === place.key.id && layer === place.layer.id,
  );
  if (own === undefined) return [];
  const mends: Mend[] = [];
  const tried = new Set<string>();
  for (const option of holdOptions(accidents.situation, own)) {
    const fields = Object.keys(option.change).join();
    if (mends.length === MOST_MENDS) break;
    if (option.misfires > accidents.limits.holdPer1000Words || tried.has(fields)) continue;
    const edits: readonly Edit[] = [
      {
        edit: 'set-binding-timing',
        place: { layer: place.layer.id, key: place.key.id },
        timing: option.change,
      },
    ];
    const after = designAfter(facts, edits);
    if (after === null || !keepsRoutes(facts, after, place.key.id)) continue;
    tried.add(fields);
    mends.push({ title: titleOf(option), edits });
  }
  return mends;
}

function titleOf({ change, misfires }: HoldOption): string {
  const parts = [
    ...(change.holdAfterMs === undefined ? [] : [`hold after ${change.holdAfterMs} ms`]),
    ...(change.holdBy === undefined ? [] : [`hold by ${change.holdBy.replace('-', ' ')}`]),
    ...(change.quietBeforeMs === undefined ? [] : [`${change.quietBeforeMs} ms of quiet before`]),
    ...(change.sameHandTaps === undefined ? [] : ['taps by the same hand']),
  ];
  return sentence(`${parts.join(', ')}: then about ${plainNumber(misfires)}`);
}
