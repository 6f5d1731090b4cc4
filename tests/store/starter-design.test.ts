import { describe, expect, test } from 'vitest';
import { ARRANGEMENTS } from '../../src/core/board/arrangements.ts';
import { parametricBoard } from '../../src/core/board/parametric.ts';
import { READY_BOARDS } from '../../src/core/board/ready-boards.ts';
import { usHost } from '../../src/core/host/us.ts';
import { checkKeymap } from '../../src/core/keymap/read.ts';
import type { Action, Keymap } from '../../src/core/keymap/types.ts';
import { starterDesign } from '../../src/store/starter-design.ts';

const cases = READY_BOARDS.flatMap((ready) => ARRANGEMENTS.map((arrangement) => ({ ready, arrangement })));

function started({ ready, arrangement }: (typeof cases)[number]): Keymap {
  const choices = {
    name: 'New',
    board: parametricBoard(ready.madeFrom, ready.title),
    host: { system: 'linux', layout: 'us', variant: '' },
    needs: { lists: ['ascii'], own: [], waived: [] },
    arrangement: arrangement.id,
  } as const;
  return starterDesign(choices, usHost);
}

function actionsOn(keymap: Keymap, layer: number): readonly Action[] {
  return Object.values(keymap.layers[layer]?.places ?? {}).flatMap(({ tap, hold }) =>
    [tap, hold].filter((action) => action !== undefined),
  );
}

describe.each(cases)('a new design on $ready.id with $arrangement.id', (which) => {
  const keymap = started(which);

  test('is a valid keymap', () => {
    expect(checkKeymap(keymap)).toEqual({ ok: true, value: keymap });
  });

  test('has all 26 letters once on the base layer', () => {
    const chars = actionsOn(keymap, 0).flatMap((action) => (action.do === 'char' ? [action.char] : []));
    const letters = chars.filter((char) => /^[a-z]$/.test(char)).toSorted();
    expect(letters.join('')).toBe('abcdefghijklmnopqrstuvwxyz');
    expect(new Set(chars).size).toBe(chars.length);
  });

  test('has Space, Enter, Backspace, Shift and the way into the second layer under the thumbs', () => {
    const thumbs = keymap.board.keys.filter((key) => key.finger === 'thumb');
    const actions = thumbs.flatMap(({ id }) => {
      const { tap, hold } = keymap.layers[0]?.places[id] ?? {};
      return [tap, hold].filter((action) => action !== undefined);
    });
    const codes = actions.flatMap((action) => (action.do === 'key' ? [action.code] : []));
    expect(codes).toEqual(expect.arrayContaining(['Space', 'Enter', 'Backspace', 'ShiftLeft']));
    expect(actions).toContainEqual({ do: 'layer', layer: keymap.layers[1]?.id, mode: 'while-held' });
  });

  test('has every key of the board bound, and nothing that the host cannot type', () => {
    const bound = Object.keys(keymap.layers[0]?.places ?? {});
    expect(bound.toSorted()).toEqual(keymap.board.keys.map((key) => key.id).toSorted());
    for (const action of actionsOn(keymap, 0)) {
      if (action.do === 'char') expect(usHost.routesOf(action.char)).not.toEqual([]);
    }
  });

  test('the keys that hold a layer do nothing else there', () => {
    const holders = Object.entries(keymap.layers[0]?.places ?? {}).flatMap(([key, { hold }]) =>
      hold?.do === 'layer' ? [{ key, layer: hold.layer }] : [],
    );
    expect(holders.map(({ layer }) => layer).toSorted()).toEqual(['moves', 'numbers']);
    for (const { key, layer } of holders) {
      expect(keymap.layers.find(({ id }) => id === layer)?.places[key]).toBeUndefined();
    }
  });
});
