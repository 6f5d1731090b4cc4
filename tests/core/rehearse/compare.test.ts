import { describe, expect, test } from 'vitest';
import { compareRuns } from '../../../src/core/rehearse/compare.ts';
import { producedWord } from '../../../src/core/rehearse/key-words.ts';
import { withTries } from '../../../src/core/rehearse/remedies.ts';
import { played, sample } from './played.ts';

const stream = 'A↓0 A↑80 R↓300 T↓330 R↑380 T↑400 F↓600 F↑770 S↓900 S↑950';

describe('two runs side by side', () => {
  test('the same design twice: nothing differs', () => {
    expect(compareRuns(played(stream), played(stream))).toEqual({
      differences: [],
      laterMs: { mean: 0, most: 0 },
      alike: 4,
    });
  });

  test('another window: which outputs differ, and where', () => {
    const narrow = withTries(sample, [{ edit: 'change-chord', chord: 'rt', to: { windowMs: 20 } }]);
    const { differences, alike } = compareRuns(played(stream), played(stream, narrow));
    expect(
      differences.map(({ one, other, fromMs, toMs }) => [
        one.map(({ produced }) => producedWord(produced)),
        other.map(({ produced }) => producedWord(produced)),
        fromMs,
        toMs,
      ]),
    ).toEqual([[['\t'], ['r', 't'], 300, 330]]);
    expect(alike).toBe(3);
  });

  test('the same outputs at other times: how much later', () => {
    const slower = withTries(sample, [
      {
        edit: 'bind',
        place: { layer: 'base', key: 'A' },
        side: 'hold',
        action: { do: 'key', code: 'ControlLeft' },
      },
    ]);
    expect(compareRuns(played('A↓0 A↑80'), played('A↓0 A↑80', slower))).toMatchObject({
      differences: [],
      laterMs: { mean: 80, most: 80 },
    });
  });
});
