import { describe, expect, it } from 'vitest';
import { factsOf } from '../../../../src/core/findings/facts.ts';
import { referenceBroken } from '../../../../src/core/findings/rules/reference-broken.ts';
import { usHost } from '../../../../src/core/host/us.ts';
import { edited } from '../../keymap/edits.ts';
import { small } from '../../keymap/small.ts';
import { chord, inShort, type Sketch, says } from '../design.ts';

const base = 'a b c d e f g h i j';
const board10 = { layers: { base } };

describe('reference-broken', () => {
  it('takes the pins of notes off what is gone, and leaves the note', () => {
    const note = {
      id: 'n1',
      text: 'too far',
      writtenAt: '2026-05-04T18:30:00Z',
      state: 'a',
      tickedOff: false,
    };
    const pinned = { ...note, keys: ['k1', 'k9'], layer: 'up', chord: 'c9' };
    const broken = { ...small(), diary: [pinned] };
    const found = referenceBroken.check(factsOf(broken, usHost));
    expect(found.map(({ messageId }) => messageId)).toEqual(['note-key', 'note-layer', 'note-chord']);
    const edits = found.flatMap(({ mends }) => mends[0]?.edits ?? []);
    const { keymap: mended } = edited(broken, { edit: 'several', title: 'Take all of them', edits });
    expect(mended.diary).toEqual([{ ...note, keys: ['k1'] }]);
  });

  it.each<[string, Sketch, readonly string[], string]>([
    [
      'a chord names a key that is gone',
      { ...board10, chords: [chord('c', 'L1 L2 X9', 65, 'Tab')] },
      ['chord-key |  |  | c'],
      'change-chord',
    ],
    [
      'one of a chord’s two keys is gone',
      { ...board10, chords: [chord('c', 'L1 X9', 45, 'Tab')] },
      ['chord-key |  |  | c'],
      'delete-chord',
    ],
    [
      'a chord is live on a layer that is gone',
      { ...board10, chords: [chord('c', 'L1 L2', 45, 'Tab', ['base', 'gone'])] },
      ['chord-layer |  |  | c'],
      'change-chord',
    ],
    [
      'a chord leads to a layer that is gone',
      { ...board10, chords: [chord('c', 'L1 L2', 45, '@gone')] },
      ['chord-action |  |  | c'],
      'delete-chord',
    ],
    [
      'a key leads to a layer that is gone',
      { layers: { base: 'a⇩@gone b c d e f g h i j' } },
      ['action | L1 | base | '],
      'unbind',
    ],
    [
      'a layer comes on with one that is gone',
      { layers: { base, up: '· · · · · · · · · ·' }, onWhile: { up: ['base', 'gone'] } },
      ['on-while |  | up | '],
      'set-on-while',
    ],
  ])('says so when %s', (_, sketch, expected, edit) => {
    const found = says(referenceBroken, sketch);
    expect(inShort(found)).toEqual(expected);
    expect(found[0]?.mends[0]?.edits[0]?.edit).toBe(edit);
    expect(found[0]?.severity).toBe('broken');
  });

  it.each<[string, Sketch]>([
    ['all keys and layers are there', { ...board10, chords: [chord('c', 'L1 L2', 45, 'Tab', ['base'])] }],
    ['a key leads to a layer that is there', { layers: { base: '@up b c d e f g h i j', up: base } }],
  ])('keeps quiet when %s', (_, sketch) => {
    expect(says(referenceBroken, sketch)).toEqual([]);
  });
});
