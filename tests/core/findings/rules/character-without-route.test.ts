import { describe, expect, it } from 'vitest';
import { factsOf } from '../../../../src/core/findings/facts.ts';
import { characterWithoutRoute } from '../../../../src/core/findings/rules/character-without-route.ts';
import { usHost } from '../../../../src/core/host/us.ts';
import type { Action, Keymap } from '../../../../src/core/keymap/types.ts';
import { chord, design, inShort, type Sketch, says } from '../design.ts';

const text = (typed: string): Action => ({ do: 'text', text: typed });
const withText = (typed: string): Keymap => {
  const plain = design({ layers: { base: 'a b c d e f g h i j' } });
  return { ...plain, layers: [{ id: 'base', name: 'Base', places: { L1: { tap: text(typed) } } }] };
};
const saysOfText = (typed: string) => characterWithoutRoute.check(factsOf(withText(typed), usHost));

/** What XKB's `us` types: its 47 keys at two levels, no dead keys. */
describe('character-without-route', () => {
  it.each<[string, Sketch, readonly string[]]>([
    ['a tap', { layers: { base: '≥ b c d e f g h i j' } }, ['no-strokes | L1 | base | ']],
    ['a hold', { layers: { base: 'a⇩ß b c d e f g h i j' } }, ['no-strokes | L1 | base | ']],
    [
      'a chord',
      { layers: { base: 'a b c d e f g h i j' }, chords: [chord('c', 'L1 L2', 45, 'é')] },
      ['no-strokes |  |  | c'],
    ],
  ])('says so of %s', (_, sketch, expected) => {
    expect(inShort(says(characterWithoutRoute, sketch))).toEqual(expected);
  });

  it.each(['a', 'Q', '~', '"', '7'])('keeps quiet of %s', (char) => {
    expect(says(characterWithoutRoute, { layers: { base: `${char} b c d e f g h i j` } })).toEqual([]);
  });

  it('looks at every character of a text', () => {
    expect(saysOfText('naïve café')[0]?.data.need).toBe('ïé');
    expect(saysOfText('plain words, 100 %')).toEqual([]);
  });

  it('offers to leave the characters out of a text, else to blank the key, so that nothing else shows through', () => {
    const place = { layer: 'base', key: 'L1' };
    const mend = (typed: string) => saysOfText(typed)[0]?.mends[0]?.edits;
    expect(mend('café')).toEqual([{ edit: 'bind', place, side: 'tap', action: text('caf') }]);
    expect(mend('é')).toEqual([{ edit: 'bind', place, side: 'tap', action: { do: 'nothing' } }]);
  });
});
