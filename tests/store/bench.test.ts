import { beforeEach, describe, expect, test } from 'vitest';
import { keyName } from '../../src/core/board/key-name.ts';
import { useBench } from '../../src/store/bench.ts';
import { sample } from './sample.ts';

const bench = () => useBench.getState();
const rename = (name: string) => bench().edit({ edit: 'rename-design', name });

beforeEach(() => {
  useBench.setState(useBench.getInitialState());
  bench().open('one', sample);
});

describe('the bench', () => {
  test('opens a design on its base layer with nothing to undo', () => {
    rename('Changed');
    bench().showLayer('signs');
    bench().open('two', sample);
    expect(bench()).toMatchObject({ designId: 'two', frontLayer: 'base', past: [], future: [] });
  });

  test('an edit is one named step, back and forth', () => {
    rename('Changed');
    const title = bench().past[0]?.title;
    expect(title).toBeTruthy();
    bench().undo();
    expect(bench().keymap).toBe(sample);
    expect(bench().future[0]?.title).toBe(title);
    bench().redo();
    expect(bench().keymap.name).toBe('Changed');
  });

  test('an edit that changes nothing is no step', () => {
    rename(sample.name);
    expect(bench().past).toEqual([]);
  });

  test('a refused edit changes nothing and says why', () => {
    bench().edit({ edit: 'delete-layer', layer: 'no such layer' });
    expect(bench().keymap).toBe(sample);
    expect(bench().past).toEqual([]);
    expect(bench().notices).toMatchObject([{ tone: 'refused', canUndo: false }]);
  });

  test('what an edit takes along is said, with an Undo that lasts until the next step', () => {
    bench().edit({ edit: 'delete-layer', layer: 'signs' });
    expect(bench().notices).toMatchObject([{ tone: 'done', canUndo: true }]);
    rename('Changed');
    expect(bench().notices).toMatchObject([{ canUndo: false }]);
  });

  test('a notice calls a key what a person calls it', () => {
    const { board } = sample;
    const [key] = board.keys;
    if (key === undefined) throw new Error('a board without keys');
    const place = { layer: 'base', key: key.id };
    for (const code of ['KeyQ', 'KeyX'] as const) {
      bench().edit({ edit: 'bind', place, side: 'tap', action: { do: 'key', code } });
    }
    const said = bench().notices.at(-1)?.text ?? '';
    expect(said).toContain(keyName(board, key.id));
    expect(said).not.toContain(`at ${key.id} on`);
  });

  test('what is looked at follows undo and redo', () => {
    bench().showLayer('signs');
    bench().edit({ edit: 'delete-layer', layer: 'signs' });
    expect(bench().frontLayer).toBe('base');
    bench().undo();
    expect(bench().keymap.layers).toHaveLength(2);
  });

  test('only a layer that is there can be shown', () => {
    bench().showLayer('nowhere');
    expect(bench().frontLayer).toBe('base');
  });

  test('selecting replaces, or adds and takes away in the order of selecting', () => {
    bench().selectKeys(['A', 'B'], 'only');
    bench().selectKeys(['C', 'A'], 'toggle');
    expect(bench().selectedKeys).toEqual(['B', 'C']);
  });

  test('what is carried is put down on the layer in front, once', () => {
    bench().showLayer('signs');
    bench().carry({ carry: 'action', action: { do: 'char', char: '?' }, label: '?' });
    bench().putDown({ key: 'D', side: 'tap' });
    expect(bench().keymap.layers[1]?.places.D).toEqual({ tap: { do: 'char', char: '?' } });
    expect(bench().carried).toBeNull();
    bench().putDown({ key: 'C', side: 'tap' });
    expect(bench().past).toHaveLength(1);
  });

  test('what is handed in is put down in place of what is carried', () => {
    bench().putDown(
      { key: 'D', side: 'hold' },
      { carry: 'action', action: { do: 'key', code: 'ShiftLeft' }, label: 'Shift' },
    );
    expect(bench().keymap.layers[0]?.places.D?.hold).toEqual({ do: 'key', code: 'ShiftLeft' });
  });

  test('a design that another tab holds can be looked at, not changed', () => {
    rename('Mine');
    bench().setReadOnly(true);
    rename('Theirs');
    bench().undo();
    bench().redo();
    expect(bench().keymap.name).toBe('Mine');
    expect(bench().notices.map((notice) => notice.tone)).toEqual(['refused', 'refused', 'refused']);
  });

  test('notices have ids of their own, are dismissed by them, and do not pile up', () => {
    for (const text of ['1', '2', '3', '4', '5']) bench().notify({ tone: 'done', text, canUndo: false });
    expect(bench().notices.map((notice) => notice.text)).toEqual(['2', '3', '4', '5']);
    bench().dismiss(bench().notices[1]?.id ?? -1);
    expect(bench().notices.map((notice) => notice.text)).toEqual(['2', '4', '5']);
  });
});
