import type { Facts } from '../facts.ts';
import type { Finding } from '../find.ts';
import { layerIds, sharedLayers } from '../live-chords.ts';
import type { ResolvedChord } from '../resolved-chord.ts';
import { finding, type Rule } from '../rule.ts';

const id = 'chord-inside-chord';

/** Holds every chord against every larger one that has all its keys and shares a layer with it. */
export const chordInsideChord: Rule = {
  id,
  title: 'Chord inside another chord',
  why: 'The smaller one must wait to see whether the larger one is meant.',
  check: (facts) =>
    facts.chords.flatMap((small) =>
      facts.chords.flatMap((large) => (isInside(small, large) ? [found(facts, small, large)] : [])),
    ),
};

function isInside(small: ResolvedChord, large: ResolvedChord): boolean {
  return (
    small.keys.length < large.keys.length &&
    sharedLayers(small, large) !== 0 &&
    small.whole &&
    small.keys.every((key) => large.keys.includes(key))
  );
}

/** The wait ends when the larger chord's window does, counted from the first key (rule G3), or when a key comes up. */
function found(facts: Facts, small: ResolvedChord, large: ResolvedChord): Finding {
  const delayMs = large.chord.windowMs;
  return finding({
    rule: id,
    messageId: 'waits',
    severity: 'note',
    message: `“${small.name}” lies inside “${large.name}”: while its keys stay down it comes up to ${delayMs} ms after the first of them.`,
    chords: [small.chord.id, large.chord.id],
    keys: small.boardKeys.map((key) => key.id),
    layers: layerIds(facts, sharedLayers(small, large)),
    data: { chord: small.name, other: large.name, delayMs, windowMs: small.chord.windowMs },
  });
}
