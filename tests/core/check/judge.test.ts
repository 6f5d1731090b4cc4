import { describe, expect, test } from 'vitest';
import type { ComputerState } from '../../../src/core/check/computer-state.ts';
import { type HeardKey, heardWith, readHeard } from '../../../src/core/check/heard.ts';
import {
  isAskedAgain,
  isRightButForCarried,
  isSettled,
  judge,
  type Verdict,
} from '../../../src/core/check/judge.ts';
import { type CheckStep, checkPlan } from '../../../src/core/check/steps.ts';
import { usHost } from '../../../src/core/host/us.ts';
import type { Action } from '../../../src/core/keymap/types.ts';
import { layer, small } from '../keymap/small.ts';

/** Events from a short notation: "KeyA↓0 KeyA↑40"; the key is the letter of the code, Shift and the like by their name. */
function heard(
  text: string,
  keys: Readonly<Record<string, string>> = {},
  states: readonly ComputerState[] = [],
): readonly HeardKey[] {
  return text.split(' ').flatMap((part) => {
    const [, code = '', way, ms] = /^(\w+)([↓↑])([\d.]+)$/u.exec(part) ?? [];
    if (part === '') return [];
    const key =
      keys[code] ??
      code
        .replace(/^Key/, '')
        .replace(/(Left|Right)$/, '')
        .toLowerCase();
    return [
      { kind: way === '↓' ? 'down' : 'up', code, key, timeMs: Number(ms), repeat: false, states } as const,
    ];
  });
}

const stepFor = (action: Action) => {
  const [step] = checkPlan(small([layer('base', { k1: { tap: action } })]), usHost).steps;
  if (step === undefined) throw new Error('no step');
  return step;
};
const letter = stepFor({ do: 'key', code: 'KeyA' });
const capital = stepFor({ do: 'char', char: 'A' });
const doubled = stepFor({ do: 'text', text: 'aa' });

test.each([
  ['the key', letter, 'KeyA↓0 KeyA↑50', 'right'],
  ['nothing', letter, '', 'silent'],
  ['another key', letter, 'KeyB↓0 KeyB↑50', 'wrong'],
  ['the key twice', letter, 'KeyA↓0 KeyA↑50 KeyA↓200 KeyA↑250', 'wrong'],
  ['the key, bouncing', letter, 'KeyA↓0 KeyA↑50 KeyA↓62 KeyA↑70', 'wrong'],
  ['the key, still down', letter, 'KeyA↓0', 'wrong'],
  ['Shift around it', capital, 'ShiftLeft↓0 KeyA↓1 KeyA↑40 ShiftLeft↑41', 'right'],
  ['the other Shift around it', capital, 'ShiftRight↓0 KeyA↓1 KeyA↑40 ShiftRight↑41', 'wrong'],
  ['Shift before it and not around it', capital, 'ShiftLeft↓0 ShiftLeft↑1 KeyA↓2 KeyA↑40', 'wrong'],
  ['a held Shift that is taken away first', letter, 'ShiftLeft↓0 ShiftLeft↑40 KeyA↓40 KeyA↑50', 'right'],
  ['and brought back', letter, 'ShiftLeft↓0 ShiftLeft↑40 KeyA↓40 KeyA↑50 ShiftLeft↓51 ShiftLeft↑90', 'right'],
  ['a Shift and nothing else', letter, 'ShiftLeft↓0 ShiftLeft↑40', 'wrong'],
  ['two of one key at once, as a board sends a text', doubled, 'KeyA↓0 KeyA↑1 KeyA↓2 KeyA↑3', 'right'],
])('%s', (_, step, text, verdict) => {
  expect(judge(step, heard(text, step === capital ? { KeyA: 'A' } : {})).verdict).toBe(verdict);
});

test('the right key with another character is told apart', () => {
  expect(judge(letter, heard('KeyA↓0 KeyA↑50', { KeyA: 'q' }))).toMatchObject({
    verdict: 'wrong',
    otherCharacters: true,
  });
});

describe('what the computer holds to be down or on from before', () => {
  const press = 'KeyA↓0 KeyA↑50';
  test.each<[string, string, CheckStep, ComputerState[], Verdict, boolean]>([
    ['Caps Lock, with the capital it makes', 'A', letter, ['CapsLock'], 'right', false],
    ['Caps Lock, with another letter', 'Q', letter, ['CapsLock'], 'wrong', true],
    ['a Shift from before', 'A', letter, ['Shift'], 'wrong', false],
    ['a Control from before, which makes no other character', 'a', letter, ['Control'], 'wrong', false],
    ['nothing', 'A', letter, [], 'wrong', true],
  ])('%s', (_, key, step, states, verdict, otherCharacters) => {
    expect(judge(step, heard(press, { KeyA: key }, states))).toMatchObject({ verdict, otherCharacters });
  });

  test('a Shift that is pressed here is not from before', () => {
    const events = heard('ShiftLeft↓0 KeyA↓1 KeyA↑40 ShiftLeft↑41', { KeyA: 'A' }, ['Shift']);
    expect(judge(capital, events).verdict).toBe('right');
  });

  test('a Shift from before stands in for one that does not come again, and for no other modifier', () => {
    const { strokes } = judge(capital, heard(press, { KeyA: 'A' }, ['Shift']));
    expect(isRightButForCarried(capital, strokes)).toBe(true);
    const other = judge(capital, heard(press, { KeyA: 'a' }, ['Control'])).strokes;
    expect(isRightButForCarried(capital, other)).toBe(false);
  });
});

test('the gap of a bounce is told, and a slow second press is none', () => {
  expect(readHeard(heard('KeyA↓0 KeyA↑50 KeyA↓62.5 KeyA↑70')).bounces).toEqual([
    { code: 'KeyA', gapMs: 12.5 },
  ]);
  expect(readHeard(heard('KeyA↓0 KeyA↑50 KeyA↓80 KeyA↑120')).bounces).toEqual([]);
});

describe('when to go on', () => {
  test.each([
    ['nothing yet', '', false],
    ['the key is still down', 'KeyA↓0', false],
    ['the key is up', 'KeyA↓0 KeyA↑50', true],
  ])('%s', (_, text, settled) => {
    expect(isSettled(letter, heard(text))).toBe(settled);
  });

  test('a text is waited for to its end', () => {
    expect(isSettled(doubled, heard('KeyA↓0 KeyA↑1'))).toBe(false);
  });
});

test('what the keyboard repeats, and a release of what went down before, say nothing of a step', () => {
  const [press, release] = heard('KeyA↓0 KeyA↑50');
  if (press === undefined || release === undefined) throw new Error('no events');
  expect(heardWith([], press)).toEqual([press]);
  expect(heardWith([press], { ...press, timeMs: 30, repeat: true })).toBeNull();
  expect(heardWith([], release)).toBeNull();
  expect(heardWith([press], release)).toEqual([press, release]);
});

test.each([
  ['another key', 'KeyB↓0 KeyB↑50', true],
  ['the key', 'KeyA↓0 KeyA↑50', false],
  ['nothing', '', false],
  ['a switch that bounces, which it may not do again', 'KeyA↓0 KeyA↑50 KeyA↓62 KeyA↑70', false],
  ['a key that stays down, of which nothing more comes', 'KeyA↓0', false],
])('asked for once more after %s: %#', (_, text, again) => {
  const result = judge(letter, heard(text));
  expect(isAskedAgain(result, false)).toBe(again);
  expect(isAskedAgain(result, true)).toBe(false);
});
