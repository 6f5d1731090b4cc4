import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import type { BoardKey, Keymap, LayerId } from '../../../src/core/keymap/types.ts';
import { textWidth } from '../../../src/ui/board/fit-text.ts';
import { type KeyScene, keyScene } from '../../../src/ui/board/key-scene.ts';
import { board36, char, design, layer } from './sample.ts';

function keyOf(id: string): BoardKey {
  const key = board36().keys.find((each) => each.id === id);
  if (key === undefined) throw new Error(`no key ${id}`);
  return key;
}

function sceneOf(id: string, frontLayer: LayerId = 'base', keymap: Keymap = design()): KeyScene {
  return keyScene(keyOf(id), { keymap, frontLayer, host: usHost });
}

describe('a key as it is drawn', () => {
  test('lies where the board has it', () => {
    const { x, y, rotation, width, height, home } = keyOf('RT1');
    expect(sceneOf('RT1')).toMatchObject({ x, y, rotation, width, height, home });
  });

  test('shows the tap large and the hold under a line, the other layer on its rung', () => {
    const scene = sceneOf('R22');
    expect(scene.tap?.lines).toEqual(['j']);
    expect(scene.hold?.lines).toEqual(['Shift']);
    expect(scene.holdLine?.y).toBeGreaterThan(scene.tap?.y ?? 99);
    expect(scene.hold?.y).toBeGreaterThan(scene.holdLine?.y ?? 99);
    expect(scene.rungs.map((rung) => [rung.layer, rung.front, rung.glyph?.lines[0]])).toEqual([
      [0, true, undefined],
      [1, false, '('],
    ]);
  });

  test('a layer keeps its rung, whichever is in front', () => {
    const places = (front: LayerId) => sceneOf('R22', front).rungs.map(({ layer, x, y }) => [layer, x, y]);
    expect(places('symbols')).toEqual(places('base'));
  });

  test('higher layers lie on higher rungs', () => {
    const [base, symbols] = sceneOf('R22').rungs;
    expect(symbols?.y).toBeLessThan(base?.y ?? 0);
  });

  test.each([
    ['R22', 'symbols', 'own', '('],
    ['R24', 'symbols', 'blank', undefined],
    ['R23', 'symbols', 'falls', 'k'],
    ['R25', 'symbols', 'falls', undefined],
    ['R25', 'base', 'falls', undefined],
  ] as const)('%s with %s in front: %s, showing %s', (key, front, standing, shown) => {
    const scene = sceneOf(key, front);
    expect(scene.standing).toBe(standing);
    expect(scene.tap?.lines[0]).toBe(shown);
    expect(scene.bound).toBe(standing !== 'falls');
  });

  test('falls through only to layers that are on with the one in front', () => {
    const layers = [
      layer('base', 'Base', { R22: char('a') }),
      layer('one', 'One', { R22: char('b') }),
      layer('two', 'Two'),
    ];
    expect(sceneOf('R22', 'two', design(layers)).tap?.lines).toEqual(['a']);
    const three = { ...layer('three', 'Three'), onWhile: ['one', 'two'] };
    expect(sceneOf('R22', 'three', design([...layers, three])).tap?.lines).toEqual(['b']);
  });

  test('a hold that leads to a layer carries that layer', () => {
    expect(sceneOf('LT1').hold?.leadsTo).toBe(1);
    expect(sceneOf('LT1').tap).toBeNull();
  });

  test('without other layers there is no ladder and the glyph stands in the middle', () => {
    const scene = sceneOf('R22', 'base', design([layer('base', 'Base', { R22: char('a') })]));
    expect(scene.rungs).toEqual([]);
    expect(scene.tap?.x).toBeCloseTo(0, 9);
  });

  const words = fc.string({ unit: 'grapheme-ascii', minLength: 1, maxLength: 20 });
  test.prop([fc.array(words, { minLength: 1, maxLength: 32 }), fc.nat()], { numRuns: 300 })(
    'nothing sticks out of the cap, however many layers and long legends',
    (labels, front) => {
      const layers = labels.map((label, index) => {
        const action = { do: 'board' as const, label: label.trim() || 'x' };
        return layer(`l${index}`, `L ${index}`, { R22: { tap: action, hold: action } });
      });
      const key = keyOf('R22');
      const scene = sceneOf('R22', `l${front % layers.length}`, design(layers));
      const glyphs = [scene.tap, scene.hold, ...scene.rungs.map((rung) => rung.glyph)];
      for (const glyph of glyphs) {
        if (glyph === null) continue;
        const half = (Math.max(...glyph.lines.map(textWidth)) * glyph.size) / 2;
        expect(Math.abs(glyph.x) + half).toBeLessThanOrEqual(key.width / 2);
        expect(Math.abs(glyph.y) + (glyph.size * glyph.lines.length) / 2).toBeLessThanOrEqual(key.height / 2);
      }
      for (const rung of scene.rungs) {
        expect(rung.y).toBeGreaterThanOrEqual(-key.height / 2);
        expect(rung.y + rung.height).toBeLessThanOrEqual(key.height / 2);
      }
    },
  );
});
