import { handSpanMm } from '../../board/reach.ts';
import type { Hand } from '../../keymap/types.ts';
import type { Facts } from '../facts.ts';
import type { Finding } from '../find.ts';
import type { ResolvedChord } from '../resolved-chord.ts';
import { finding, type Rule } from '../rule.ts';

const id = 'chord-too-wide-for-hand';

/** From centre to centre, mm, the thumb among the fingers. Common practice, no source: hands differ. */
export const WITH_THUMB_MM = 150;
/** From centre to centre, mm, between two of the four fingers. Common practice, no source: hands differ. */
export const WITHOUT_THUMB_MM = 100;

/** Measures what each hand must span for every chord. */
export const chordTooWideForHand: Rule = {
  id,
  title: 'Chord too wide for the hand',
  why: 'A hand that stretches for a chord leaves its home keys and does not hit all keys together.',
  judgesHands: true,
  check: (facts) =>
    facts.chords.flatMap((chord) =>
      (['left', 'right'] as const).flatMap((hand) => measured(facts, chord, hand)),
    ),
};

function measured(facts: Facts, chord: ResolvedChord, hand: Hand): readonly Finding[] {
  const keys = chord.boardKeys.filter((key) => key.hand === hand);
  const fingers = keys.filter((key) => key.finger !== 'thumb').map((key) => key.id);
  const all = keys.map((key) => key.id);
  return [
    ...tooWide(facts, chord, hand, fingers, WITHOUT_THUMB_MM),
    ...(all.length > fingers.length ? tooWide(facts, chord, hand, all, WITH_THUMB_MM) : []),
  ].slice(0, 1);
}

function tooWide(
  { keymap }: Facts,
  chord: ResolvedChord,
  hand: Hand,
  keys: readonly string[],
  limitMm: number,
): readonly Finding[] {
  const spanMm = Math.round(handSpanMm(keymap.board, keys));
  if (spanMm <= limitMm) return [];
  const whose = limitMm === WITH_THUMB_MM ? 'with the thumb' : 'without the thumb';
  return [
    finding({
      rule: id,
      messageId: 'too-wide',
      severity: 'risky',
      message: `“${chord.name}” spans ${spanMm} mm of the ${hand} hand; ${limitMm} mm ${whose} is what most hands reach at ease (common practice, no source).`,
      chords: [chord.chord.id],
      keys,
      data: { chord: chord.name, hand, spanMm, limitMm },
    }),
  ];
}
