/** White space in patterns (UAX 31); a no-break space is none. */
const SPACE = String.raw`\t-\r \u0085\u200e\u200f\u2028\u2029`;
/** One token: a text in braces, an escaped character by number or as it is, a range, or a character. */
const TOKEN = new RegExp(
  String.raw`\{([^}]*)\}|\\u([0-9A-Fa-f]{4})|\\(.)|([^${SPACE}])-([^${SPACE}])|([^${SPACE}])`,
  'gsu',
);

/**
 * The members of a set as CLDR writes exemplar characters (UTS 35, "UnicodeSet"): characters, {texts}, escapes and
 * ranges between brackets. White space between them means nothing, a no-break space is a member.
 */
export function unicodeSetMembers(set: string): readonly string[] {
  const inside = /^\[(.*)\]$/su.exec(set.trim())?.[1];
  if (inside === undefined) throw new Error(`${set} is no set in brackets`);
  const members: string[] = [];
  for (const [, text, hex, escaped, first, last, char] of inside.matchAll(TOKEN)) {
    if (text !== undefined) members.push(text);
    else if (hex !== undefined) members.push(String.fromCodePoint(Number.parseInt(hex, 16)));
    else if (first !== undefined && last !== undefined) members.push(...range(first, last));
    else members.push(escaped ?? char ?? '');
  }
  return members;
}

function range(first: string, last: string): readonly string[] {
  const [from = 0, to = 0] = [first.codePointAt(0), last.codePointAt(0)];
  return Array.from({ length: to - from + 1 }, (_, at) => String.fromCodePoint(from + at));
}
