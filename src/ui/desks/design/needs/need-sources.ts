import { needText } from '../../../../core/keymap/need.ts';
import type { Keymap } from '../../../../core/keymap/types.ts';
import { needListNamed } from '../../../../core/needs/need-lists.ts';
import { type FindList, sourcedNeedsOf } from '../../../../core/needs/needs-of.ts';
import type { NeedSource } from './need-groups.ts';

/** The lists of a design and its own needs, each with what it asks for, in the order in which the panel shows them. */
export function needSources(keymap: Keymap, findList: FindList = needListNamed): readonly NeedSource[] {
  const { needs } = sourcedNeedsOf(keymap, findList);
  const names = [...new Set(keymap.needs?.lists)];
  const lists = names.map((name) => ({
    name,
    title: findList(name)?.title ?? name,
    needs: new Set(needs.filter(({ from }) => from.includes(name)).map(({ need }) => needText(need))),
  }));
  const own = new Set(needs.filter(({ from }) => from.length === 0).map(({ need }) => needText(need)));
  return [{ name: 'own', title: 'Your own', needs: own }, ...lists];
}
