import { describe, expect, test } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import type { Chord } from '../../../src/core/keymap/types.ts';
import { type ChordScene, chordScenes } from '../../../src/ui/board/chord-scene.ts';
import { sharedArea } from '../../../src/ui/board/tag-places.ts';
import { design, TAB_CHORD } from './sample.ts';

function scenesOf(chords: readonly Chord[], frontLayer = 'base'): readonly ChordScene[] {
  return chordScenes({ keymap: design(undefined, chords), frontLayer, host: usHost });
}

const chordOf = (keys: readonly string[], more: Partial<Chord> = {}): Chord => ({
  ...TAB_CHORD,
  keys,
  ...more,
});

describe('chords as they are drawn', () => {
  test('one hand: one outline and a tag with what it gives and the window', () => {
    const [scene] = scenesOf([TAB_CHORD]);
    expect(scene?.outlines).toHaveLength(1);
    expect(scene?.bridge).toBeNull();
    expect(scene?.tag).toMatchObject({ gives: 'Tab', window: '45' });
    expect(scene?.label).toBe('chord Tab, 45 ms');
  });

  test('two hands: an outline for each and a bridge between them', () => {
    const [scene] = scenesOf([chordOf(['L22', 'R22'])]);
    expect(scene?.outlines).toHaveLength(2);
    expect(scene?.bridge?.from.x).toBeLessThan(0);
    expect(scene?.bridge?.to.x).toBeGreaterThan(0);
  });

  test('only chords that are live on the layer in front have a tag', () => {
    const chords = [chordOf(['R22', 'R23'], { layers: ['base'] }), chordOf(['R23', 'R24'], { id: 'c2' })];
    expect(scenesOf(chords, 'symbols').map(({ live, tag }) => [live, tag !== null])).toEqual([
      [false, false],
      [true, true],
    ]);
  });

  test('knots mark the keys only where the outline goes over another key as well', () => {
    expect(scenesOf([chordOf(['R22', 'R23'])])[0]?.knots).toEqual([]);
    expect(scenesOf([chordOf(['R22', 'R24'])])[0]?.knots).toHaveLength(2);
  });

  test('a key that the board lacks is passed over', () => {
    expect(scenesOf([chordOf(['R22', 'gone'])])[0]?.outlines).toHaveLength(1);
  });

  test('tags of many chords in one row do not lie on each other', () => {
    const pairs = ['R21', 'R22', 'R23', 'R24', 'R25'].flatMap((one, index, all) => {
      const next = all[index + 1];
      return next === undefined ? [] : [[one, next]];
    });
    const tags = scenesOf(pairs.map((keys, index) => chordOf(keys, { id: `c${index}` }))).map(
      ({ tag }) => tag,
    );
    for (const one of tags) {
      for (const other of tags) {
        if (one !== null && other !== null && one !== other) expect(sharedArea(one, other, 0)).toBe(0);
      }
    }
    expect(tags.filter((tag) => tag !== null)).toHaveLength(4);
  });

  test('a long legend is cut short on the tag, not in the label', () => {
    const action = { do: 'board' as const, label: 'Change the radio channel' };
    const [scene] = scenesOf([chordOf(['R22', 'R23'], { action })]);
    expect(scene?.tag?.gives).toBe('Change t…');
    expect(scene?.label).toBe('chord board: Change the radio channel, 45 ms');
  });
});
