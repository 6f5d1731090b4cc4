import { describe, expect, test } from 'vitest';
import { usHost } from '../../../../src/core/host/us.ts';
import { shareOf } from '../../../../src/core/practice/estimates.ts';
import type { Forecast } from '../../../../src/core/practice/forecast.ts';
import { NEED_GROUPS } from '../../../../src/core/practice/groups.ts';
import { rankNeeds } from '../../../../src/core/practice/ranked-needs.ts';
import { newSession, type Session } from '../../../../src/core/practice/session.ts';
import { FRESH_CARD } from '../../../../src/core/practice/spacing.ts';
import { findRoutes } from '../../../../src/core/routes/find-routes.ts';
import { hintFor } from '../../../../src/ui/desks/practise/hint.ts';
import { heatFigures } from '../../../../src/ui/desks/practise/key-figures.ts';
import { needSections } from '../../../../src/ui/desks/practise/need-sections.ts';
import { curveLabel, forecastWords } from '../../../../src/ui/desks/practise/plot-words.ts';
import {
  choicesWords,
  dueWords,
  promptReason,
  shareWords,
  signOf,
  strayWords,
  timeWords,
  untypedWords,
  waitingWords,
} from '../../../../src/ui/desks/practise/practise-words.ts';
import { roundTicks, scaleOf } from '../../../../src/ui/desks/practise/scale.ts';
import { faultLines, sessionWords } from '../../../../src/ui/desks/practise/summary.ts';
import { need, sample, waysOf } from '../../../core/practice/sample.ts';

const DAY = 24 * 60 * 60 * 1000;
const ranked = (texts: readonly string[]) =>
  rankNeeds(findRoutes(sample, usHost, texts.map(need)), new Map(), null, 0);

test.each([
  ['k', 'k', '“k”', false],
  [' ', '␣', 'space', false],
  ['key:Home', 'Home', 'Home', true],
  ['key:ArrowLeft', '←', 'Left arrow', false],
  ['shortcut:Control+KeyS', 'Control + S', 'Control + S', true],
])('%s is shown as %s and read as %s', (text, glyph, name, isWord) => {
  expect(signOf(text, sample, usHost)).toEqual({ glyph, name, isWord });
});

test.each([
  ['KeyZ', /^Z stands/],
  ['IntlRo', /^Key left of right Shift stands/],
  ['', /stands for no key/],
])('a stray %s is told by its name, not by its code', (code, words) => {
  expect(strayWords(code)).toMatch(words);
});

describe('what waits', () => {
  test.each([
    [[], null, /types none of its needs/],
    [['a', 'k'], null, /^2 needs, none of them practised yet\.$/],
    [['a', 'k'], 'digits', /^No digits among the 2 needs/],
    [[...'abcdefghijkl'], null, /ten at a time/],
  ] as const)('%j, %s', (texts, group, words) => {
    expect(waitingWords(ranked(texts), group)).toMatch(words);
  });

  test.each([
    [0, null],
    [1, '1 need of the design cannot be typed yet and is left out: the design desk says why.'],
    [1200, '1,200 needs of the design cannot be typed yet and are left out: the design desk says why.'],
  ])('and what cannot be typed is told beside it: %s', (untyped, words) => {
    expect(untypedWords(untyped)).toBe(words);
  });

  test('stands in work first, then by how it stands, what is not wished for last', () => {
    const sections = needSections(ranked([...'abcdefghijkl', '(', 'key:Home']), 'letters');
    expect(sections.map(({ title, needs }) => `${title} ${needs.length}`)).toEqual([
      'In work 10',
      'New 2',
      'Not asked for now 2',
    ]);
  });
});

describe('figures in words carry their doubt', () => {
  test('shares', () => {
    expect(shareWords(shareOf(1, 29))).toBe('3 % wrong, likely between 1 and 17 %');
  });
  test.each([
    [null, 'not timed yet'],
    [{ value: 420.4, low: 380, high: 510 }, '420 ms, likely between 380 and 510'],
    [{ value: 420, low: null, high: null }, '420 ms, too few to say how sure'],
    [{ value: 420, low: 380, high: null }, '420 ms, likely over 380'],
    [{ value: 420, low: null, high: 510 }, '420 ms, likely under 510'],
  ])('times', (estimate, words) => {
    expect(timeWords(estimate)).toBe(words);
  });
});

