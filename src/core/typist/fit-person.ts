import { logLogisticCdf, NODES } from './distributions.ts';
import { FINGERS, fingerDwellMs } from './dwells.ts';
import { type FittedDwells, fitDwells } from './fit-dwells.ts';
import type { Estimate } from './fit-estimate.ts';
import { lnErrorOf, weighed } from './fit-estimate.ts';
import { type FittedIntervals, fitIntervals, ratioOfGroup } from './fit-intervals.ts';
import { fitSpread } from './fit-spread.ts';
import { FROM_THUMB_GROUP, type Measured, TO_THUMB_GROUP } from './measured.ts';
import type { TypistParameters } from './parameters.ts';
import { type Person, personAt } from './person.ts';

/** All that was fitted to what was measured of a person; null for what there is too little of. */
export interface Fit {
  readonly intervals: FittedIntervals | null;
  readonly dwells: FittedDwells | null;
  /** See `fitSpread`. */
  readonly spread: Estimate | null;
}

/** Fewer intervals between letters than this are no person yet. */
export const LEAST_LETTER_PAIRS = 100;
/** Fits what was measured; the same data give the same fit. */
export function fitOf(measured: Measured): Fit {
  return {
    intervals: fitIntervals(measured.intervals),
    dwells: fitDwells(measured.dwells),
    spread: fitSpread(measured.chords),
  };
}

/**
 * SD of ln ratios between people: how much a class or a finger of one's own may differ from the sample's. An assumption, no
 * published figure; it decides how far few observations move a figure away from the sample's.
 */
const LN_SPREAD = { ratio: 0.15, finger: 0.1 };

/** What is left uncertain of one's own speed and dwell from day to day, SD of ln and ms: an assumption, no source. */
const FROM_DAY_TO_DAY = { ln: 0.03, ms: 3 };

/**
 * The typist whom the estimates ask for, out of the fit: own scale, shape, dwell and spread; ratios by class and finger weighed
 * with the sample's by how sure they are; what was not measured (nesting, holds, what comes under 120 ms against the
 * log-logistic) as in the sample at this speed. Where the population differs from one to the next, the person's
 * own uncertainty stands. Null where there is too little for a person.
 */
export function personOfFit({ intervals, dwells, spread }: Fit): Person | null {
  if (intervals === null || dwells === null || intervals.alphaMs.count < LEAST_LETTER_PAIRS) return null;
  const sample = personAt(intervals.wpm).parameters;
  const ratio = (group: number) =>
    weighed(intervals.ratios[group] ?? null, ratioOfGroup(sample, group), LN_SPREAD.ratio);
  const own: TypistParameters = {
    ...sample,
    alphaMs: intervals.alphaMs.value,
    beta: intervals.beta.value,
    betweenLnIki: Math.hypot(lnErrorOf(intervals.alphaMs), FROM_DAY_TO_DAY.ln),
    classRatio: sample.classRatio.map((_, group) => ratio(group)),
    letterToSpace: ratio(TO_THUMB_GROUP),
    spaceToLetter: ratio(FROM_THUMB_GROUP),
    dwellMeanMs: dwells.meanMs.value,
    dwellWithinMs: dwells.withinMs.value,
    dwellBetweenMs: Math.hypot((dwells.meanMs.high - dwells.meanMs.low) / 4, FROM_DAY_TO_DAY.ms),
    dwellRatio: dwellRatios(dwells),
  };
  const parameters = {
    ...own,
    within40: tailLike(sample, own, sample.within40, 40),
    within60: tailLike(sample, own, sample.within60, 60),
  };
  return { parameters, spreadFactor: spread?.value ?? 1 };
}

function dwellRatios({ meanMs, fingers }: FittedDwells): readonly number[] {
  return Array.from({ length: FINGERS }, (_, finger) => {
    const own = fingers[finger] ?? null;
    const ofMean =
      own === null
        ? null
        : {
            value: own.value / meanMs.value,
            low: own.low / meanMs.value,
            high: own.high / meanMs.value,
            count: own.count,
          };
    return weighed(ofMean, fingerDwellMs(finger, 1), LN_SPREAD.finger);
  });
}

/** Shares within so many ms that are as far from the person's own log-logistic as the sample's are from theirs. */
function tailLike(
  sample: TypistParameters,
  own: TypistParameters,
  shares: readonly number[],
  ms: number,
): readonly number[] {
  return shares.map((share, group) =>
    Math.min(0.5, (share * modelled(own, group, ms)) / modelled(sample, group, ms)),
  );
}

function modelled(of: TypistParameters, group: number, ms: number): number {
  const alpha = of.alphaMs * (of.classRatio[group] ?? 1);
  return NODES.reduce(
    (sum, { z, weight }) => sum + weight * logLogisticCdf(ms, alpha * Math.exp(of.betweenLnIki * z), of.beta),
    0,
  );
}
