import { describe, expect, test } from 'vitest';
import { usHost } from '../../src/core/host/us.ts';
import { needListNamed } from '../../src/core/needs/need-lists.ts';
import { analysisOf } from '../../src/store/analysis.ts';
import { sample } from './sample.ts';

const asking = { ...sample, needs: { lists: ['ascii'], own: [], waived: [] } };

describe('the analysis', () => {
  test('of one keymap on one host is made once', () => {
    expect(analysisOf(asking, usHost)).toBe(analysisOf(asking, usHost));
  });

  test('is made anew for another keymap, host or set of lists', () => {
    const first = analysisOf(asking, usHost);
    expect(analysisOf({ ...asking }, usHost)).not.toBe(first);
    expect(analysisOf(asking, { ...usHost })).not.toBe(first);
    expect(analysisOf(asking, usHost, (name) => needListNamed(name))).not.toBe(first);
  });

  test('says of each need whether it is reached, and finds those that are not', () => {
    const { needs, findings } = analysisOf(asking, usHost);
    expect(needs).toHaveLength(95);
    const reached = needs.flatMap(({ need, route }) => (route && need.kind === 'char' ? [need.char] : []));
    expect(reached).toEqual(expect.arrayContaining(['a', 'b', '!']));
    const missing = findings.filter(({ rule }) => rule === 'need-missing');
    expect(missing.length).toBe(needs.filter(({ route }) => route === null).length);
  });
});
