import { describe, expect, test } from 'vitest';
import { MEASURED_LIMITS, readMeasuredText, writeMeasured } from '../../../src/core/typist/measured-file.ts';
import { alone, typedBy } from './typed-stream.ts';

const file = {
  format: 'measured-typist',
  version: 1,
  measuredAt: 77,
  clockStepMs: 0.1,
  ...typedBy(alone(60), 1, 40, 4),
} as const;

/** The path of the first problem and what was found there; null where the text is read. */
function problemOf(change: object): readonly [string, string] | null {
  const read = readMeasuredText(JSON.stringify({ ...file, ...change }));
  const [first] = read.ok ? [] : read.problem;
  return first === undefined ? null : [first.path, first.found];
}

describe('a file of measured figures', () => {
  test('reads as it was written', () => {
    expect(readMeasuredText(writeMeasured(file))).toEqual({ ok: true, value: file });
  });

  test('comes sorted, so that no order can be read out of it', () => {
    const read = readMeasuredText(JSON.stringify({ ...file, dwells: file.dwells.toReversed() }));
    expect(read.ok && read.value.dwells.map(({ ms }) => ms)).toEqual(file.dwells.map(({ ms }) => ms));
  });

  test.each<[object, readonly [string, string]]>([
    [{ format: 'key-stream' }, ['', 'something else']],
    [{ version: 2 }, ['version', '2']],
    [{ measuredAt: '1' }, ['measuredAt', '"1"']],
    [{ dwells: [{ finger: 99, ms: 80 }] }, ['dwells[0].finger', '99']],
    [{ dwells: [{ finger: 1, ms: -1 }] }, ['dwells[0].ms', '-1']],
    [{ chords: [{ hands: 'three', onsetsMs: [0, 1] }] }, ['chords[0].hands', '"three"']],
    [{ text: 'what was typed' }, ['text', 'a field of that name']],
  ])('%j is refused where it is wrong', (change, problem) => {
    expect(problemOf(change)).toEqual(problem);
  });

  test('no JSON, nothing, a list, and a text beyond the limit are refused', () => {
    const long = ' '.repeat(MEASURED_LIMITS.fileBytes + 1);
    for (const text of ['', '{', '[]', 'null', long])
      expect([text.length, readMeasuredText(text).ok]).toEqual([text.length, false]);
    const many = Array.from({ length: MEASURED_LIMITS.times + 1 }, () => ({ finger: 1, ms: 90 }));
    expect(problemOf({ dwells: many })?.[0]).toBe('dwells');
  });
});
