import { describe, expect, test } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import { keyLabel } from '../../../src/ui/board/key-label.ts';
import { design, TAB_CHORD } from './sample.ts';

const source = { keymap: design(undefined, [TAB_CHORD]), frontLayer: 'base', host: usHost };

describe('what is read out of a key', () => {
  test.each([
    ['R22', 'right index home, Base: j; held: Left Shift; chord Tab with right middle home'],
    ['LT1', 'left inner thumb, Base: held: layer Symbols while held'],
    ['L22', 'left index home, Base: falls through'],
  ])('%s: %s', (key, label) => {
    expect(keyLabel(key, source)).toBe(label);
  });

  test('is of the layer in front, and leaves out chords that are not live there', () => {
    const keymap = design(undefined, [{ ...TAB_CHORD, layers: ['base'] }]);
    expect(keyLabel('R22', { ...source, keymap, frontLayer: 'symbols' })).toBe(
      'right index home, Symbols: (',
    );
    expect(keyLabel('R24', { ...source, keymap, frontLayer: 'symbols' })).toBe(
      'right ring home, Symbols: blank',
    );
  });
});
