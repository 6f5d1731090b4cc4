import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import type { Finding } from '../../../../../src/core/findings/find.ts';
import { alikeFindings } from '../../../../../src/ui/desks/design/findings/alike-findings.ts';

const finding = (rule: string, message: string): Finding => ({
  rule,
  messageId: 'any',
  severity: 'broken',
  message,
  subjects: { keys: [], layers: [], chords: [] },
  data: {},
  mends: [],
});
const many = (rule: string, count: number) =>
  Array.from({ length: count }, (_, index) => finding(rule, `${rule} ${index}`));

describe('alike findings', () => {
  test.each([
    [1, 1, 0],
    [4, 4, 0],
    [5, 3, 2],
    [30, 3, 27],
  ])('%i of one rule: %i stand, %i are folded', (count, shown, folded) => {
    const [alike] = alikeFindings(many('need-missing', count));
    expect([alike?.shown.length, alike?.folded.length]).toEqual([shown, folded]);
  });

  test('a long rule folds alone; the others stand in their order', () => {
    const groups = alikeFindings([finding('a', '1'), ...many('b', 6), finding('c', '1')]);
    expect(groups.map(({ rule, folded }) => [rule, folded.length])).toEqual([
      ['a', 0],
      ['b', 3],
      ['c', 0],
    ]);
  });

  test.prop([fc.array(fc.constantFrom('a', 'b', 'c'), { maxLength: 30 })])(
    'nothing is lost or said twice, and a fold hides two at least',
    (rules) => {
      const findings = rules.map((rule, index) => finding(rule, `${index}`));
      const groups = alikeFindings(findings);
      const all = groups.flatMap(({ shown, folded }) => [...shown, ...folded]);
      expect(all.toSorted((a, b) => Number(a.message) - Number(b.message))).toEqual(findings);
      expect(groups.every(({ folded }) => folded.length !== 1)).toBe(true);
    },
  );
});
