import { describe, expect, test } from 'vitest';
import { BREAK_WORDS, isBreakDue, POSTURE_WORDS } from '../../../src/core/practice/care.ts';

const MINUTE = 60_000;
const NOW = 1_000 * MINUTE;
/** Practice from so many minutes ago until so many minutes ago. */
const spell = (from: number, to: number) => ({ from: NOW - from * MINUTE, to: NOW - to * MINUTE });

describe('a break is proposed', () => {
  test.each([
    ['after twenty minutes in a row', [spell(21, 0)], true],
    ['not after ten', [spell(10, 0)], false],
    ['after three sessions with short gaps', [spell(27, 19), spell(17, 9), spell(8, 0)], true],
    ['not where five minutes lay between', [spell(27, 17), spell(12, 3)], false],
    ['not when the break has just been had', [spell(40, 6)], false],
    ['not for what lies over an hour back', [spell(120, 61)], false],
    ['not before any practice', [], false],
  ])('%s', (_, spells, due) => {
    expect(isBreakDue(spells, NOW)).toBe(due);
  });
});

test('the words name who found it, and posture takes one line', () => {
  expect(BREAK_WORDS).toMatch(/NIOSH, 2000 and 2007/);
  expect(POSTURE_WORDS.length).toBeLessThan(120);
});
