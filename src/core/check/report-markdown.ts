import { markdownTable, markdownText } from '../drawing/markdown-text.ts';
import type { CheckReport } from './report.ts';

/** The report as Markdown: what is likely wrong and what to do first, then what went wrong, then what to look at by eye. */
export function reportMarkdown(report: CheckReport): string {
  const { counts } = report;
  const wrong = report.steps.filter(({ verdict }) => verdict === 'wrong' || verdict === 'silent');
  return [
    `# Check of ${markdownText(report.design)}`,
    `${report.at}: ${counts.right} right, ${counts.wrong} wrong, ${counts.silent} silent, ${counts.notPressed} not pressed, ${counts.byEye} to check by eye.`,
    ...section(
      'What is likely wrong',
      report.faults.map(({ what, todo }) => `- ${markdownText(what)} ${markdownText(todo)}`),
      'Nothing that was pressed.',
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
    ...section(
      'To check by eye',
      report.byEye.map(
        ({ what, expected, why }) =>
          `- ${markdownText(what)}: ${markdownText(expected)}. ${markdownText(why)}`,
      ),
      null,
    ),
    ...section(
      'No way to it in the design',
      report.unreached.map((id) => `- ${markdownText(id)}`),
      null,
    ),
    report.caution,
    '',
  ].join('\n\n');
}

function section(title: string, lines: readonly string[], without: string | null): readonly string[] {
  if (lines.length > 0) return [`## ${title}`, lines.join('\n')];
  return without === null ? [] : [`## ${title}`, without];
}
