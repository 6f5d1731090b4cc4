import { isCode } from '../keymap/codes.ts';
import { type Need, needText, parseNeed } from '../keymap/need.ts';

/** Needs under a name: what somebody who does this must be able to type. */
export interface NeedList {
  /** As it stands in a keymap's `needs.lists`. */
  readonly name: string;
  readonly title: string;
  /** What is in it and where that comes from, in a sentence or two. */
  readonly description: string;
  /** In the list's own order, none twice. */
  readonly needs: readonly Need[];
}

/** A need for each character of a text, none twice. */
export function charNeeds(characters: string): readonly Need[] {
  return [...new Set(characters)].map((char) => ({ kind: 'char', char }));
}

/** Needs from texts as a keymap writes them; meant for texts of this project: throws where one is no need. */
export function writtenNeeds(texts: readonly string[]): readonly Need[] {
  return texts.map((text) => {
    const read = parseNeed(isCode(text) ? `key:${text}` : text);
    if (!read.ok) throw new Error(read.problem);
    return read.value;
  });
}

/** The same needs without doubles: the first of each stays. */
export function distinctNeeds(needs: readonly Need[]): readonly Need[] {
  const seen = new Set<string>();
  return needs.filter((need) => {
    const text = needText(need);
    const isNew = !seen.has(text);
    seen.add(text);
    return isNew;
  });
}
