import { AT_WORK } from '../../../core/practice/drill.ts';
import type { NeedGroup } from '../../../core/practice/groups.ts';
import type { RankedNeed } from '../../../core/practice/ranked-needs.ts';
import { STANDINGS } from '../../../core/practice/standing.ts';
import { STANDING_TITLES } from './practise-words.ts';

/** Needs under a heading. */
export interface NeedSection {
  readonly title: string;
  readonly needs: readonly RankedNeed[];
}

/** The needs in the order in which they are taken up: the ten in work, the rest by how they stand, other groups than the wished one last. */
export function needSections(ranked: readonly RankedNeed[], group: NeedGroup | null): readonly NeedSection[] {
  const wished = ranked.filter((need) => group === null || need.group === group);
  const work = wished.filter(({ standing }) => standing !== 'known').slice(0, AT_WORK);
  const rest = wished.filter((need) => !work.includes(need));
  const sections = [
    { title: 'In work', needs: work },
    ...STANDINGS.map((standing) => ({
      title: STANDING_TITLES[standing],
      needs: rest.filter((need) => need.standing === standing),
    })),
    { title: 'Not asked for now', needs: ranked.filter((need) => !wished.includes(need)) },
  ];
  return sections.filter(({ needs }) => needs.length > 0);
}
