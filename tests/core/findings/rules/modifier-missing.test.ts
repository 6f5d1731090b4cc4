import { describe, expect, it } from 'vitest';
import { modifierMissing } from '../../../../src/core/findings/rules/modifier-missing.ts';
import { chord, type Sketch, says } from '../design.ts';

const all = 'a b c d ShiftLeft ControlRight AltLeft MetaLeft i Space';
const without = (code: string, put = 'x') => ({ layers: { base: all.replace(code, put) } });
const missing = (sketch: Sketch) =>
  says(modifierMissing, sketch).map(({ data, severity }) => [data.modifier, severity]);

describe('modifier-missing', () => {
  it.each<[string, Sketch, readonly (readonly [string, string])[]]>([
    ['Shift is nowhere', without('ShiftLeft'), [['Shift', 'risky']]],
    ['Control is nowhere', without('ControlRight'), [['Control', 'risky']]],
    ['Alt is nowhere', without('AltLeft'), [['Alt', 'note']]],
    ['Meta is nowhere', without('MetaLeft'), [['Meta', 'note']]],
    ['Meta is nowhere on macOS', { ...without('MetaLeft'), system: 'macos' }, [['Meta', 'risky']]],
    ['Shift is only part of a shortcut', without('ShiftLeft', 'ShiftLeft+KeyA'), [['Shift', 'risky']]],
    [
      'Shift is the tap of a key that any press inside makes a hold',
      { ...without('ShiftLeft', 'ShiftLeft⇩Enter'), timing: { holdBy: 'press-inside' } },
      [['Shift', 'risky']],
    ],
    [
      'Shift lies on a layer that nobody can enter',
      { layers: { ...without('ShiftLeft').layers, up: 'ShiftLeft · · · · · · · · ·' } },
      [['Shift', 'risky']],
    ],
  ])('says so when %s', (_, sketch, expected) => {
    expect(missing(sketch)).toEqual(expected);
  });

  it.each<[string, Sketch]>([
    ['all four are bound', { layers: { base: all } }],
    ['Shift is a hold', without('ShiftLeft', 'x⇩ShiftRight')],
    ['Shift is a latch', without('ShiftLeft', 'ShiftLeft:latch')],
    ['Shift is a chord', { ...without('ShiftLeft'), chords: [chord('c', 'L1 L2', 45, 'ShiftLeft')] }],
    [
      'Shift is the tap of a key that any press inside makes a hold, but quiet a tap at once',
      { ...without('ShiftLeft', 'ShiftLeft⇩Enter'), timing: { holdBy: 'press-inside', quietBeforeMs: 100 } },
    ],
    [
      'Shift is the tap of a hold/tap key, on for the keys that come meanwhile',
      without('ShiftLeft', 'ShiftLeft⇩Enter'),
    ],
    [
      'Shift lies on a layer that is held',
      { layers: { base: all.replace('ShiftLeft', '@up'), up: 'ShiftLeft · · · · · · · · ·' } },
    ],
  ])('keeps quiet when %s', (_, sketch) => {
    expect(missing(sketch)).toEqual([]);
  });

  it('offers a free thumb key, else the hold of one that types no letter, else nothing', () => {
    const mend = (sketch: Sketch) => says(modifierMissing, sketch)[0]?.mends[0]?.edits[0];
    const shift = { do: 'key', code: 'ShiftLeft' };
    expect(mend(without('ShiftLeft'))).toMatchObject({ place: { key: 'RT' }, side: 'hold', action: shift });
    expect(mend({ layers: { base: without('ShiftLeft').layers.base.replace('Space', '·') } })).toMatchObject({
      place: { layer: 'base', key: 'RT' },
      side: 'tap',
      action: shift,
    });
    const full = without('ShiftLeft').layers.base.replace('i Space', '[Radio] Enter⇩@up');
    expect(mend({ layers: { base: full, up: '· · · · · · · · · ·' } })).toBeUndefined();
  });
});
