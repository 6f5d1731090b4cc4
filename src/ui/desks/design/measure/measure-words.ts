import type { Estimate } from '../../../../core/typist/fit-estimate.ts';
import { speedOf } from '../../../../core/typist/fit-intervals.ts';
import { type Fit, LEAST_LETTER_PAIRS } from '../../../../core/typist/fit-person.ts';
import type { FitPlot } from '../../../../core/typist/fit-plots.ts';
import { FROM_THUMB_GROUP, type Measured, TO_THUMB_GROUP } from '../../../../core/typist/measured.ts';
import { PAIR_CLASSES } from '../../../../core/typist/parameters.ts';

/** Keystrokes that are enough to begin with, as the model's page has it. */
export const ENOUGH_KEYSTROKES = 300;
/** The clock's steps from which on times are too coarse for chords, ms: judgement. */
const COARSE_CLOCK_MS = 5;

/** A figure with how far it can be trusted: what it is of, what it comes to, and between what it lies. */
export interface FigureRow {
  readonly what: string;
  readonly figure: string;
  readonly range: string;
}

const whole = (value: number) => Math.round(value).toString();
const tenth = (value: number) => value.toFixed(1);

function row(what: string, { value, low, high }: Estimate, unit: string, text = whole): FigureRow {
  const tail = unit === '' ? '' : ` ${unit}`;
  return { what, figure: `${text(value)}${tail}`, range: `between ${text(low)} and ${text(high)}${tail}` };
}

/** The person in a few figures. */
export function figureRows({ intervals, dwells, spread }: Fit): readonly FigureRow[] {
  return [
    ...(intervals === null
      ? []
      : [
          row('Speed of your letters', speedEstimate(intervals.alphaMs), 'words a minute'),
          row('From letter to letter, in the middle', intervals.alphaMs, 'ms'),
        ]),
    ...(dwells === null
      ? []
      : [
          row('A key is down, on average', dwells.meanMs, 'ms'),
          row('and varies within a finger by', dwells.withinMs, 'ms'),
        ]),
    ...(spread === null ? [] : [row('Chords, against skilled hands', spread, 'times as wide', tenth)]),
  ];
}

/** Words per minute of the sample's typists with this scale; the slow end of the scale is the low end of speed. */
function speedEstimate({ value, low, high, count }: Estimate): Estimate {
  return { value: speedOf(value), low: speedOf(high), high: speedOf(low), count };
}

/** What is still missing, in sentences; empty where there is enough for estimates. */
export function missingSentences({ intervals, dwells, spread }: Fit): readonly string[] {
  const pairs = intervals?.alphaMs.count ?? 0;
  return [
    ...(pairs < LEAST_LETTER_PAIRS || dwells === null
      ? [
          `That is too little for estimates: ${pairs} intervals between letters, and it takes ${LEAST_LETTER_PAIRS}.`,
        ]
      : []),
    ...(spread === null ? ['No chords were made, so the spread is taken to be that of skilled hands.'] : []),
  ];
}

/** How little it is, said beside the figures. */
export function howLittle(letterPairs: number): string {
  return `${letterPairs.toLocaleString('en')} pairs of letters fix a speed; a single pair stands among them once or twice. The figures of a class lean towards the sample’s, the more so the fewer its pairs. Measuring again on another day adds to it.`;
}

/** What came close together, beside what the fitted model expects: that is where chords are set off. */
export function closeSentence({ counts, expected, stepMs }: FitPlot): string {
  const steps = Math.round(60 / stepMs);
  const seen = counts.slice(0, steps).reduce((sum, each) => sum + each, 0);
  const wanted = expected.slice(0, steps).reduce((sum, each) => sum + each, 0);
  return `Within 60 ms, where chords go off, came ${seen} of them; the model expects about ${wanted < 10 ? tenth(wanted) : whole(wanted)}. What happens there is still mostly the sample's.`;
}

/** A warning where the browser rounds its clock; null where it is fine. */
export function clockSentence(clockStepMs: number): string | null {
  return clockStepMs < COARSE_CLOCK_MS
    ? null
    : `This browser rounds times to ${whole(clockStepMs)} ms, perhaps to protect you from being told apart. Figures for chords are no better than that.`;
}

/** Names of the groups of intervals, as the sample's table has them. */
export function groupName(group: number): string {
  if (group === TO_THUMB_GROUP) return 'letter, then Space';
  if (group === FROM_THUMB_GROUP) return 'Space, then letter';
  return PAIR_CLASSES[group] ?? '';
}

const FINGERS = ['index', 'middle', 'ring', 'little'];

/** The name of a finger by its number. */
export function fingerName(finger: number): string {
  if (finger === 0) return 'thumb';
  return `${finger <= 4 ? 'left' : 'right'} ${FINGERS[(finger - 1) % 4] ?? ''}`;
}

/** What a file of figures holds. */
export function fileWords({ intervals, dwells, chords }: Measured): string {
  const counts = [
    `${intervals.length.toLocaleString('en')} intervals`,
    `${dwells.length.toLocaleString('en')} presses`,
    `${chords.length.toLocaleString('en')} ${chords.length === 1 ? 'chord' : 'chords'}`,
  ];
  return `The file holds ${counts[0]}, ${counts[1]} and ${counts[2]}.`;
}
