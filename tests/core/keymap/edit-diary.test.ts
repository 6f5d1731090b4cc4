import { describe, expect, test } from 'vitest';
import { readKeymap } from '../../../src/core/keymap/read.ts';
import { brokenReferences } from '../../../src/core/keymap/references.ts';
import type { DiaryNote, Keymap } from '../../../src/core/keymap/types.ts';
import { writeKeymap } from '../../../src/core/keymap/write.ts';
import { edited, refusal } from './edits.ts';
import { chord, layer, small } from './small.ts';

function note(id: string, more: Partial<DiaryNote> = {}): DiaryNote {
  return {
    id,
    text: 'too far',
    writtenAt: '2026-05-04T18:30:00Z',
    state: '9f86d081',
    tickedOff: false,
    ...more,
  };
}

const start: Keymap = {
  ...small(
    [layer('base'), layer('sym')],
    [chord('c1', ['k1', 'k2']), chord('c2', ['k2', 'k3'], { layers: ['sym'] })],
  ),
  diary: [
    note('n1', { keys: ['k1', 'k2'], layer: 'sym' }),
    note('n2', { chord: 'c2' }),
    note('n3', { keys: ['k5'], tickedOff: true }),
  ],
};
const pins = ({ diary = [] }: Keymap) =>
  diary.map(({ id, keys, layer: on, chord: of }) => {
    const about = [keys?.join(), on, of].filter((one) => one !== undefined);
    return [`${id}:`, ...about].join(' ');
  });

describe('notes of the diary', () => {
  test('are added after the others, changed, ticked off, taken up again and deleted', () => {
    const { keymap, title } = edited(start, {
      edit: 'add-diary-note',
      note: note('n4', { text: 'R comes as a chord' }),
    });
    expect(title).toBe('Note “R comes as a chord”');
    expect(pins(keymap)).toEqual([...pins(start), 'n4:']);
    const to = { text: 'too near', keys: ['k3'], layer: null };
    const changed = edited(keymap, { edit: 'change-diary-note', note: 'n1', to }).keymap;
    expect(changed.diary?.[0]).toEqual(note('n1', { text: 'too near', keys: ['k3'] }));
    const ticked = edited(changed, { edit: 'tick-diary-note', note: 'n1', tickedOff: true }).keymap;
    expect(ticked.diary?.[0]?.tickedOff).toBe(true);
    expect(edited(ticked, { edit: 'tick-diary-note', note: 'n1', tickedOff: true }).keymap).toBe(ticked);
    expect(edited(ticked, { edit: 'tick-diary-note', note: 'n1', tickedOff: false }).keymap).toEqual(changed);
    expect(pins(edited(ticked, { edit: 'delete-diary-note', note: 'n2' }).keymap)).toEqual([
      'n1: k3',
      'n3: k5',
      'n4:',
    ]);
  });

  test('with the last note the diary goes', () => {
    const one = { ...start, diary: [note('n1')] };
    expect(edited(one, { edit: 'delete-diary-note', note: 'n1' }).keymap.diary).toBeUndefined();
  });

  test.each([
    ['n1 again', { edit: 'add-diary-note', note: note('n1') }],
    ['a key that is not there', { edit: 'add-diary-note', note: note('n4', { keys: ['k9'] }) }],
    ['a key twice', { edit: 'add-diary-note', note: note('n4', { keys: ['k1', 'k1'] }) }],
    ['a layer that is not there', { edit: 'change-diary-note', note: 'n1', to: { layer: 'up' } }],
    ['a chord that is not there', { edit: 'change-diary-note', note: 'n1', to: { chord: 'c9' } }],
    ['two lines', { edit: 'change-diary-note', note: 'n1', to: { text: 'a\nb' } }],
    ['no time', { edit: 'add-diary-note', note: note('n4', { writtenAt: '2026-13-04T18:30:00Z' }) }],
    ['no such note', { edit: 'tick-diary-note', note: 'n9', tickedOff: true }],
    ['no such note', { edit: 'delete-diary-note', note: 'n9' }],
  ] as const)('refuse %s', (_, edit) => {
    expect(refusal(start, edit)).toMatch(/\.$/);
  });
});

describe('a note outlives what it is about', () => {
  test.each([
    ['a key', { edit: 'delete-key', key: 'k1' }, ['n1: k2 sym', 'n2: c2', 'n3: k5']],
    ['its only key', { edit: 'delete-key', key: 'k5' }, ['n1: k1,k2 sym', 'n2: c2', 'n3:']],
    ['a chord', { edit: 'delete-chord', chord: 'c2' }, ['n1: k1,k2 sym', 'n2:', 'n3: k5']],
    [
      'a layer, and a chord that goes with it',
      { edit: 'delete-layer', layer: 'sym' },
      ['n1: k1,k2', 'n2:', 'n3: k5'],
    ],
    [
      'a key, and a chord that goes with it',
      { edit: 'delete-key', key: 'k3' },
      ['n1: k1,k2 sym', 'n2:', 'n3: k5'],
    ],
  ] as const)('%s goes', (_, edit, left) => {
    const { keymap, alongside } = edited(start, edit);
    expect(pins(keymap)).toEqual(left);
    expect(alongside.filter((sentence) => sentence.includes('of the diary'))).toHaveLength(1);
    expect(brokenReferences(keymap)).toEqual([]);
  });

  test('pins that lead nowhere are found, by the reader too', () => {
    const broken = { ...start, diary: [note('n1', { keys: ['k1', 'k9'], layer: 'up', chord: 'c9' })] };
    const found = brokenReferences(broken);
    expect(found.map(({ names, id, at }) => `${names} ${id} ${at.where}`)).toEqual([
      'key k9 note-key',
      'layer up note-layer',
      'chord c9 note-chord',
    ]);
    const read = readKeymap(writeKeymap(broken));
    expect(!read.ok && read.problem.map(({ path }) => path)).toEqual([
      'diary[0].keys[1]',
      'diary[0].layer',
      'diary[0].chord',
    ]);
  });
});
