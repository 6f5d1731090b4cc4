import { strokeSight } from '../host/stroke-sight.ts';
import type { Modifier } from '../keymap/codes.ts';
import { type ModifierName, type Need, needText } from '../keymap/need.ts';
import { characterOfNeed } from '../needs/text-needs.ts';
import type { NeedRoute, Route } from '../routes/types.ts';
import { type Company, countOf } from './company.ts';
import { groupOf, type NeedGroup } from './groups.ts';
import type { NeedProgress } from './progress.ts';
import { STANDINGS, type Standing, standingOf, usualMsOf } from './standing.ts';

/** A need that can be practised, and how it stands. */
export interface RankedNeed {
  readonly need: Need;
  readonly text: string;
  readonly group: NeedGroup;
  readonly route: Route;
  readonly standing: Standing;
  readonly progress: NeedProgress | undefined;
}

/**
 * The needs that the design can type, in the order in which they are taken up: by how they stand (see `STANDINGS`), then
 * the more frequent in the text first, then in the order of the needs.
 */
export function rankNeeds(
  needs: readonly NeedRoute[],
  progress: ReadonlyMap<string, NeedProgress>,
  company: Company | null,
  now: number,
): readonly RankedNeed[] {
  const usualMs = usualMsOf(progress.values());
  const ranked = needs.flatMap(({ need, route }, at) => {
    if (route === null) return [];
    const text = needText(need);
    const own = progress.get(text);
    const standing = standingOf(own, usualMs, now);
    const char = characterOfNeed(need);
    const count = company === null || char === null ? 0 : countOf(company, char);
    return [{ need, text, group: groupOf(need), route, standing, progress: own, count, at }];
  });
  ranked.sort(
    (one, other) =>
      STANDINGS.indexOf(one.standing) - STANDINGS.indexOf(other.standing) ||
      other.count - one.count ||
      one.at - other.at,
  );
  return ranked.map(({ count: _, at: __, ...need }) => need);
}

const HELD: Readonly<Record<ModifierName, Modifier>> = {
  Control: 'ControlLeft',
  Shift: 'ShiftLeft',
  Alt: 'AltLeft',
  Meta: 'MetaLeft',
};

/** Whether a page hears of a need that a real board sends; shortcuts and keys that the system or the browser keeps do not arrive. */
export function arrives(need: Need): boolean {
  if (need.kind === 'char') return true;
  const held = need.kind === 'shortcut' ? need.modifiers.map((name) => HELD[name]) : [];
  return strokeSight({ code: need.code, with: held }).kind === 'seen';
}
