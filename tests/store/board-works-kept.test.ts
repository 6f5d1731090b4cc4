import { describe, expect, test } from 'vitest';
import { draftOf } from '../../src/core/board/draft.ts';
import { removeKeys } from '../../src/core/board/hand-work.ts';
import { keepWork, keptWork } from '../../src/store/board-works-kept.ts';
import { memoryKeyValue } from '../../src/store/keeping/key-value.ts';
import { readyBoard } from '../core/board/boards.ts';

const DRAFT = removeKeys(draftOf(readyBoard('split-36')), { keys: ['R11'], alike: false });

describe('work on a board that is kept', () => {
  test('comes back as it stood, and goes when it is given up', async () => {
    const values = memoryKeyValue();
    await keepWork(values, 'one', { draft: DRAFT, alike: true });
    expect(await keptWork(values, 'one')).toEqual({ draft: DRAFT, alike: true });
    expect(await keptWork(values, 'two')).toBeNull();
    await keepWork(values, 'one', null);
    expect(await keptWork(values, 'one')).toBeNull();
  });

  test.each([
    ['no work at all', 'text'],
    ['no board', { origin: DRAFT.origin, board: { name: 'x', keys: [] }, from: [], alike: true }],
    ['no pairs', { origin: DRAFT.origin, board: DRAFT.board, from: [['L11']], alike: true }],
  ])('%s is passed over', async (_, value) => {
    const values = memoryKeyValue();
    await values.set('one', value);
    expect(await keptWork(values, 'one')).toBeNull();
  });
});
