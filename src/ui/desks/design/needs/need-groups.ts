import type { NeedRow } from './need-rows.ts';

/** A need list as the panel shows it: its rows, and how many of all its needs are missing. */
export interface NeedGroup {
  readonly name: string;
  readonly title: string;
  readonly rows: readonly NeedRow[];
  readonly missing: number;
}

/** Where each need comes from: list names (or `own`) by the need as it is written. */
export interface NeedSource {
  readonly name: string;
  readonly title: string;
  readonly needs: ReadonlySet<string>;
}

/**
 * The rows by the list they come from. A need that stands in several lists is shown under the first of them, so that
 * nothing stands twice. Lists without a row left are dropped.
 */
export function groupNeeds(rows: readonly NeedRow[], sources: readonly NeedSource[]): readonly NeedGroup[] {
  const taken = new Set<string>();
  return sources
    .map((source) => {
      const own = rows.filter((row) => source.needs.has(row.text) && !taken.has(row.text));
      for (const row of own) taken.add(row.text);
      return {
        name: source.name,
        title: source.title,
        rows: own,
        missing: own.filter((row) => row.status === 'missing').length,
      };
    })
    .filter((group) => group.rows.length > 0);
}
