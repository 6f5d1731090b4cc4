import type { Finding, Severity } from './find.ts';
import { SEVERITIES } from './find-all.ts';
import { findingId } from './finding-id.ts';
import { RULES } from './registry.ts';
import { counted } from './wording.ts';

/** One line of the list: a finding under a key that stays the same while its numbers change. */
export interface FindingRow {
  readonly id: string;
  readonly finding: Finding;
}

/** The findings of one rule at one harm. */
export interface FindingGroup {
  readonly rule: string;
  readonly title: string;
  readonly why: string;
  readonly rows: readonly FindingRow[];
  /** What stands for the group while it is folded; empty where the group is short enough to stand open. */
  readonly folded: string;
}

/** All findings of one harm. */
export interface FindingSection {
  readonly severity: Severity;
  readonly heading: string;
  readonly count: number;
  readonly groups: readonly FindingGroup[];
}

/** More findings of one rule than this are folded into a line. Our choice. */
const MOST_OPEN = 3;

const HEADINGS: Readonly<Record<Severity, string>> = {
  broken: 'Broken',
  risky: 'Risky',
  note: 'Worth knowing',
};

/** The list as it is read: by harm, then by rule in the order of the registry, long groups folded; empty harms are left out. */
export function findingRows(findings: readonly Finding[]): readonly FindingSection[] {
  return SEVERITIES.flatMap((severity) => {
    const here = findings.filter((finding) => finding.severity === severity);
    if (here.length === 0) return [];
    return [{ severity, heading: HEADINGS[severity], count: here.length, groups: groupsOf(here) }];
  });
}

function groupsOf(findings: readonly Finding[]): readonly FindingGroup[] {
  return RULES.flatMap(({ id, title, why }) => {
    const rows = findings
      .filter(({ rule }) => rule === id)
      .map((finding) => ({ id: findingId(finding), finding }));
    if (rows.length === 0) return [];
    return [{ rule: id, title, why, rows, folded: rows.length > MOST_OPEN ? foldedWords(title, rows) : '' }];
  });
}

function foldedWords(title: string, rows: readonly FindingRow[]): string {
  const mendable = rows.filter(({ finding }) => finding.mends.length > 0).length;
  const mends = mendable === 0 ? '' : `, ${mendable === rows.length ? 'each' : mendable} with a mend`;
  return `${title}: ${counted(rows.length, 'finding')}${mends}`;
}

/** The list in a line, for a badge or the end of a report: "2 broken, 1 risky, 3 worth knowing". */
export function findingsInShort(findings: readonly Finding[]): string {
  const parts = findingRows(findings).map(({ heading, count }) => `${count} ${heading.toLowerCase()}`);
  return parts.length === 0 ? 'Nothing stands against this design' : parts.join(', ');
}
