import { overlapMm, overlappingCaps } from '../../board/caps.ts';
import { keyName } from '../../board/key-name.ts';
import type { KeyId } from '../../keymap/types.ts';
import type { Facts } from '../facts.ts';
import type { Finding } from '../find.ts';
import { finding, type Rule } from '../rule.ts';
import { sentence } from '../wording.ts';

const id = 'caps-overlap';

/** Looks at every pair of caps as they lie on the board. */
export const capsOverlap: Rule = {
  id,
  title: 'Caps that overlap',
  why: 'Two caps in one place cannot be built.',
  check: (facts) => overlappingCaps(facts.keymap.board).map((pair) => found(facts, pair)),
};

function found({ keymap }: Facts, [one, other]: readonly [KeyId, KeyId]): Finding {
  const [first, second] = [one, other].map((id) => keymap.board.keys.find((key) => key.id === id));
  const depth = first === undefined || second === undefined ? 0 : overlapMm(first, second);
  const depthMm = Math.max(0.1, Math.round(depth * 10) / 10);
  const names = [keyName(keymap.board, one), keyName(keymap.board, other)];
  return finding({
    rule: id,
    messageId: 'overlap',
    severity: 'broken',
    message: sentence(`the caps of ${names.join(' and ')} overlap by ${depthMm} mm.`),
    keys: [one, other],
    data: { key: names[0] ?? '', other: names[1] ?? '', depthMm, pair: `${one} ${other}` },
  });
}
