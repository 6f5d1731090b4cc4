/**
 * An id that is not taken yet: the first free one of prefix1, prefix2 … The prefix should be short and of
 * A-Z a-z 0-9 _ -, so that the id is one a keymap may hold.
 */
export function freshId(prefix: string, taken: Iterable<string>): string {
  const known = new Set(taken);
  let number = 1;
  while (known.has(`${prefix}${number}`)) number += 1;
  return `${prefix}${number}`;
}
