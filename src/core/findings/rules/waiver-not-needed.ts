import { needText, parseNeed } from '../../keymap/need.ts';
import type { Facts } from '../facts.ts';
import type { Finding, Mend } from '../find.ts';
import { finding, type Rule } from '../rule.ts';
import type { WaivedNeed } from '../waived-needs.ts';
import { needInWords, sentence } from '../wording.ts';

const id = 'waiver-not-needed';

/** Looks at every need that was let off: whether something asks for it, and whether it can be typed all the same. */
export const waiverNotNeeded: Rule = {
  id,
  title: 'Waiver that is not needed',
  why: 'A need that is let off is not checked any more; the list of them should stay short and true.',
  check: (facts) =>
    facts.waived.flatMap((waived) => {
      if (!waived.askedFor)
        return facts.unknownLists.length > 0 ? [] : [found(facts, waived, 'not-asked-for')];
      return waived.route === null ? [] : [found(facts, waived, 'reached')];
    }),
};

function found(facts: Facts, waived: WaivedNeed, messageId: 'not-asked-for' | 'reached'): Finding {
  const words = needInWords(facts.host, waived.need);
  return finding({
    rule: id,
    messageId,
    severity: 'note',
    message: sentence(
      messageId === 'reached'
        ? `${words} is let off (“${waived.why}”), but it can be typed.`
        : `${words} is let off (“${waived.why}”), but nothing asks for it.`,
    ),
    data: { need: waived.text, name: words, why: waived.why },
    mends: waived.route?.clumsy === true && messageId === 'reached' ? [] : [mendOf(facts, waived, words)],
  });
}

function mendOf({ keymap }: Facts, waived: WaivedNeed, words: string): Mend {
  const { lists = [], own = [], waived: all = [] } = keymap.needs ?? {};
  const left = all.filter(({ need }) => {
    const read = parseNeed(need);
    return !read.ok || needText(read.value) !== waived.text;
  });
  return {
    title: waived.askedFor ? `Ask for ${words} again` : `Take ${words} off the needs let off`,
    edits: [{ edit: 'set-needs', needs: { lists, own, waived: left } }],
  };
}
