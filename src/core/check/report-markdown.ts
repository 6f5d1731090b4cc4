import { markdownTable, markdownText } from '../drawing/markdown-text.ts';
import type { CheckReport } from './report.ts';

/** The report as Markdown: what is likely wrong and what to do first, then what went wrong, then what was or is to be looked at by eye. */
export function reportMarkdown(report: CheckReport): string {
  const { counts } = report;
  const wrong = report.steps.filter(({ verdict }) => verdict === 'wrong' || verdict === 'silent');
  return [
    `# Check of ${markdownText(report.design)}`,
    `Begun ${timeWords(report.begunAt)}, last result ${timeWords(report.lastAt)}.`,
    `Pressed: ${counts.right} right, ${counts.wrong} wrong, ${counts.silent} silent, ${counts.notPressed} not pressed. By eye: ${counts.byEye.right} right, ${counts.byEye.wrong} wrong, ${counts.byEye.notLookedAt} not looked at.`,
    ...section(
      'What is likely wrong',
      report.faults.map(({ what, todo }) => `- ${markdownText(what)} ${markdownText(todo)}`),
      'Nothing of what was checked.',
    ),
    ...(wrong.length > 0
      ? [
          '## What went wrong',
          markdownTable(
            ['Pressed', 'Expected', 'Came'],
            wrong.map(({ what, expected, came }) => [what, expected, came]),
          ),
        ]
      : []),
    ...(report.byEye.length > 0
      ? [
          '## Checked by eye',
          markdownTable(
            ['What', 'Expected', 'Found', 'Why by eye'],
            report.byEye.map(({ what, expected, verdict, why }) => [what, expected, verdict, why]),
          ),
        ]
      : []),
    ...section(
      'No way to it in the design',
      report.unreached.map(({ what, expected }) => `- ${markdownText(what)}: ${markdownText(expected)}`),
      null,
    ),
    report.caution,
    '',
  ].join('\n\n');
}

/** "2031-04-05 06:07 UTC" of an ISO 8601 time. */
function timeWords(at: string): string {
  return `${at.slice(0, 10)} ${at.slice(11, 16)} UTC`;
}

function section(title: string, lines: readonly string[], without: string | null): readonly string[] {
  if (lines.length > 0) return [`## ${title}`, lines.join('\n')];
  return without === null ? [] : [`## ${title}`, without];
}
