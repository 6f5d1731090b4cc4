import { describe, expect, test } from 'vitest';
import { needText } from '../../../src/core/keymap/need.ts';
import type { Keymap, Needs } from '../../../src/core/keymap/types.ts';
import { charNeeds } from '../../../src/core/needs/need-list.ts';
import { needsOfKeymap, sourcedNeedsOf } from '../../../src/core/needs/needs-of.ts';

const bare: Keymap = {
  format: 'neutral-keymap',
  version: 1,
  name: 'One key',
  board: {
    name: 'one',
    keys: [
      { id: 'K', x: 0, y: 0, rotation: 0, width: 17, height: 17, hand: 'left', finger: 'index', home: true },
    ],
  },
  hosts: [{ system: 'linux', layout: 'us', variant: '' }],
  layers: [{ id: 'base', name: 'Base', places: {} }],
};

const withNeeds = (needs: Partial<Needs>): Keymap => ({
  ...bare,
  needs: { lists: [], own: [], waived: [], ...needs },
});

describe('the needs of a design', () => {
  test('none where the document says nothing', () => {
    expect(sourcedNeedsOf(bare)).toEqual({ needs: [], unknownLists: [] });
  });

  test('list by list and then its own, each once, with the lists that ask for it', () => {
    const keymap = withNeeds({
      lists: ['function-keys', 'modifiers', 'function-keys'],
      own: ['≥', 'key:F5'],
    });
    const { needs } = sourcedNeedsOf(keymap);
    expect(needs.length).toBe(12 + 8 + 1);
    expect(needs[4]).toEqual({ need: { kind: 'key', code: 'F5' }, from: ['function-keys'] });
    expect(needs.at(-1)).toEqual({ need: { kind: 'char', char: '≥' }, from: [] });
  });

  test('a need of two lists names both', () => {
    const { needs } = sourcedNeedsOf(withNeeds({ lists: ['ascii', 'json'] }));
    expect(needs.find(({ need }) => needText(need) === '{')?.from).toEqual(['ascii', 'json']);
  });

  test('less those let off, however they are spelled', () => {
    const own = ['\u00fc', 'shortcut:Control+Alt+Delete', 'key:Pause'];
    const waived = ['u\u0308', 'shortcut:Alt+Control+Delete'].map((need) => ({ need, why: 'never used' }));
    expect(needsOfKeymap(withNeeds({ own, waived })).map(needText)).toEqual(['key:Pause']);
  });

  test('a list that is not known is reported', () => {
    const { needs, unknownLists } = sourcedNeedsOf(withNeeds({ lists: ['nowhere', 'media'] }));
    expect([needs.length, unknownLists]).toEqual([9, ['nowhere']]);
  });

  test('lists may come from elsewhere', () => {
    const list = { name: 'river', title: 'River', description: 'Signs.', needs: charNeeds('≥≤') };
    const find = (name: string) => (name === 'river' ? list : undefined);
    expect(needsOfKeymap(withNeeds({ lists: ['river'] }), find).map(needText)).toEqual(['≥', '≤']);
  });
});
