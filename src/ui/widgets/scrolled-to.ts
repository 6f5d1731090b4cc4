/**
 * How far a list is to be scrolled, px, so that a row of it is seen whole: no further than it must. `at` is how far the
 * row is from the beginning of what the list holds. A row higher than the list is seen from its top.
 */
export function scrolledTo(
  { scrollTop, clientHeight }: { readonly scrollTop: number; readonly clientHeight: number },
  { at, height }: { readonly at: number; readonly height: number },
): number {
  if (at < scrollTop || height > clientHeight) return at;
  return Math.max(scrollTop, at + height - clientHeight);
}
