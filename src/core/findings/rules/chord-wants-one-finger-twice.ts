import { overlapMm } from '../../board/caps.ts';
import { oneFingerGroups } from '../../board/reach.ts';
import type { BoardKey } from '../../keymap/types.ts';
import type { Facts } from '../facts.ts';
import type { Finding } from '../find.ts';
import type { ResolvedChord } from '../resolved-chord.ts';
import { finding, type Rule } from '../rule.ts';
import { keysInWords } from '../wording.ts';

const id = 'chord-wants-one-finger-twice';

/** Caps no farther apart than this, mm, can be pressed by one fingertip on the edge between them. Common practice, no source. */
const EDGE_GAP_MM = 4;

/** Looks at the keys of every chord that belong to one finger. */
export const chordWantsOneFingerTwice: Rule = {
  id,
  title: 'Chord that wants one finger twice',
  why: 'One finger can press two keys at once only on the edge between them.',
  judgesHands: true,
  check: (facts) =>
    facts.chords.flatMap((chord) =>
      oneFingerGroups(facts.keymap.board, [...new Set(chord.chord.keys)]).map((group) =>
        found(facts, chord, group),
      ),
    ),
};

function found({ keymap }: Facts, chord: ResolvedChord, group: readonly string[]): Finding {
  const keys = chord.boardKeys.filter((key) => group.includes(key.id));
  const gapMm = widestGapMm(keys);
  const onEdge = keys.length === 2 && gapMm <= EDGE_GAP_MM;
  const [first] = keys;
  const finger = `${first?.hand ?? ''} ${first?.finger ?? ''}${first?.finger === 'thumb' ? '' : ' finger'}`;
  const names = keysInWords(keymap, group);
  return finding({
    rule: id,
    messageId: onEdge ? 'on-the-edge' : 'too-far-apart',
    severity: onEdge ? 'note' : 'risky',
    message: onEdge
      ? `“${chord.name}” has the ${finger} press ${names} together, on the edge between them.`
      : `“${chord.name}” asks the ${finger} to press ${names} together, which are ${gapMm} mm apart.`,
    chords: [chord.chord.id],
    keys: group,
    data: { chord: chord.name, finger, gapMm },
  });
}

/** The largest gap between two caps of a group, mm, to a tenth; 0 where they touch. */
function widestGapMm(keys: readonly BoardKey[]): number {
  let widest = 0;
  for (const one of keys) {
    for (const other of keys) if (one !== other) widest = Math.max(widest, -overlapMm(one, other));
  }
  return Math.round(widest * 10) / 10;
}
