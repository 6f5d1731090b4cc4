import { codeLabel, codeName } from '../../../../core/host/code-names.ts';
import { type Need, needText } from '../../../../core/keymap/need.ts';
import type { NeedRoute, Route } from '../../../../core/routes/types.ts';
import { costWords } from './cost-words.ts';

/** How a need stands on the design. */
export type NeedStatus = 'missing' | 'clumsy' | 'reached';

/** One need as the list shows it. */
export interface NeedRow {
  readonly need: Need;
  /** As it stands in the document; unique in the list. */
  readonly text: string;
  /** The legend in large: the character, or a short name. */
  readonly glyph: string;
  /** The same in full words, for the tooltip and for reading out. */
  readonly name: string;
  readonly status: NeedStatus;
  /** What it costs, or that there is no way. */
  readonly cost: string;
  readonly route: Route | null;
}

const CHARACTER_NAMES: Readonly<Record<string, string>> = { ' ': 'space', '\u00a0': 'no-break space' };

/** The legend and the words for a need. */
export function needLegend(need: Need): { readonly glyph: string; readonly name: string } {
  if (need.kind === 'char') {
    const name = CHARACTER_NAMES[need.char];
    return name === undefined ? { glyph: need.char, name: need.char } : { glyph: '␣', name };
  }
  if (need.kind === 'key') return { glyph: codeLabel(need.code), name: codeName(need.code) };
  const keys = [...need.modifiers, codeName(need.code)].join(' + ');
  return { glyph: keys, name: keys };
}

/** The rows of a need list, in the list's order. */
export function needRows(needs: readonly NeedRoute[]): readonly NeedRow[] {
  return needs.map(({ need, route }) => ({
    need,
    text: needText(need),
    ...needLegend(need),
    status: statusOf(route),
    cost: route === null ? 'no way to type it' : costWords(route),
    route,
  }));
}

/** The new rows, but where nothing has come of an edit the very same as before, so that their chips need no drawing. */
export function keptRows(before: readonly NeedRow[], rows: readonly NeedRow[]): readonly NeedRow[] {
  const known = new Map(before.map((row) => [row.text, row]));
  return rows.map((row) => {
    const old = known.get(row.text);
    return old !== undefined && isAlike(old, row) ? old : row;
  });
}

function isAlike(one: NeedRow, other: NeedRow): boolean {
  return (
    one.status === other.status && one.cost === other.cost && movesOf(one.route) === movesOf(other.route)
  );
}

function movesOf(route: Route | null): string {
  return route?.steps.map(({ move, keys, chord }) => `${move} ${keys.join('+')} ${chord ?? ''}`).join() ?? '';
}

function statusOf(route: Route | null): NeedStatus {
  if (route === null) return 'missing';
  return route.clumsy ? 'clumsy' : 'reached';
}

/** The rows that a search leaves: by the character itself, by name, by code, or by standing ("missing"). */
export function searchNeeds(rows: readonly NeedRow[], query: string): readonly NeedRow[] {
  if (query === '') return rows;
  const wanted = query.trim().toLowerCase();
  if (wanted === '') return rows.filter((row) => row.glyph === '␣');
  return rows.filter(
    (row) =>
      row.text.toLowerCase().includes(wanted) ||
      row.name.toLowerCase().includes(wanted) ||
      row.status.startsWith(wanted),
  );
}

/** How many needs stand how. */
export function countByStatus(rows: readonly NeedRow[]): Readonly<Record<NeedStatus, number>> {
  const counts = { missing: 0, clumsy: 0, reached: 0 };
  for (const row of rows) counts[row.status] += 1;
  return counts;
}
