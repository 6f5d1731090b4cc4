import { keyName } from '../../board/key-name.ts';
import type { Edit } from '../../keymap/edit.ts';
import { timingOf } from '../../keymap/timing.ts';
import type { Keymap } from '../../keymap/types.ts';
import { type DelayOfKey, delayOfPress, watchedChords } from '../../typist/accidents.ts';
import { plainNumber } from '../../typist/uncertainty.ts';
import type { AccidentFacts } from '../accident-facts.ts';
import type { Facts } from '../facts.ts';
import type { Finding, Mend } from '../find.ts';
import { has } from '../layer-grid.ts';
import { isLetter } from '../letters.ts';
import { isRivalled } from '../live-chords.ts';
import type { BoundPlace } from '../places.ts';
import type { ResolvedChord } from '../resolved-chord.ts';
import { finding, type Rule } from '../rule.ts';
import { bringsNoAccident, designAfter, isLate, keepsRoutes } from '../sound-mend.ts';
import { actionInWords, sentence } from '../wording.ts';

const id = 'letter-appears-late';

/** The quiet before, ms, that a mend asks for. Common practice, no source; about the interval of an average typist (160 ms). */
const QUIET_MS = 150;

/** Looks at how long frequent letters wait for a chord or a hold of theirs. */
export const letterAppearsLate: Rule = {
  id,
  title: 'Letter that appears late',
  why: 'A letter that may still become a chord or a hold is not seen before that is settled.',
  about: 'accidents',
  check(facts) {
    const { accidents } = facts;
    if (accidents === null) return [];
    return facts.places.flatMap((place) => {
      const { tap } = place.binding;
      if (!place.reached || tap === undefined || !isLetter(facts.host, tap)) return [];
      const late = lateAt(accidents, place, accidents.estimate.delay);
      return late === undefined ? [] : [found(facts, accidents, place, late)];
    });
  },
};

/** The longest wait over the limit of a place; the same letter may come by several presses. */
function lateAt(
  { limits }: AccidentFacts,
  place: BoundPlace,
  delay: readonly DelayOfKey[],
): DelayOfKey | undefined {
  return delay
    .filter((each) => each.key === place.key.id && each.layer === place.layer.id && isLate(each, limits))
    .toSorted((one, other) => other.meanMs - one.meanMs)[0];
}

function found(facts: Facts, accidents: AccidentFacts, place: BoundPlace, late: DelayOfKey): Finding {
  const { keymap, host } = facts;
  const name = keyName(keymap.board, place.key.id);
  const letter = place.sides[0] === undefined ? name : actionInWords(keymap, host, place.sides[0].action);
  const why = place.binding.hold === undefined ? 'for a chord' : 'for its hold';
  const meanMs = Math.round(late.meanMs);
  return finding({
    rule: id,
    messageId: 'waits',
    severity: 'note',
    message: sentence(
      `${letter} on ${name} waits ${why} about ${meanMs} ms before it appears (95 in 100 within ${late.p95Ms} ms), ${plainNumber(late.per1000Words)} times in 1,000 words.`,
    ),
    keys: [place.key.id],
    layers: [place.layer.id],
    data: { key: name, meanMs, p95Ms: late.p95Ms, limitMs: accidents.limits.delayMs },
    mends: mendsOf(facts, accidents, place),
  });
}

/** Quiet before for whatever the letter waits for: in quick typing it then appears at once. */
function mendsOf(facts: Facts, accidents: AccidentFacts, place: BoundPlace): readonly Mend[] {
  const chords = chordsToQuiet(facts, place);
  const edits = [...quietHold(facts, place), ...chords.map(quietChord)];
  if (edits.length === 0 || chords.some((chord) => isRivalled(facts, chord))) return [];
  const after = designAfter(facts, edits);
  if (after === null || lateAt(accidents, place, delaysAfter(accidents, after, place)) !== undefined)
    return [];
  if (!keepsRoutes(facts, after) || !bringsNoAccident(accidents, after)) return [];
  return [{ title: `Ask for ${QUIET_MS} ms of quiet before`, edits }];
}

function delaysAfter({ situation }: AccidentFacts, after: Keymap, place: BoundPlace): readonly DelayOfKey[] {
  const { runs } = situation;
  const watched = watchedChords(after, runs);
  const key = runs.compiled.keyNumbers.get(place.key.id);
  return runs.presses.flatMap((press, at) =>
    press.keys[0] === key ? (delayOfPress(situation, after, watched, at) ?? []) : [],
  );
}

function quietHold({ keymap }: Facts, { binding, layer, key }: BoundPlace): readonly Edit[] {
  if (binding.hold === undefined || timingOf(keymap, binding).quietBeforeMs >= QUIET_MS) return [];
  const place = { layer: layer.id, key: key.id };
  return [{ edit: 'set-binding-timing', place, timing: { quietBeforeMs: QUIET_MS } }];
}

function chordsToQuiet({ chords }: Facts, { layerNumber, key }: BoundPlace): readonly ResolvedChord[] {
  return chords.filter(
    ({ chord, live, quietBeforeMs }) =>
      chord.keys.includes(key.id) && has(live, layerNumber) && quietBeforeMs < QUIET_MS,
  );
}

function quietChord({ chord }: ResolvedChord): Edit {
  return { edit: 'change-chord', chord: chord.id, to: { quietBeforeMs: QUIET_MS } };
}
