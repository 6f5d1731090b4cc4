import { LOAD_CAUTION } from '../base/care.ts';
import { COST_CLASSES } from './cost-class.ts';
import type { ListCoverage } from './coverage.ts';
import type { TextLoad } from './text-load.ts';

const percent = (share: number) => `${(share * 100).toFixed(1)} %`;
const quoted = (text: string) =>
  `\`${text.replaceAll('`', '\u02cb').replaceAll('\n', '\u21b5').replaceAll('|', '\\|')}\``;
const row = (cells: readonly (string | number)[]) => `| ${cells.join(' | ')} |`;

/** The coverage of a design as Markdown, for a note or a forum: lists first, then the load of a text if there is one. */
export function coverageMarkdown(
  name: string,
  lists: readonly ListCoverage[],
  load: TextLoad | null,
): string {
  const lines = [
    `# What ${name.replaceAll('\n', ' ')} reaches`,
    '',
    row(['need list', 'needs', 'reached', 'clumsy', 'missing', ...COST_CLASSES]),
    row(Array.from({ length: 5 + COST_CLASSES.length }, (_, at) => (at === 0 ? '---' : '---:'))),
    ...lists.map((list) =>
      row([
        list.title,
        list.total,
        list.reached,
        list.clumsy,
        list.missing,
        ...COST_CLASSES.map((one) => list.classes[one]),
      ]),
    ),
    ...lists
      .filter((list) => list.missing > 0)
      .flatMap((list) => ['', `Missing from ${list.title}: ${list.missingNeeds.map(quoted).join(' ')}`]),
    ...(load === null ? [] : loadLines(load)),
    '',
    LOAD_CAUTION,
  ];
  return `${lines.join('\n')}\n`;
}

function loadLines(load: TextLoad): string[] {
  return [
    '',
    '## What the own text costs',
    '',
    `- ${load.pressesPerChar.toFixed(2)} presses per character, ${load.holdsPerChar.toFixed(2)} of them held`,
    `- ${percent(load.total === 0 ? 0 : load.typed / load.total)} of its ${load.total} characters can be typed`,
    `- ${percent(load.sameFingerPairs)} of the neighbouring characters fall to two keys of one finger`,
    '',
    row(['finger', 'share of presses']),
    row(['---', '---:']),
    ...[...load.fingers].sort((a, b) => b[1] - a[1]).map(([finger, share]) => row([finger, percent(share)])),
  ];
}
