import type { Estimate } from './fit-estimate.ts';
import {
  bestLocation,
  crossing,
  HALF_CHI_95,
  type Location,
  type LogTime,
  locate,
  profileOfScale,
} from './fit-logistic.ts';
import { PAUSE_MS } from './fit-observe.ts';
import { TAIL_END_MS } from './intervals.ts';
import {
  FROM_THUMB_GROUP,
  GROUP_COUNT,
  type IntervalGroup,
  type MeasuredInterval,
  TO_THUMB_GROUP,
} from './measured.ts';
import type { TypistParameters } from './parameters.ts';
import { FASTEST_WPM, personAt, SLOWEST_WPM } from './person.ts';

/** What was fitted to the intervals of a person. */
export interface FittedIntervals {
  /** Scale of the log-logistic interval from letter to letter, ms. */
  readonly alphaMs: Estimate;
  /** Its shape. */
  readonly beta: Estimate;
  /** The speed at which the sample has this scale, words per minute: which column of its tables is next of kin. */
  readonly wpm: number;
  /** Interval of each group as a ratio to the person's own, by `IntervalGroup`; null for fewer than `LEAST_IN_GROUP`. */
  readonly ratios: readonly (Estimate | null)[];
}

/** Fewer intervals of a group than this say nothing. */
export const LEAST_IN_GROUP = 3;

const SCALES = { least: 0.06, most: 0.8 };

/**
 * Fits intervals by greatest likelihood. ln interval is logistic about the location of its group, with one scale for all;
 * practice moves the location as much as in the sample. Under 120 ms the model has a measured tail of its own, so of such
 * intervals only that they were shorter counts; pauses are left out, and the likelihood knows it. Intervals are likelihood
 * ratio intervals (Wilks, "The large-sample distribution of the likelihood ratio", 1938), widened by what the scale leaves open.
 */
export function fitIntervals(intervals: readonly MeasuredInterval[]): FittedIntervals | null {
  const letters = intervals.filter(({ group }) => group < TO_THUMB_GROUP);
  if (letters.length < LEAST_IN_GROUP) return null;
  // What the sample says of classes and practice depends a little on the speed, which is only known afterwards.
  let wpm = USUAL_WPM;
  for (let round = 0; round < 2; round++) {
    const { parameters } = personAt(wpm);
    wpm = speedOf(Math.exp(bestLocation(asAnyLetters(letters, parameters), 1 / parameters.beta)));
  }
  return fitAt(intervals, letters, personAt(wpm).parameters);
}

/** Where the search for the speed begins: the mean of the sample's average typists. */
const USUAL_WPM = 48.5;

/** Times of letter pairs about one location: what class and practice do in the sample is taken off. */
function asAnyLetters(letters: readonly MeasuredInterval[], sample: TypistParameters): readonly LogTime[] {
  return letters.map((each) => logTime(each, ratioOfGroup(sample, each.group) * practiceRatio(sample, each)));
}

function fitAt(
  intervals: readonly MeasuredInterval[],
  letters: readonly MeasuredInterval[],
  sample: TypistParameters,
): FittedIntervals {
  const groups = Array.from({ length: GROUP_COUNT }, (_, group) =>
    intervals
      .filter((each) => each.group === group)
      .map((each) => logTime(each, practiceRatio(sample, each))),
  );
  const scale = fitScale(groups.filter((times) => times.length > 0));
  const all = asAnyLetters(letters, sample);
  const own = locate(all, scale.value);
  const tilt = tiltOf(all, scale);
  const alpha = Math.exp(own.at);
  return {
    alphaMs: { ...widened(own, 0, tilt), count: letters.length },
    beta: { value: 1 / scale.value, low: 1 / scale.high, high: 1 / scale.low, count: intervals.length },
    wpm: speedOf(alpha),
    ratios: groups.map((times) =>
      times.length < LEAST_IN_GROUP
        ? null
        : {
            ...widened(locate(times, scale.value), own.at, tiltOf(times, scale) - tilt),
            count: times.length,
          },
    ),
  };
}

/** How far a location moves with the scale within the scale's interval: where few times are exact, it hangs on it. */
function tiltOf(times: readonly LogTime[], { low, high }: Estimate): number {
  return (bestLocation(times, high) - bestLocation(times, low)) / 2;
}

/** A location over another one, back from its logarithm; its interval widened by what the scale leaves open. */
function widened({ at, low, high }: Location, over: number, tilt: number): Omit<Estimate, 'count'> {
  return {
    value: Math.exp(at - over),
    low: Math.exp(at - over - Math.hypot(at - low, tilt)),
    high: Math.exp(at - over + Math.hypot(high - at, tilt)),
  };
}

/** What practice does to an interval in the sample; 1 where nothing is known of the pair, and for double letters. */
function practiceRatio({ bandRatio }: TypistParameters, { group, band }: MeasuredInterval): number {
  return group === 0 || group >= TO_THUMB_GROUP || band === null ? 1 : (bandRatio[band] ?? 1);
}

/** The sample's ratio of a group of intervals to those of any letters. */
export function ratioOfGroup(sample: TypistParameters, group: IntervalGroup): number {
  if (group === TO_THUMB_GROUP) return sample.letterToSpace;
  if (group === FROM_THUMB_GROUP) return sample.spaceToLetter;
  return sample.classRatio[group] ?? 1;
}

function logTime({ ms }: MeasuredInterval, ratio: number): LogTime {
  const isBelow = ms < TAIL_END_MS;
  return {
    y: Math.log((isBelow ? TAIL_END_MS : ms) / ratio),
    isBelow,
    cut: Math.log(PAUSE_MS / ratio),
  };
}

/** The common scale with its interval; each location that is fitted besides takes a degree of freedom. */
function fitScale(groups: readonly (readonly LogTime[])[]): Estimate {
  const count = groups.reduce((sum, times) => sum + times.length, 0);
  const profile = (ln: number) => profileOfScale(groups, Math.exp(ln));
  const at = greatest(profile, Math.log(SCALES.least), Math.log(SCALES.most));
  const best = profile(at);
  const fallen = (ln: number) => best - profile(ln) - HALF_CHI_95;
  const freed = Math.log(count / Math.max(1, count - groups.length)) / 2;
  const reach = 2 / Math.sqrt(count);
  return {
    value: Math.exp(at + freed),
    low: Math.exp(crossing(fallen, at, -reach) + freed),
    high: Math.exp(crossing(fallen, at, reach) + freed),
    count,
  };
}

/** Where a function with one hill is highest, by the golden section, to 1/1,000. */
function greatest(of: (at: number) => number, from: number, to: number): number {
  const part = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  let [left, right] = [high - part * (high - low), low + part * (high - low)];
  let [atLeft, atRight] = [of(left), of(right)];
  while (high - low > 0.001) {
    if (atLeft > atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - part * (high - low);
      atLeft = of(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + part * (high - low);
      atRight = of(right);
    }
  }
  return (low + high) / 2;
}

/** The speed at which the sample's median typist has this scale, words per minute: by halving, for the scale falls as speed grows. */
export function speedOf(alphaMs: number): number {
  let [low, high] = [SLOWEST_WPM, FASTEST_WPM];
  for (let round = 0; round < 40; round++) {
    const middle = (low + high) / 2;
    if (personAt(middle).parameters.alphaMs > alphaMs) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
