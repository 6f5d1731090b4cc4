import type { Facts } from '../facts.ts';
import type { Finding, Mend } from '../find.ts';
import { finding, type Rule } from '../rule.ts';

const id = 'need-list-unknown';

/** Looks at the names of the need lists that the design asks for. */
export const needListUnknown: Rule = {
  id,
  title: 'Need list that is not known',
  why: 'What it asks for is not checked.',
  check: (facts) => facts.unknownLists.map((name) => found(facts, name)),
};

/** No mend where it would leave waivers that nothing else asks for: this list may be the one that does. */
function found({ keymap, waived: letOff }: Facts, name: string): Finding {
  const { lists = [], own = [], waived = [] } = keymap.needs ?? {};
  const needs = { lists: lists.filter((each) => each !== name), own, waived };
  const mend: Mend = { title: `Take “${name}” off the needs`, edits: [{ edit: 'set-needs', needs }] };
  return finding({
    rule: id,
    messageId: 'unknown',
    severity: 'note',
    message: `The design asks for the need list “${name}”, which is not known here: its needs are not checked.`,
    data: { list: name, need: name },
    mends: letOff.every((each) => each.askedFor) ? [mend] : [],
  });
}
