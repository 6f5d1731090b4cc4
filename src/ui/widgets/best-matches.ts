/**
 * The things whose name has the query in it, best first: the name itself, then names that begin with it, then
 * those with a word that does, then the rest, then those of which only the other words (`also`) have it; within each
 * in the order given. Capitals do not matter, but a name that is the very query comes first of all. An empty query
 * leaves everything as it is.
 */
export function bestMatches<Thing extends { readonly label: string; readonly also?: string }>(
  things: readonly Thing[],
  query: string,
  most: number,
): readonly Thing[] {
  const wanted = query.trim().toLowerCase();
  if (wanted === '') return things.slice(0, most);
  const ranked = things.map((thing) => ({ thing, rank: rankOf(thing, query.trim(), wanted) }));
  return ranked
    .filter(({ rank }) => rank < NOT_FOUND)
    .toSorted((one, other) => one.rank - other.rank)
    .slice(0, most)
    .map(({ thing }) => thing);
}

const NOT_FOUND = 6;

function rankOf(
  { label, also = '' }: { readonly label: string; readonly also?: string },
  query: string,
  wanted: string,
): number {
  const name = label.toLowerCase();
  if (label === query) return 0;
  if (name === wanted) return 1;
  if (name.startsWith(wanted)) return 2;
  if (name.includes(` ${wanted}`)) return 3;
  if (name.includes(wanted)) return 4;
  return also.toLowerCase().includes(wanted) ? 5 : NOT_FOUND;
}
