import { type Need, needText } from '../keymap/need.ts';
import type { NeedRoute } from '../routes/types.ts';

/** Where the needs of a design hold, of two hosts. Each need stands in one of the four lists, in the order of the first. */
export interface OnBothHosts {
  readonly both: readonly Need[];
  readonly firstOnly: readonly Need[];
  readonly secondOnly: readonly Need[];
  readonly neither: readonly Need[];
}

/** Compares the routes that a design has for its needs on two hosts; a need that one of them was not asked for is missing there. */
export function onBothHosts(first: readonly NeedRoute[], second: readonly NeedRoute[]): OnBothHosts {
  const reachedOn = (routes: readonly NeedRoute[]) =>
    new Set(routes.flatMap(({ need, route }) => (route === null ? [] : [needText(need)])));
  const onFirst = reachedOn(first);
  const onSecond = reachedOn(second);
  const needs = [...new Map([...first, ...second].map(({ need }) => [needText(need), need]))];
  const where = (one: boolean, other: boolean) =>
    needs.flatMap(([text, need]) =>
      onFirst.has(text) === one && onSecond.has(text) === other ? [need] : [],
    );
  return {
    both: where(true, true),
    firstOnly: where(true, false),
    secondOnly: where(false, true),
    neither: where(false, false),
  };
}
