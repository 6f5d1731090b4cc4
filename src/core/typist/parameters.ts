/**
 * The published tables of the typist model. Computed from a 2,329-typist sample (1.70 M keystrokes) of the 136M Keystrokes
 * data: Dhakal, Feit, Kristensson, Oulasvirta, "Observations on Typing from 136 Million Keystrokes", CHI 2018. Conventional
 * keyboards; intervals under 20 ms hardly occur in it, so nothing about windows under 25 ms is validated.
 */
export type GroupName = 'slow' | 'average' | 'fast' | 'veryFast';

export const GROUP_NAMES: readonly GroupName[] = ['slow', 'average', 'fast', 'veryFast'];

/** How two letters lie to each other, in the order of the tables below. */
export const PAIR_CLASSES = [
  'double letter',
  'same finger, another key',
  'other hand',
  'neighbouring fingers, same row',
  'neighbouring fingers, one row apart',
  'neighbouring fingers, two rows apart',
  'two fingers apart, same row',
  'two fingers apart, one row apart',
  'two fingers apart, two rows apart',
  'three fingers apart, same row',
  'three fingers apart, one row apart',
] as const;

/** Shares of all letter pairs at which a pair counts as more practised; four bands, the rarest first. */
export const BAND_LIMITS: readonly number[] = [0.001, 0.003, 0.01];

/** What is known of typists of one speed. Durations ms, shares 0 to 1; lists go by pair class or by band. */
export interface TypistParameters {
  readonly wpm: number;
  /** Scale and shape of the log-logistic interval between letters, median typist. */
  readonly alphaMs: number;
  readonly beta: number;
  /** Between typists, SD of ln interval. */
  readonly betweenLnIki: number;
  readonly dwellMeanMs: number;
  readonly dwellWithinMs: number;
  readonly dwellBetweenMs: number;
  /** Dwell of a finger over the typist's mean, by finger number; the sample's `DWELL_BY_FINGER` where it is left out. */
  readonly dwellRatio?: readonly number[];
  /** Share of letter pairs whose second key is pressed and released inside the first. */
  readonly nested: number;
  /** Share of deliberate holds whose letter is up before the held key. */
  readonly letterUpFirst: number;
  readonly letterToSpace: number;
  readonly spaceToLetter: number;
  /** Interval of a class as a ratio to the typist's own mean. */
  readonly classRatio: readonly number[];
  /** Share of a class within 40 and 60 ms with the first key still down. */
  readonly within40: readonly number[];
  readonly within60: readonly number[];
  /** Interval of a band as a ratio to its class. */
  readonly bandRatio: readonly number[];
  /** Share within 40 ms of a band over that of its class, pairs of two hands. */
  readonly bandWithin: readonly number[];
}

const percent = (...values: readonly number[]): readonly number[] => values.map((value) => value / 100);
const over = (whole: number, ...parts: readonly number[]): readonly number[] =>
  parts.map((part) => part / whole);

const AVERAGE_CLASS = {
  classRatio: [1.0, 1.28, 0.93, 0.97, 1.13, 1.04, 0.94, 1.19, 1.01, 1.19, 1.09],
  bandRatio: [1.25, 1.07, 0.93, 0.81],
  bandWithin: over(0.68, 0.65, 0.42, 0.57, 0.99),
};
const AVERAGE_40 = percent(0, 0.43, 0.68, 0.82, 0.26, 0.23, 0.49, 0.15, 0.29, 0.19, 0.26);
const AVERAGE_60 = percent(0, 0.9, 2.4, 2.4, 1.1, 1.2, 2.4, 0.69, 1.4, 0.56, 1.2);
const FAST_BANDS = { bandRatio: [1.19, 1.03, 0.92, 0.82], bandWithin: over(2.4, 0.93, 1.2, 2.3, 3.5) };

/** All intervals within 40 and 60 ms, slow over average: the table by class has no column for slow typists. */
const SLOW_40 = 0.28 / 0.48;
const SLOW_60 = 0.63 / 1.86;

