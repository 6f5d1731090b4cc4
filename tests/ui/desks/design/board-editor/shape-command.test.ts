import { describe, expect, test } from 'vitest';
import { draftOf } from '../../../../../src/core/board/draft.ts';
import {
  halfCommandOf,
  shapeCommandOf,
} from '../../../../../src/ui/desks/design/board-editor/shape-command.ts';
import { stepOf } from '../../../../../src/ui/desks/design/board-editor/shape-step.ts';
import { readyBoard } from '../../../../core/board/boards.ts';

const press = (key: string, held: Partial<Parameters<typeof shapeCommandOf>[0]> = {}) => ({
  key,
  code: '',
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  shiftKey: false,
  ...held,
});

describe('presses on a key of the board', () => {
  test.each([
    [press('ArrowUp'), { command: 'walk', direction: 'up' }],
    [press('ArrowUp', { shiftKey: true }), { command: 'move', by: { x: 0, y: -1 } }],
    [press('ArrowRight', { shiftKey: true, altKey: true }), { command: 'move', by: { x: 0.1, y: 0 } }],
    [press('ArrowRight', { altKey: true }), null],
    [press('PageDown'), { command: 'turn', degrees: 1 }],
    [press('PageUp', { altKey: true }), { command: 'turn', degrees: -0.1 }],
    [press('&', { code: 'Digit1' }), { command: 'finger', finger: 'thumb' }],
    [press('5', { code: 'Digit5' }), { command: 'finger', finger: 'little' }],
    [press('h'), { command: 'home' }],
    [press('Enter'), { command: 'add' }],
    [press('Delete'), { command: 'remove' }],
    [press(' '), { command: 'select' }],
    [press('a', { ctrlKey: true }), { command: 'select-all' }],
    [press('z', { ctrlKey: true }), null],
    [press('Tab'), null],
  ])('%o', (pressed, command) => {
    expect(shapeCommandOf(pressed)).toEqual(command);
  });

  test('and on the handle of a half', () => {
    expect(halfCommandOf(press('ArrowLeft'))).toEqual({ by: { x: -1, y: 0 } });
    expect(halfCommandOf(press('PageDown', { altKey: true }))).toEqual({ degrees: 0.1 });
    expect(halfCommandOf(press('Enter'))).toBeNull();
  });
});

describe('steps by keyboard', () => {
  const draft = draftOf(readyBoard('split-36'));

  test.each([
    [{ command: 'move', by: { x: 1, y: 0 } }, 'Move 2 keys'],
    [{ command: 'turn', degrees: 1 }, 'Turn 2 keys'],
    [{ command: 'finger', finger: 'thumb' }, 'Give 2 keys to the thumb'],
    [{ command: 'home' }, 'Change home keys'],
    [{ command: 'remove' }, 'Remove 2 keys'],
  ] as const)('%o changes the board under the name “%s”', (command, title) => {
    const step = stepOf(command, ['R15', 'R14'], draft, false);
    expect(step?.title).toBe(title);
    expect(step?.draft.board).not.toEqual(draft.board);
  });

  test('walking is none', () => {
    expect(stepOf({ command: 'walk', direction: 'up' }, ['R15'], draft, false)).toBeNull();
  });
});
