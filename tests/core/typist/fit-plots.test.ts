import { describe, expect, test } from 'vitest';
import { fitOf, personOfFit } from '../../../src/core/typist/fit-person.ts';
import { dwellPlot, type FitPlot, intervalPlot, spreadPlot } from '../../../src/core/typist/fit-plots.ts';
import { readMeasured, writeMeasured } from '../../../src/core/typist/measured-file.ts';
import { alone, typedBy } from './typed-stream.ts';

const measured = typedBy(alone(70, {}, 1.4), 8, 4000, 200);
const person = personOfFit(fitOf(measured));
if (person === null) throw new Error('4,000 keystrokes are enough for a person.');

const sum = (values: readonly number[]) => values.reduce((total, each) => total + each, 0);

/** Squares of what is counted less what is expected, over what is expected, for each step that expects five and more. */
function misfit({ counts, expected }: FitPlot): number {
  const used = [...expected.keys()].filter((at) => (expected[at] ?? 0) >= 5);
  return (
    sum(used.map((at) => ((counts[at] ?? 0) - (expected[at] ?? 0)) ** 2 / (expected[at] ?? 1))) / used.length
  );
}

describe('what is drawn over the data', () => {
  test.each([
    ['intervals', intervalPlot(measured, person), measured.intervals.length],
    ['dwells', dwellPlot(measured, person), measured.dwells.length],
    ['spreads', spreadPlot(measured, person), measured.chords.length],
  ])('%s: all of the data, and a curve that fits it', (_, plot, count) => {
    expect(sum(plot.counts) + plot.beyond).toBe(count);
    expect(sum(plot.expected)).toBeGreaterThan(0.9 * count);
    expect(sum(plot.expected)).toBeLessThan(1.001 * count);
    // Chi squared over its degrees of freedom is about 1 where the curve is the data's own.
    expect(misfit(plot)).toBeLessThan(1.8);
  });

  test('and one that does not fit somebody else', () => {
    expect(misfit(intervalPlot(measured, alone(40)))).toBeGreaterThan(10);
    expect(misfit(dwellPlot(measured, alone(70, { dwellMeanMs: 130 })))).toBeGreaterThan(10);
    expect(misfit(spreadPlot(measured, alone(70)))).toBeGreaterThan(3);
  });
});

describe('the file of what was measured', () => {
  const file = {
    format: 'measured-typist' as const,
    version: 1 as const,
    measuredAt: 5,
    clockStepMs: 0.1,
    ...measured,
  };

  test('comes back as it was', () => {
    expect(readMeasured(JSON.parse(writeMeasured(file)))).toEqual({ ok: true, value: file });
  });

  test.each([
    ['nothing', null, /not what was measured/],
    ['another version', { ...file, version: 2 }, /version/],
    [
      'a group that is none',
      { ...file, intervals: [{ group: 99, band: null, ms: 100 }] },
      /intervals.0.group/,
    ],
    ['a time that is none', { ...file, dwells: [{ finger: 1, ms: Number.NaN }] }, /dwells.0.ms/],
    ['more than there can be', { ...file, chords: [{ hands: 'one', onsetsMs: [0] }] }, /chords.0.onsetsMs/],
    ['a key too many', { ...file, typed: 'secret' }, /not what was measured/],
  ])('%s is refused: %#', (_, value, problem) => {
    const read = readMeasured(value);
    expect(read.ok ? '' : read.problem).toMatch(problem);
  });
});
