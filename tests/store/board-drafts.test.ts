import { beforeEach, describe, expect, test } from 'vitest';
import { moveKeys, removeKeys } from '../../src/core/board/hand-work.ts';
import { useBench } from '../../src/store/bench.ts';
import { useBoardDrafts, workOn } from '../../src/store/board-drafts.ts';
import { readyBoard } from '../core/board/boards.ts';
import { A, B, layer, small } from '../core/keymap/small.ts';

const DESIGN = {
  ...small([layer('base', { R11: { tap: A }, R12: { tap: B } })]),
  board: readyBoard('split-36'),
};
const work = () => workOn(useBoardDrafts.getState().works, useBench.getState());
const drafts = () => useBoardDrafts.getState();
const away = (id: string) => removeKeys(work().draft, { keys: [id], alike: false });
const aside = () => moveKeys(work().draft, { keys: ['R22'], alike: false }, { x: 1, y: 0 });

beforeEach(() => {
  useBoardDrafts.setState({ isOpen: false, works: {}, preview: null });
  useBench.getState().open('one', DESIGN);
});

describe('the work on a board', () => {
  test('leaves the design alone until it is used, and then is one step of it', () => {
    drafts().open();
    drafts().change('Remove a key', away('R11'));
    expect(useBench.getState().keymap).toBe(DESIGN);
    drafts().use();
    const { keymap, past, undo } = useBench.getState();
    expect(keymap.board.keys).toHaveLength(35);
    expect(keymap.layers[0]?.places).toEqual({ R12: { tap: B } });
    expect([past.length, drafts().isOpen]).toEqual([1, false]);
    undo();
    expect(useBench.getState().keymap).toBe(DESIGN);
  });

  test('is undone and redone step by step, and drops what is gone from the selection', () => {
    drafts().change('Move a key', aside(), ['R22', 'R11']);
    drafts().change('Remove a key', away('R11'));
    expect(work().selected).toEqual(['R22']);
    drafts().undo();
    drafts().undo();
    drafts().undo();
    expect(work().draft.board).toBe(DESIGN.board);
    drafts().redo();
    expect(work().past.map(({ title }) => title)).toEqual(['Move a key']);
    expect(work().future.map(({ title }) => title)).toEqual(['Remove a key']);
  });

  test('a step that changes nothing is none', () => {
    drafts().show(aside());
    drafts().change('Nothing', work().draft);
    expect([work().past, drafts().preview]).toEqual([[], null]);
  });

  test('is kept while another design is looked at, and goes with its design', async () => {
    drafts().change('Move a key', aside());
    useBench.getState().open('two', DESIGN);
    expect(work().past).toEqual([]);
    useBench.getState().open('one', DESIGN);
    expect(work().past).toHaveLength(1);
    await drafts().forget('one');
    expect(work().draft.board).toBe(DESIGN.board);
  });

  test('goes on over a board of the design that changed meanwhile', () => {
    drafts().change('Move a key', aside());
    useBench.getState().edit({ edit: 'delete-key', key: 'R11' });
    expect(work().draft.from.has('R11')).toBe(false);
    expect(work().draft.origin).toBe(useBench.getState().keymap.board);
  });

  test('stays where the design may not be changed', () => {
    drafts().open();
    drafts().change('Move a key', aside());
    useBench.getState().setReadOnly(true);
    drafts().use();
    expect([work().past.length, drafts().isOpen]).toEqual([1, true]);
    expect(useBench.getState().notices.at(-1)?.tone).toBe('refused');
  });
});
