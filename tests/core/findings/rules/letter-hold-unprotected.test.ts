import { describe, expect, it } from 'vitest';
import { letterHoldUnprotected } from '../../../../src/core/findings/rules/letter-hold-unprotected.ts';
import { inShort, type Sketch, says } from '../design.ts';

const layers = { base: 'a⇩ShiftLeft b c d e f g h i Space⇩ControlLeft' };

/** Shares of presses and pairs: computed from the 136M Keystrokes data (Dhakal and others, CHI 2018), average typists. */
describe('letter-hold-unprotected', () => {
  it.each<[string, Sketch, readonly string[]]>([
    ['time alone decides', { layers }, ['lasts-long | L1 | base | ']],
    ['a tap inside decides', { layers, timing: { holdBy: 'tap-inside' } }, ['lasts-long | L1 | base | ']],
    [
      'a press inside decides',
      { layers, timing: { holdBy: 'press-inside' } },
      ['press-inside | L1 | base | '],
    ],
    [
      'the letter is a character',
      { layers: { base: 'é⇩@up b c d e f g h i j', up: '· x · · · · · · · ·' } },
      ['lasts-long | L1 | base | '],
    ],
  ])('says so when %s', (_, sketch, expected) => {
    expect(inShort(says(letterHoldUnprotected, sketch))).toEqual(expected);
  });

  it.each<[string, Sketch]>([
    ['quiet is asked for', { layers, timing: { quietBeforeMs: 120 } }],
    ['the same hand taps', { layers, timing: { sameHandTaps: true } }],
    ['there is no hold', { layers: { base: 'a b c d e f g h i j' } }],
    ['what has the hold is no letter', { layers: { base: '1⇩ShiftLeft b c d e f g h i Space⇩ControlLeft' } }],
    ['the hold is blank', { layers: { base: 'a⇩∅ b c d e f g h i j' } }],
    ['the layer is out of reach', { layers: { base: 'a b c d e f g h i j', up: layers.base } }],
  ])('keeps quiet when %s', (_, sketch) => {
    expect(says(letterHoldUnprotected, sketch)).toEqual([]);
  });

  it.each([
    [150, 59],
    [175, 59],
    [200, 23],
    [225, 13],
    [250, 3],
    [400, 3],
  ])('a hold after %d ms: %d of 1,000 presses last that long', (holdAfterMs, perThousand) => {
    const [found] = says(letterHoldUnprotected, { layers, timing: { holdAfterMs } });
    expect(found).toMatchObject({ severity: 'note', data: { holdAfterMs, perThousand } });
  });

  it('offers quiet before on that binding alone', () => {
    const [found] = says(letterHoldUnprotected, { layers });
    expect(found?.mends[0]?.edits).toEqual([
      { edit: 'set-binding-timing', place: { layer: 'base', key: 'L1' }, timing: { quietBeforeMs: 150 } },
    ]);
  });

  it('offers nothing where a need is typed by holding that letter after another press: it would have to wait', () => {
    const sketch = {
      layers: { base: '@up b⇩ShiftLeft c d e f g h i j', up: '· · 1 · · · · · · ·' },
      needs: ['!'],
    };
    expect(says(letterHoldUnprotected, sketch).map(({ mends }) => mends.length)).toEqual([1]);
    const late = {
      ...sketch,
      layers: { base: '@up b c d e f g h i j', up: '· b⇩@far · · · · · · · ·', far: '· · ! · · · · · · ·' },
    };
    expect(says(letterHoldUnprotected, late).map(({ mends }) => mends.length)).toEqual([0]);
  });
});
