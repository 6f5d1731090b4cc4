import { describe, expect, test } from 'vitest';
import { actionSchema } from '../../../../src/core/keymap/schema.ts';
import {
  ACTION_KINDS,
  labelProblem,
  readChar,
  startOf,
  textProblem,
} from '../../../../src/ui/board/cards/action-kinds.ts';
import { design, layer } from '../sample.ts';

describe('kinds of actions', () => {
  test('are all that a keymap knows', () => {
    const known = actionSchema.def.options.map((option) => option.shape.do.def.values[0]);
    expect(ACTION_KINDS.map(({ value }) => value).sort()).toEqual([...known].sort());
  });

  test.each([
    ['layer', 'tap', { do: 'layer', layer: 'symbols', mode: 'latch' }],
    ['layer', 'hold', { do: 'layer', layer: 'symbols', mode: 'while-held' }],
    ['modifier', 'tap', { do: 'modifier', code: 'ShiftLeft', mode: 'latch' }],
    ['nothing', 'tap', { do: 'nothing' }],
    ['char', 'tap', null],
    ['key', 'tap', null],
    ['text', 'tap', null],
    ['board', 'tap', null],
  ] as const)('choosing %s for a %s makes %j', (kind, side, action) => {
    expect(startOf(kind, design(), side)).toEqual(action);
  });

  test('a layer cannot be chosen where there is only the base', () => {
    expect(startOf('layer', design([layer('base', 'Base')]), 'hold')).toBeNull();
  });
});

describe('what is written into a card', () => {
  test.each([
    ['a', 'a'],
    [' ', ' '],
    ['e\u0301', 'é'],
    ['', null],
    ['ab', null],
  ])('%j is the character %j', (text, char) => {
    expect(readChar(text)).toBe(char);
  });

  test('texts and names have their lengths, in code points', () => {
    expect(textProblem('')).toBeDefined();
    expect(textProblem('😀'.repeat(64))).toBeUndefined();
    expect(textProblem('😀'.repeat(65))).toMatch(/64/);
    expect(labelProblem('Radio 2')).toBeUndefined();
    expect(labelProblem('x'.repeat(41))).toMatch(/40/);
  });
});