/** The four groups: under 35, 35 to 65, 65 to 90 and 90 words per minute and more, each at its mean. */
export const GROUPS: Readonly<Record<GroupName, TypistParameters>> = {
  slow: {
    wpm: 27.6,
    alphaMs: 234,
    beta: 3.33,
    betweenLnIki: 0.24,
    dwellMeanMs: 111,
    dwellWithinMs: 30,
    dwellBetweenMs: 25,
    nested: 0.0018,
    letterUpFirst: 0.47,
    letterToSpace: 0.9,
    spaceToLetter: 1.39,
    ...AVERAGE_CLASS,
    within40: AVERAGE_40.map((share) => share * SLOW_40),
    within60: AVERAGE_60.map((share) => share * SLOW_60),
  },
  average: {
    wpm: 48.5,
    alphaMs: 160,
    beta: 3.86,
    betweenLnIki: 0.16,
    dwellMeanMs: 108,
    dwellWithinMs: 29,
    dwellBetweenMs: 22,
    nested: 0.0023,
    letterUpFirst: 0.36,
    letterToSpace: 0.9,
    spaceToLetter: 1.39,
    ...AVERAGE_CLASS,
    within40: AVERAGE_40,
    within60: AVERAGE_60,
  },
  fast: {
    wpm: 75.1,
    alphaMs: 116,
    beta: 3.96,
    betweenLnIki: 0.11,
    dwellMeanMs: 102,
    dwellWithinMs: 27,
    dwellBetweenMs: 18,
    nested: 0.0045,
    letterUpFirst: 0.29,
    letterToSpace: 0.9,
    spaceToLetter: 1.21,
    classRatio: [1.27, 1.44, 0.92, 0.97, 1.13, 1.03, 0.92, 1.15, 0.93, 1.18, 1.04],
    ...FAST_BANDS,
    within40: percent(0, 0.31, 2.4, 1.6, 0.96, 1.1, 1.8, 0.67, 1.6, 0.37, 0.95),
    within60: percent(0, 1.35, 8.5, 7.4, 5.1, 6.3, 8.6, 3.2, 7.9, 1.8, 5.0),
  },
  veryFast: {
    wpm: 99.1,
    alphaMs: 94,
    beta: 4.04,
    betweenLnIki: 0.09,
    dwellMeanMs: 98,
    dwellWithinMs: 25,
    dwellBetweenMs: 15,
    nested: 0.0088,
    letterUpFirst: 0.24,
    letterToSpace: 0.9,
    spaceToLetter: 1.13,
    classRatio: [1.45, 1.54, 0.93, 0.94, 1.06, 1.02, 0.92, 1.08, 0.86, 1.12, 1.02],
    ...FAST_BANDS,
    within40: percent(0, 0.81, 4.3, 3.3, 2.8, 3.3, 4.6, 2.3, 5.0, 0.78, 2.0),
    within60: percent(0, 3.5, 15.5, 16.9, 13.1, 15.8, 17.6, 12.0, 21.9, 6.0, 9.8),
  },
};

/** Mean dwell by finger, little to index, average typists, ms. */
export const DWELL_BY_FINGER = {
  left: { little: 128, ring: 117, middle: 112, index: 105 },
  right: { little: 106, ring: 106, middle: 104, index: 101 },
} as const;

/** Slips: neighbouring keys of a row that come down together within 40 ms, per 1,000 words and pair: the middle of .02 to .05. */
export const SLIPS_PER_1000_WORDS = 0.035;

/** Deliberate holds: 5, 50 and 95 % of the time from the held key's press to the letter's, and of its dwell, ms. */
export const HOLD_LAG_MS = [63, 157, 576] as const;
export const HOLD_DOWN_MS = [129, 248, 784] as const;

/** SD of a key's onset in a chord meant together: within a hand and across hands, ms; Vienna 4x22 piano performances (Goebl), skilled hands. */
export const ONSET_SD_MS = { oneHand: 16, twoHands: 20 } as const;

/** A word is five typed characters. */
export const CHARACTERS_PER_WORD = 5;
