import { describe, expect, test } from 'vitest';
import type { Keymap } from '../../src/core/keymap/types.ts';
import { pruneView, type View } from '../../src/store/prune-view.ts';
import { sample } from './sample.ts';

const view: View = {
  frontLayer: 'signs',
  focusedKey: 'A',
  selectedKeys: ['A', 'B'],
  openCard: { card: 'key', key: 'A' },
  carried: { carry: 'binding', from: { layer: 'base', key: 'A' }, label: 'a' },
  lit: { why: 'x', keys: ['A'], chords: ['c1'], layers: ['signs'], order: [{ key: 'A', held: false }] },
};

const without = (gone: { key?: string; layer?: string; chords?: true }): Keymap => ({
  ...sample,
  board: { ...sample.board, keys: sample.board.keys.filter(({ id }) => id !== gone.key) },
  layers: sample.layers.filter(({ id }) => id !== gone.layer),
  chords: gone.chords ? [] : (sample.chords ?? []),
});

describe('the view after an edit', () => {
  test('stays as it is where nothing is gone', () => {
    expect(pruneView(view, sample, { ...sample, name: 'Renamed' })).toEqual(view);
  });

  test('keeps the very lists that are whole, so that nothing is drawn anew', () => {
    expect(pruneView(view, sample, sample).selectedKeys).toBe(view.selectedKeys);
  });

  test('drops a key that is gone from focus, selection, card and light', () => {
    const pruned = pruneView(view, sample, without({ key: 'A' }));
    expect(pruned).toMatchObject({ focusedKey: null, selectedKeys: ['B'], openCard: null });
    expect(pruned.lit).toMatchObject({ keys: [], order: [], chords: ['c1'], layers: ['signs'] });
  });

  test('a front layer that is gone gives way to the one that took its place, else to the one below', () => {
    const three: Keymap = {
      ...sample,
      layers: [...sample.layers, { id: 'third', name: 'Third', places: {} }],
    };
    const left = (id: string): Keymap => ({ ...three, layers: three.layers.filter((l) => l.id !== id) });
    expect(pruneView(view, three, left('signs')).frontLayer).toBe('third');
    expect(pruneView({ ...view, frontLayer: 'third' }, three, left('third')).frontLayer).toBe('signs');
  });

  test('light that has nothing left to shine on goes out', () => {
    const lit = { why: 'x', keys: [], chords: ['c1'], layers: [], order: [] };
    expect(pruneView({ ...view, lit }, sample, without({ chords: true })).lit).toBeNull();
  });

  test('a carried binding that is no longer there is no longer carried', () => {
    const [base, ...others] = sample.layers;
    const bare: Keymap = {
      ...sample,
      layers: [{ id: 'base', name: base?.name ?? '', places: {} }, ...others],
    };
    expect(pruneView(view, sample, bare).carried).toBeNull();
  });

  test('a carried way into a layer goes with the layer', () => {
    const carried = {
      carry: 'action',
      action: { do: 'layer', layer: 'signs', mode: 'latch' },
      label: 'Signs',
    } as const;
    expect(pruneView({ ...view, carried }, sample, without({ layer: 'signs' })).carried).toBeNull();
    expect(pruneView({ ...view, carried }, sample, sample).carried).toBe(carried);
  });

  test("a chord's card goes with the chord", () => {
    const openCard = { card: 'chord', chord: 'c1' } as const;
    expect(pruneView({ ...view, openCard }, sample, without({ chords: true })).openCard).toBeNull();
    expect(pruneView({ ...view, openCard }, sample, sample).openCard).toBe(openCard);
  });

  test('a chord being made loses its layer, and goes with one of its keys', () => {
    const draft = { keys: ['A', 'B'], windowMs: 40, layers: ['signs'], action: { do: 'nothing' } } as const;
    const making: View = { ...view, openCard: { card: 'new-chord', draft } };
    expect(pruneView(making, sample, without({ key: 'B' })).openCard).toBeNull();
    const { layers: _, ...everywhere } = draft;
    expect(pruneView(making, sample, without({ layer: 'signs' })).openCard).toEqual({
      card: 'new-chord',
      draft: everywhere,
    });
  });
});
