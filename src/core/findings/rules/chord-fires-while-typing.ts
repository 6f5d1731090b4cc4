import type { ChordChange, Edit } from '../../keymap/edit.ts';
import { chordsOf } from '../../keymap/timing.ts';
import { watchedChord, watchedChords } from '../../typist/accidents.ts';
import { chordMisfires } from '../../typist/chord-misfires.ts';
import { oftenInWords } from '../../typist/uncertainty.ts';
import type { AccidentFacts } from '../accident-facts.ts';
import { causesInWords } from '../causes-in-words.ts';
import { spreadGroup, windowFor95 } from '../chord-spread.ts';
import type { Facts } from '../facts.ts';
import type { Mend } from '../find.ts';
import { isRivalled } from '../live-chords.ts';
import type { ResolvedChord } from '../resolved-chord.ts';
import { finding, type Rule } from '../rule.ts';
import { bringsNoAccident, designAfter, keepsRoutes } from '../sound-mend.ts';
import { shortestForSpread } from '../your-spread.ts';

const id = 'chord-fires-while-typing';

/** The quiet before, ms, that a mend asks for. Common practice, no source; about the interval of an average typist (160 ms). */
const QUIET_MS = 150;

/** Looks at how often ordinary typing sets each chord off. */
export const chordFiresWhileTyping: Rule = {
  id,
  title: 'Chord that typing sets off',
  why: 'Letters that come quickly one after the other turn into the chord.',
  about: 'accidents',
  check(facts) {
    const { accidents } = facts;
    if (accidents === null) return [];
    return facts.chords.flatMap((chord) => {
      const rates = accidents.estimate.chords[chord.order];
      const often = rates?.misfiresPer1000Words ?? 0;
      if (rates === undefined || often <= accidents.limits.chordPer1000Words) return [];
      const causes = causesInWords(facts, accidents, rates.causes);
      return [
        finding({
          rule: id,
          messageId: 'fires',
          severity: 'risky',
          message: `“${chord.name}” goes off ${oftenInWords(often)}${causes}.`,
          chords: [chord.chord.id],
          keys: chord.boardKeys.map((key) => key.id),
          data: {
            chord: chord.name,
            misfiresPer1000Words: often,
            limit: accidents.limits.chordPer1000Words,
            windowMs: chord.chord.windowMs,
          },
          mends: mendsOf(facts, accidents, chord),
        }),
      ];
    });
  },
};

/** A shorter window, quiet before, or both: the first that is enough and changes nothing else for the worse. */
function mendsOf(facts: Facts, accidents: AccidentFacts, chord: ResolvedChord): readonly Mend[] {
  if (isRivalled(facts, chord)) return [];
  const shorter = shorterWindow(facts, accidents, chord, {});
  const quiet: ChordChange = { quietBeforeMs: QUIET_MS };
  const asks = chord.quietBeforeMs < QUIET_MS;
  const both = asks ? shorterWindow(facts, accidents, chord, quiet) : null;
  const tried: readonly (ChordChange | null)[] = [
    shorter === null ? null : { windowMs: shorter },
    asks ? quiet : null,
    both === null ? null : { windowMs: both, ...quiet },
  ];
  for (const to of tried) {
    if (to === null || rateWith(facts, accidents, chord, to) > accidents.limits.chordPer1000Words) continue;
    const edits: readonly Edit[] = [{ edit: 'change-chord', chord: chord.chord.id, to }];
    const after = designAfter(facts, edits);
    if (after === null || !keepsRoutes(facts, after) || !bringsNoAccident(accidents, after)) continue;
    return [{ title: titleOf(chord, to), edits }];
  }
  return [];
}

/** The longest window shorter than the chord's, in steps of 5 ms, that is enough and within which hands still come; null without any. */
function shorterWindow(
  facts: Facts,
  accidents: AccidentFacts,
  chord: ResolvedChord,
  also: ChordChange,
): number | null {
  const least = Math.max(
    Math.ceil(windowFor95(spreadGroup(chord)) / 5) * 5,
    shortestForSpread(accidents, chord),
  );
  const from = Math.ceil(chord.chord.windowMs / 5) * 5 - 5;
  for (let windowMs = from; windowMs >= least; windowMs -= 5)
    if (rateWith(facts, accidents, chord, { windowMs, ...also }) <= accidents.limits.chordPer1000Words)
      return windowMs;
  return null;
}

function rateWith(
  { keymap }: Facts,
  { situation }: AccidentFacts,
  { chord, order }: ResolvedChord,
  { windowMs = chord.windowMs, quietBeforeMs }: ChordChange,
): number {
  const others = watchedChords(keymap, situation.runs).filter((_, at) => at !== order);
  const own = chordsOf(keymap)[order] ?? chord;
  const tried = { ...own, windowMs, quietBeforeMs: quietBeforeMs ?? own.quietBeforeMs ?? 0 };
  const causes = chordMisfires(situation, watchedChord(keymap, situation.runs, tried), others) ?? [];
  return causes.reduce((sum, { per1000Words }) => sum + per1000Words, 0);
}

function titleOf({ name }: ResolvedChord, { windowMs, quietBeforeMs }: ChordChange): string {
  const parts = [
    ...(windowMs === undefined ? [] : [`a window of ${windowMs} ms`]),
    ...(quietBeforeMs === undefined ? [] : [`${quietBeforeMs} ms of quiet before`]),
  ];
  return `Give “${name}” ${parts.join(' and ')}`;
}
