import { needText } from '../../keymap/need.ts';
import type { NeedRoute, Route } from '../../routes/types.ts';
import type { Facts } from '../facts.ts';
import type { Finding } from '../find.ts';
import { finding, type Rule } from '../rule.ts';
import { keysInWords, needInWords, sentence } from '../wording.ts';

const id = 'need-clumsy';

/** Looks at every need whose cheapest route has a finger hold one key and press another. */
export const needClumsy: Rule = {
  id,
  title: 'Clumsy need',
  why: 'A finger that holds one key cannot well press another at once.',
  judgesHands: true,
  check: (facts) =>
    facts.needs.flatMap(({ need, route }) => (route?.clumsy ? [found(facts, { need, route })] : [])),
};

function found(facts: Facts, { need, route }: NeedRoute & { readonly route: Route }): Finding {
  const { keymap, host } = facts;
  const keys = keysOfOneFinger(facts, route);
  const words = needInWords(host, need);
  return finding({
    rule: id,
    messageId: 'one-finger-holds-and-presses',
    severity: 'risky',
    message: sentence(
      `${words} is clumsy: one finger must hold and press ${keysInWords(keymap, keys)} at once.`,
    ),
    keys,
    data: { need: needText(need), name: words, presses: route.cost.presses, holds: route.cost.holds },
  });
}

/** The keys of the route that share a finger with another key that is down at the time, in the order of the route. */
function keysOfOneFinger({ keymap }: Facts, route: Route): readonly string[] {
  const fingers = new Map(keymap.board.keys.map((key) => [key.id, `${key.hand} ${key.finger}`]));
  const down = new Set<string>();
  const shared = new Set<string>();
  for (const { key, type } of route.events) {
    if (type === 'up') down.delete(key);
    else {
      for (const other of down) {
        if (fingers.get(other) === fingers.get(key)) shared.add(other).add(key);
      }
      down.add(key);
    }
  }
  return [...shared];
}
