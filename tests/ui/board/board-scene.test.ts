import { describe, expect, test } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import { applyEdit } from '../../../src/core/keymap/apply-edit.ts';
import type { Edit } from '../../../src/core/keymap/edit.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { boardScene, keptScene, keysInFrame } from '../../../src/ui/board/board-scene.ts';
import { design, TAB_CHORD } from './sample.ts';

const sceneOf = (keymap: Keymap) => boardScene({ keymap, frontLayer: 'base', host: usHost });

function after(keymap: Keymap, edit: Edit): Keymap {
  const outcome = applyEdit(keymap, edit);
  if (!outcome.ok) throw new Error(outcome.problem);
  return outcome.value.keymap;
}

describe('a board as it is drawn', () => {
  test('has every key and chord, and a frame with air around the caps', () => {
    const scene = sceneOf(design(undefined, [TAB_CHORD]));
    expect(scene.keys).toHaveLength(36);
    expect(scene.chords).toHaveLength(1);
    for (const { x, y } of scene.keys) {
      expect(x).toBeGreaterThan(scene.frame.x + 15);
      expect(x).toBeLessThan(scene.frame.x + scene.frame.width - 15);
      expect(y).toBeGreaterThan(scene.frame.y + 15);
    }
  });

  test('after an edit only the keys that changed are new', () => {
    const before = sceneOf(design(undefined, [TAB_CHORD]));
    const edited = after(design(undefined, [TAB_CHORD]), {
      edit: 'bind',
      place: { layer: 'symbols', key: 'L24' },
      side: 'tap',
      action: { do: 'char', char: '%' },
    });
    const now = keptScene(before, sceneOf(edited));
    const renewed = now.keys.filter((key, index) => key !== before.keys[index]).map(({ id }) => id);
    expect(renewed).toEqual(['L24']);
    expect(now.chords[0]).toBe(before.chords[0]);
    expect(now.frame).toBe(before.frame);
  });

  test('without a scene before it stands as it is', () => {
    const scene = sceneOf(design());
    expect(keptScene(null, scene)).toBe(scene);
  });

  test('a lasso catches the keys whose middles it holds', () => {
    const keys = [
      { id: 'A', x: 0, y: 0 },
      { id: 'B', x: 10, y: 10 },
      { id: 'C', x: 30, y: 0 },
    ];
    expect(keysInFrame(keys, { x: -1, y: -1, width: 11, height: 11 })).toEqual(['A', 'B']);
  });
});