test.each([
  [{ ...FRESH_CARD }, 'not planned yet'],
  [{ ...FRESH_CARD, dueAt: DAY }, 'tomorrow'],
  [{ ...FRESH_CARD, dueAt: DAY, again: true }, 'again today'],
  [{ ...FRESH_CARD, dueAt: 6 * DAY }, 'in 6 days'],
  [{ ...FRESH_CARD, dueAt: -1 }, 'now'],
])('%o comes %s', (card, words) => {
  expect(dueWords(card, 0)).toBe(words);
});

test('why a prompt is asked for, and how a session is to be', () => {
  const prompt = { needs: ['a', '('], focus: '(', standing: 'changed', shape: 'company' } as const;
  expect(promptReason(prompt, 'Program code')).toBe('moved, as it stands in “Program code”');
  expect(promptReason({ ...prompt, shape: 'alone' }, null)).toBe('moved');
  expect(choicesWords({ group: 'symbols', minutes: 5, input: 'board' })).toBe(
    'Symbols, 5 minutes, on the real board',
  );
  expect(NEED_GROUPS).toHaveLength(5);
});

describe('a session summed up', () => {
  const slip = (needText: string, sure: boolean) => ({
    need: needText,
    at: 0,
    right: false,
    ms: null,
    hinted: false,
    diagnosis: { sure, faults: [{ fault: 'neighbour', key: 'R24', meant: 'R23' } as const] },
  });
  const about = { id: 's', seed: 0, minutes: 5, input: 'engine', startedAt: 0 } as const;
  const session: Session = {
    ...newSession(about),
    activeMs: 120_000,
    attempts: [slip('k', true), slip('k', true), slip('l', false)],
  };
  test('the most frequent fault first, likely ones apart', () => {
    expect(faultLines(sample, session)).toEqual([
      { words: 'Neighbour: right ring home instead of right middle home.', times: 2, needs: ['k'] },
      { words: 'Likely: neighbour: right ring home instead of right middle home.', times: 1, needs: ['l'] },
    ]);
    expect(sessionWords(session)).toBe('3 needs typed in 2 minutes, 3 wrong at first.');
  });
});

describe('forecast in words', () => {
  const band: Forecast = {
    state: 'band',
    points: 60,
    perDay: 42.4,
    days: [{ at: 28 * DAY, ms: 400, low: 322.2, high: 439.4 }],
  };
  test.each([
    [
      { state: 'too-few', points: 12, needed: 50 } as const,
      /12 points so far.*at least 50.*McMulkin and Kroemer/,
    ],
    [{ state: 'no-practice' } as const, /no pace to forecast by/],
    [band, /42 presses a day.*between 322 and 439 ms in four weeks/],
  ])('%o', (forecast, words) => {
    expect(forecastWords(forecast)).toMatch(words);
  });

  test('the curve is read out', () => {
    const points = [
      { practised: 5, ms: 900, at: 0, errorShare: 0 },
      { practised: 15, ms: 500, at: DAY, errorShare: 0 },
    ];
    expect(curveLabel('Symbols', points, band)).toBe(
      'Symbols: from 900 to 500 ms over 2 points. In four weeks likely between 322 and 439 ms.',
    );
    expect(curveLabel('Symbols', [], band)).toBe('Symbols: no times yet.');
  });
});

test('a hint numbers the steps; the keys of a chord share one', () => {
  const hint = (text: string) => hintFor(text, sample, waysOf([text]));
  expect(hint('1')).toEqual({
    layer: 'letters',
    lights: new Map([
      ['L32', '1'],
      ['L33', '1'],
    ]),
    words: 'press left index bottom + left middle bottom together (1)',
  });
  expect(hint('(')).toMatchObject({
    layer: 'signs',
    lights: new Map([
      ['RT2', '1_'],
      ['L24', '2'],
    ]),
  });
  expect(hintFor('ß', sample, waysOf(['ß']))).toBeNull();
});

test('the heat of a key has a step, a figure and words', () => {
  const heat = new Map([['R23', { tries: 20, errorShare: 0.15, medianMs: 420 }]]);
  expect(heatFigures(sample.board, heat, 'errors').get('R23')).toEqual({
    step: 3,
    figure: '15 %',
    words: 'right middle home: 15 % wrong, 20 tries',
  });
  expect(heatFigures(sample.board, heat, 'speed').get('R23')).toMatchObject({ step: 2, figure: '420' });
});

test('scales and round ticks', () => {
  expect(scaleOf([0, 10], [100, 200])(5)).toBe(150);
  expect(scaleOf([3, 3], [100, 200])(3)).toBe(150);
  expect(roundTicks(1730)).toEqual([0, 500, 1000, 1500, 2000]);
  expect(roundTicks(38)).toEqual([0, 10, 20, 30, 40]);
  expect(roundTicks(0)).toEqual([0, 1]);
});
