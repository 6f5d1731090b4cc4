import type { AccidentFacts } from '../accident-facts.ts';
import {
  BEGINNER_FACTOR,
  caughtPercent,
  SHORTEST_VALIDATED_MS,
  spreadGroup,
  windowFor95,
} from '../chord-spread.ts';
import type { Facts } from '../facts.ts';
import type { Mend } from '../find.ts';
import { sharedLayers } from '../live-chords.ts';
import { outlastsHold } from '../outlasts-hold.ts';
import { type ResolvedChord, sameKeys } from '../resolved-chord.ts';
import { finding, type Rule } from '../rule.ts';
import { bringsNoAccident, designAfter, keepsRoutes } from '../sound-mend.ts';
import { caughtBy, windowThatCatches } from '../your-spread.ts';

const id = 'chord-window-under-your-spread';

/** Skilled hands that miss no more than this, percent, are another rule's no business: `chord-window-outside-hands`. */
const SKILLED_MISS_PERCENT = 10;
/** The share of chords, percent, that the mend's window is to catch. */
const CAUGHT_PERCENT = 95;

/** Holds every window against how far apart this typist's chord keys come, where skilled hands would do well enough. */
export const chordWindowUnderYourSpread: Rule = {
  id,
  title: 'Window under your spread',
  why: 'Keys that come farther apart than the window stay single letters.',
  about: 'accidents',
  check(facts) {
    const { accidents } = facts;
    if (accidents === null) return [];
    return facts.chords.flatMap((chord) => {
      const { windowMs } = chord.chord;
      const missedPercent = 100 - caughtBy(accidents, chord, windowMs);
      if (missedPercent <= accidents.limits.missedPercent || isForSkilledToo(chord)) return [];
      const neededMs = windowThatCatches(accidents, chord, CAUGHT_PERCENT);
      const rounded = Math.round(missedPercent);
      return [
        finding({
          rule: id,
          messageId: 'misses',
          severity: 'risky',
          message: `“${chord.name}” has a window of ${windowMs} ms: with your spread about ${rounded} in 100 would not come; ${CAUGHT_PERCENT} in 100 of yours are down within ${neededMs} ms.`,
          chords: [chord.chord.id],
          keys: chord.boardKeys.map((key) => key.id),
          data: { chord: chord.name, windowMs, missedPercent: rounded, neededMs },
          mends: mendsOf(facts, accidents, chord, neededMs),
        }),
      ];
    });
  },
};

/** Whether the window is too short for anybody, which another rule says. */
function isForSkilledToo(chord: ResolvedChord): boolean {
  const { windowMs } = chord.chord;
  const missed = Math.round(100 - caughtPercent(spreadGroup(chord), windowMs));
  return windowMs < SHORTEST_VALIDATED_MS || missed > SKILLED_MISS_PERCENT;
}

/** None where the wider window would bring on something as bad: misfires, another chord, a hold that comes late. */
function mendsOf(
  facts: Facts,
  accidents: AccidentFacts,
  chord: ResolvedChord,
  neededMs: number,
): readonly Mend[] {
  const longest = BEGINNER_FACTOR * windowFor95(spreadGroup(chord));
  const windowMs = Math.min(neededMs, Math.floor(longest / 5) * 5);
  const isRivalled = facts.chords.some(
    (other) => other !== chord && sameKeys(other, chord) && sharedLayers(other, chord) !== 0,
  );
  if (isRivalled || windowMs <= chord.chord.windowMs || outlastsHold(facts, chord, windowMs)) return [];
  if (100 - caughtBy(accidents, chord, windowMs) > accidents.limits.missedPercent) return [];
  const edits = [{ edit: 'change-chord' as const, chord: chord.chord.id, to: { windowMs } }];
  const after = designAfter(facts, edits);
  if (after === null || !keepsRoutes(facts, after) || !bringsNoAccident(accidents, after)) return [];
  return [{ title: `Give “${chord.name}” a window of ${windowMs} ms`, edits }];
}
