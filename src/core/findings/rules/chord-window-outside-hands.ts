import type { Edit } from '../../keymap/edit.ts';
import type { AccidentFacts } from '../accident-facts.ts';
import {
  BEGINNER_FACTOR,
  caughtPercent,
  SHORTEST_VALIDATED_MS,
  type SpreadGroup,
  spreadGroup,
  windowFor95,
} from '../chord-spread.ts';
import type { Facts } from '../facts.ts';
import type { Finding, Mend } from '../find.ts';
import { sharedLayers } from '../live-chords.ts';
import { outlastsHold } from '../outlasts-hold.ts';
import { type ResolvedChord, sameKeys } from '../resolved-chord.ts';
import { finding, type Rule } from '../rule.ts';
import { bringsNoAccident, designAfter } from '../sound-mend.ts';
import { caughtBy, shortestForSpread } from '../your-spread.ts';

const id = 'chord-window-outside-hands';

/** A window that misses more than this share of chords meant, percent, is too short. Our choice. */
const MOST_MISSED_PERCENT = 10;

/** Holds every window against the spread of skilled hands for that many keys and hands. */
export const chordWindowOutsideHands: Rule = {
  id,
  title: 'Window outside what hands do',
  why: 'Too short a window misses chords that are meant; too long a one delays letters and takes them for chords.',
  check: (facts) => facts.chords.flatMap((chord) => judged(facts, chord)),
};

function judged(facts: Facts, chord: ResolvedChord): readonly Finding[] {
  const { windowMs } = chord.chord;
  const group = spreadGroup(chord);
  const missed = Math.round(100 - caughtPercent(group, windowMs));
  if (windowMs < SHORTEST_VALIDATED_MS) return [found(facts, chord, 'not-validated', missed)];
  if (missed > MOST_MISSED_PERCENT) return [found(facts, chord, 'too-short', missed)];
  if (windowMs > BEGINNER_FACTOR * windowFor95(group)) return [found(facts, chord, 'too-long', missed)];
  return [];
}

type Verdict = 'not-validated' | 'too-short' | 'too-long';

function found(facts: Facts, chord: ResolvedChord, verdict: Verdict, missedPercent: number): Finding {
  const group = spreadGroup(chord);
  const { windowMs } = chord.chord;
  const suggestedMs = suggestionFor(facts, chord);
  return finding({
    rule: id,
    messageId: verdict,
    severity: 'risky',
    message: sentenceFor(chord, verdict, group, missedPercent),
    chords: [chord.chord.id],
    keys: chord.boardKeys.map((key) => key.id),
    data: { chord: chord.name, windowMs, missedPercent, suggestedMs, longestMs: longestFor(group), group },
    mends: mendsOf(facts, chord, suggestedMs),
  });
}

function sentenceFor(chord: ResolvedChord, verdict: Verdict, group: SpreadGroup, missed: number): string {
  const { windowMs } = chord.chord;
  const who = `of ${group}${chord.keys.length > 3 ? ' (no figures for more)' : ''}`;
  if (verdict === 'too-long') {
    return `“${chord.name}” waits ${windowMs} ms, though skilled hands have 95 % ${who} down within ${windowFor95(group)} ms; over ${longestFor(group)} ms even a beginner, assumed ${BEGINNER_FACTOR} times as wide, gains little.`;
  }
  const misses = `skilled hands would miss about ${missed} % ${who}`;
  if (verdict === 'too-short') return `“${chord.name}” has a window of ${windowMs} ms: ${misses}.`;
  return `“${chord.name}” has a window of ${windowMs} ms: ${misses}, and windows under ${SHORTEST_VALIDATED_MS} ms are not validated.`;
}

function longestFor(group: SpreadGroup): number {
  return BEGINNER_FACTOR * windowFor95(group);
}

/** What 95 % of skilled hands' chords fit into, up to the next 5 ms; wider where this typist's are known to be. */
function suggestionFor({ accidents }: Facts, chord: ResolvedChord): number {
  const group = spreadGroup(chord);
  const skilled = Math.ceil(windowFor95(group) / 5) * 5;
  const own = accidents === null ? skilled : shortestForSpread(accidents, chord);
  return Math.max(skilled, Math.min(own, Math.floor(longestFor(group) / 5) * 5));
}

/** None where a chord with the same keys would be taken over by the new window, or a hold would be outlasted. */
function mendsOf(facts: Facts, chord: ResolvedChord, windowMs: number): readonly Mend[] {
  const rivals = facts.chords.some(
    (other) => other !== chord && sameKeys(other, chord) && sharedLayers(other, chord) !== 0,
  );
  if (rivals || outlastsHold(facts, chord, windowMs)) return [];
  const edits: readonly Edit[] = [{ edit: 'change-chord', chord: chord.chord.id, to: { windowMs } }];
  if (facts.accidents !== null && !suits(facts, facts.accidents, chord, windowMs, edits)) return [];
  return [{ title: `Give “${chord.name}” a window of ${windowMs} ms`, edits }];
}

/** Whether this typist would neither miss the chord nor set off something: as bad as what the mend settles. */
function suits(
  facts: Facts,
  accidents: AccidentFacts,
  chord: ResolvedChord,
  windowMs: number,
  edits: readonly Edit[],
): boolean {
  const after = designAfter(facts, edits);
  const isMissed = 100 - caughtBy(accidents, chord, windowMs) > accidents.limits.missedPercent;
  return !isMissed && after !== null && bringsNoAccident(accidents, after);
}
