import type { Need } from '../../../core/keymap/need.ts';
import { type AccidentChange, isWorse } from '../../../core/versions/accident-changes.ts';
import type { ChangeRow } from '../../../core/versions/change-rows.ts';
import type { TypingComparison } from '../../../core/versions/compare-typing.ts';
import type { Relearning } from '../../../core/versions/relearning.ts';
import type { Version } from '../../../store/versions/version.ts';
import { needLegend } from '../../desks/design/needs/need-rows.ts';
import { timeText } from '../designs/time-text.ts';

/** What a version is called: its name, or when it was kept by itself. Both times in ms since 1970. */
export function versionTitle({ name, keptAt }: Version, now: number): string {
  return name ?? `By itself, ${timeText(keptAt, now)}`;
}

/** What stands where there is nothing to compare. */
export function noneWords(isLoaded: boolean, problem: string | null): string {
  if (!isLoaded) return 'Looking for versions…';
  if (problem !== null) return `The versions of this design could not be read: ${problem}`;
  return (
    'There is no version of this design yet. One is kept by itself when you begin to change it, at most every ten ' +
    'minutes of work; keep one by name before you try something out.'
  );
}

/** A figure on both sides, and whether the later one is better, worse or neither. */
export interface FigureRow {
  readonly name: string;
  readonly before: string;
  readonly after: string;
  readonly change: 'better' | 'worse' | 'same';
}

/** What a change does to needs and accidents, as rows of figures. */
export function figureRows({ needs, accidents }: TypingComparison): readonly FigureRow[] {
  const { before, after } = accidents;
  return [
    figure(
      'needs reached',
      needs.before.reached,
      needs.after.reached,
      'more',
      (value, isAfter) => `${value} of ${isAfter ? needs.after.asked : needs.before.asked}`,
    ),
    figure('needs that are clumsy', needs.before.clumsy, needs.after.clumsy, 'less', String),
    figure(
      'misfires in 1,000 words, about',
      before.misfiresPer1000Words,
      after.misfiresPer1000Words,
      'less',
      rough,
    ),
    figure(
      'misses in 1,000 uses, at worst about',
      before.worstMissesPer1000Uses,
      after.worstMissesPer1000Uses,
      'less',
      rough,
    ),
    figure(
      'letters that wait, on average',
      before.meanDelayMs,
      after.meanDelayMs,
      'less',
      (ms) => `${Math.round(ms)} ms`,
    ),
  ];
}

function figure(
  name: string,
  before: number,
  after: number,
  good: 'more' | 'less',
  words: (value: number, isAfter: boolean) => string,
): FigureRow {
  const texts = { before: words(before, false), after: words(after, true) };
  const isSame = before === after || texts.before === texts.after;
  const isBetter = good === 'more' ? after > before : after < before;
  return { name, ...texts, change: isSame ? 'same' : isBetter ? 'better' : 'worse' };
}

/** An estimate with no more figures than it deserves. */
function rough(rate: number): string {
  return rate >= 10 ? rate.toFixed(0) : rate >= 0.05 ? rate.toFixed(1) : '0';
}

/** Accidents of single chords and holds as a list shows them, the first few of those that became worse, or better. */
export interface AccidentLines {
  readonly title: string;
  readonly lines: readonly { readonly who: string; readonly what: string }[];
  readonly more: number;
}

const SHOWN = 5;

const RATES = { misfires: 'misfires in 1,000 words', misses: 'misses in 1,000 uses' } as const;

/** What single chords and holds do more often, and less often, than before. */
export function accidentLines(changes: readonly AccidentChange[]): readonly AccidentLines[] {
  const parts = [
    { title: 'Worse than before', part: changes.filter(isWorse) },
    { title: 'Better than before', part: changes.filter((change) => !isWorse(change)) },
  ];
  return parts
    .filter(({ part }) => part.length > 0)
    .map(({ title, part }) => ({
      title,
      lines: part.slice(0, SHOWN).map(({ who, rate, before, after }) => ({
        who,
        what: `${RATES[rate]}, about ${rough(before)} → ${rough(after)}`,
      })),
      more: Math.max(0, part.length - SHOWN),
    }));
}

/** How many characters to learn anew are named. */
const NAMED = 10;

/** How much of a text changes under the fingers, and where most of it. */
export function relearningWords({ percent, characters }: Relearning, text: string): string {
  if (characters.length === 0) return `Nothing changes under the fingers in ${text}.`;
  const share = percent < 0.1 ? 'less than 0.1 %' : `${percent.toFixed(percent < 10 ? 1 : 0)} %`;
  const named = characters.slice(0, NAMED).map(({ char }) => signOf(char));
  return `${share} of the presses of ${text} change under the fingers, most of them in ${named.join(' ')}`;
}

/** Needs by what stands on their chips, so many at most that they can be read. */
export function needsText(needs: readonly Need[]): string {
  const more = needs.length - NEEDS;
  const named = needs.slice(0, NEEDS).map((need) => needLegend(need).glyph);
  return named.join('  ') + (more > 0 ? ` and ${more} more` : '');
}

const NEEDS = 24;

function signOf(char: string): string {
  if (char === ' ') return 'space';
  return char === '\n' ? 'Enter' : char;
}

/** A heading and the rows below it. */
export interface RowGroup {
  readonly title: string;
  readonly rows: readonly ChangeRow[];
}

const TITLES: Readonly<Record<ChangeRow['part'], string>> = {
  design: 'The design',
  board: 'Keys of the board',
  layer: 'Layers',
  key: 'What keys do',
  chord: 'Chords',
};

/** The differences under headings, in the order in which they come. */
export function rowGroups(rows: readonly ChangeRow[]): readonly RowGroup[] {
  const parts = [...new Set(rows.map(({ part }) => part))];
  return parts.map((part) => ({ title: TITLES[part], rows: rows.filter((row) => row.part === part) }));
}

/** How many differences there are, in a few words. */
export function countWords(rows: readonly ChangeRow[]): string {
  if (rows.length === 0) return 'Nothing differs.';
  return rows.length === 1 ? '1 difference' : `${rows.length} differences`;
}
