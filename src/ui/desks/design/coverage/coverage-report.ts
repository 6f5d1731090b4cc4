import { type CostlyNeed, costliest } from '../../../../core/coverage/costliest.ts';
import { type CoveredList, type ListCoverage, listCoverage } from '../../../../core/coverage/coverage.ts';
import { type TextLoad, textLoad } from '../../../../core/coverage/text-load.ts';
import { needText } from '../../../../core/keymap/need.ts';
import type { Keymap } from '../../../../core/keymap/types.ts';
import type { TextCounts } from '../../../../core/needs/text-counts.ts';
import { countOfNeed, needOfCharacter } from '../../../../core/needs/text-needs.ts';
import type { NeedRoute } from '../../../../core/routes/types.ts';
import type { NeedSource } from '../needs/need-groups.ts';

/** The typist's own text and the ways to its characters on the design. */
export interface RoutedText {
  readonly counts: TextCounts;
  readonly needs: readonly NeedRoute[];
}

/** All that the coverage view shows. */
export interface CoverageReport {
  /** The design's lists and, last, the own text; numbers of needs. */
  readonly lists: readonly ListCoverage[];
  /** The same lists in characters of the own text; none without one. */
  readonly weighted: readonly ListCoverage[] | null;
  readonly load: TextLoad | null;
  /** The needs that cost most: in the own text where there is one. */
  readonly costliest: readonly CostlyNeed[];
  readonly shortcuts: readonly NeedRoute[];
}

const MOST = 12;

/** The name of the list that the own text makes, beside those of the design. */
export const TEXT_LIST = 'own text';

/** Works out what a design's lists and the typist's own text ask of the hands. */
export function coverageReport(
  keymap: Keymap,
  needs: readonly NeedRoute[],
  sources: readonly NeedSource[],
  text: RoutedText | null,
): CoverageReport {
  const designLists = coveredLists(needs, sources);
  const shortcuts = needs.filter(({ need }) => need.kind === 'shortcut');
  if (text === null) {
    const lists = designLists.map((list) => listCoverage(list));
    return { lists, weighted: null, load: null, costliest: costliest(needs, MOST), shortcuts };
  }
  const { counts } = text;
  const countOf = (need: NeedRoute['need']) => countOfNeed(counts, need);
  const all = [...designLists, { name: TEXT_LIST, title: 'Your text', needs: text.needs }];
  const routes = new Map(text.needs.map(({ need, route }) => [needText(need), route]));
  return {
    lists: all.map((list) => listCoverage(list)),
    weighted: all.map((list) => listCoverage(list, countOf)),
    load: textLoad(keymap, counts, (char) => routes.get(needText(needOfCharacter(char))) ?? null),
    costliest: costliest(text.needs, MOST, countOf),
    shortcuts,
  };
}

function coveredLists(needs: readonly NeedRoute[], sources: readonly NeedSource[]): readonly CoveredList[] {
  return sources
    .map(({ name, title, needs: asked }) => ({
      name,
      title,
      needs: needs.filter(({ need }) => asked.has(needText(need))),
    }))
    .filter((list) => list.needs.length > 0);
}
