import { keyName } from '../../board/key-name.ts';
import { type FarKey, FINGER_REACH_MM, keysOutOfReach } from '../../board/reach.ts';
import type { Facts } from '../facts.ts';
import type { Finding } from '../find.ts';
import { finding, type Rule } from '../rule.ts';
import { sentence } from '../wording.ts';

const id = 'key-out-of-reach';

/** Measures every key from the home key of its finger. */
export const keyOutOfReach: Rule = {
  id,
  title: 'Key out of reach',
  why: 'For a key that a finger does not reach, the whole hand leaves its home keys.',
  judgesHands: true,
  check: (facts) => keysOutOfReach(facts.keymap.board).map((far) => found(facts, far)),
};

function found({ keymap: { board } }: Facts, far: FarKey): Finding {
  const [key, home] = [keyName(board, far.key), keyName(board, far.home)];
  const mm = Math.round(far.mm);
  return finding({
    rule: id,
    messageId: 'out-of-reach',
    severity: 'note',
    message: sentence(
      `${key} lies ${mm} mm from ${home}; beyond ${FINGER_REACH_MM} mm most hands leave their home keys (common practice, no source).`,
    ),
    keys: [far.key, far.home],
    data: { key, home, mm, limitMm: FINGER_REACH_MM },
  });
}
