import { describe, expect, test } from 'vitest';
import type { Carried } from '../../src/store/bench-state.ts';
import { editOfDrop } from '../../src/store/edit-of-drop.ts';
import { sample } from './sample.ts';

const char: Carried = { carry: 'action', action: { do: 'char', char: 'x' }, label: 'x' };
const binding = (layer: string, key: string): Carried => ({
  carry: 'binding',
  from: { layer, key },
  label: key,
});

describe('putting down', () => {
  test.each(['tap', 'hold'] as const)('an action is bound to the %s side that was met', (side) => {
    expect(editOfDrop(sample, 'signs', { key: 'D', side }, char)).toEqual({
      edit: 'bind',
      place: { layer: 'signs', key: 'D' },
      side,
      action: { do: 'char', char: 'x' },
    });
  });

  test('a binding moves to a free key', () => {
    expect(editOfDrop(sample, 'base', { key: 'D', side: 'tap' }, binding('base', 'A'))).toEqual({
      edit: 'move-binding',
      from: { layer: 'base', key: 'A' },
      to: { layer: 'base', key: 'D' },
    });
  });

  test('a binding changes places with one that is there already', () => {
    expect(editOfDrop(sample, 'base', { key: 'B', side: 'hold' }, binding('base', 'A'))).toEqual({
      edit: 'swap-bindings',
      one: { layer: 'base', key: 'A' },
      other: { layer: 'base', key: 'B' },
    });
  });

  test('a binding may go to another layer than it came from', () => {
    expect(editOfDrop(sample, 'signs', { key: 'B', side: 'tap' }, binding('base', 'B'))).toMatchObject({
      edit: 'move-binding',
      to: { layer: 'signs', key: 'B' },
    });
  });

  test.each([
    ['back where it came from', 'base', 'A'],
    ['from a key that has none', 'base', 'D'],
    ['from a layer that is gone', 'gone', 'A'],
    ['from a name that objects have by nature', 'base', 'toString'],
  ])('nothing comes of a binding put down %s', (_, layer, key) => {
    expect(editOfDrop(sample, 'base', { key: 'A', side: 'tap' }, binding(layer, key))).toBeNull();
  });
});
