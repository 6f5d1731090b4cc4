import { describe, expect, test } from 'vitest';
import { edited, refusal } from './edits.ts';
import { A, B, boardKey, chord, layer, small } from './small.ts';

const start = small(
  [layer('base', { k1: { tap: A }, k2: { tap: B } }), layer('sym', { k1: { hold: B } })],
  [
    chord('two', ['k1', 'k2'], { name: 'Two' }),
    chord('three', ['k1', 'k3', 'k4']),
    chord('alike', ['k4', 'k3'], { layers: ['sym'] }),
    chord('apart', ['k2', 'k5']),
  ],
);

describe('delete-key', () => {
  const outcome = edited(start, { edit: 'delete-key', key: 'k1' });

  test('takes its bindings along on all layers', () => {
    expect(outcome.keymap.board.keys.map(({ id }) => id)).toEqual(['k2', 'k3', 'k4', 'k5']);
    expect(outcome.keymap.layers).toEqual([layer('base', { k2: { tap: B } }), layer('sym')]);
  });

  test('takes it out of chords; a chord of fewer than two keys goes', () => {
    expect(outcome.keymap.chords?.map(({ id, keys }) => [id, ...keys])).toEqual([
      ['three', 'k3', 'k4'],
      ['alike', 'k4', 'k3'],
      ['apart', 'k2', 'k5'],
    ]);
  });

  test('says so, and which chords are now alike', () => {
    expect(outcome.title).toBe('Delete the key k1');
    expect(outcome.alongside).toEqual([
      'Took away 2 bindings of k1.',
      'Deleted the chord Two, which lost k1.',
      'Took k1 out of the chord three.',
      'The chords three and alike have the same keys now: only the first of them comes.',
    ]);
  });

  test('chords that were alike before, or never live together, are not told of', () => {
    const others = small(
      [layer('base'), layer('sym')],
      [
        chord('before', ['k2', 'k3']),
        chord('too', ['k2', 'k3']),
        chord('here', ['k3', 'k4', 'k1'], { layers: ['base'] }),
        chord('there', ['k3', 'k4'], { layers: ['sym'] }),
      ],
    );
    expect(edited(others, { edit: 'delete-key', key: 'k1' }).alongside).toEqual([
      'Took k1 out of the chord here.',
    ]);
  });

  test('leaves no parameters behind from which another board would be made', () => {
    const madeFrom = {
      columns: [{ finger: 'index', keys: 3, homeRow: 1, staggerMm: 0, splayDeg: 0 }],
      pitchXMm: 18,
      pitchYMm: 17,
      capGapMm: 1,
      thumb: { keys: 2, radiusMm: 80, inwardsMm: 10, downMm: 40, turnDeg: 10, stepDeg: 12 },
      gapMm: 60,
      turnDeg: 10,
    } as const;
    const parametric = { ...small(), board: { ...small().board, madeFrom } };
    const apart = edited(parametric, { edit: 'delete-key', key: 'k5' });
    expect(apart.keymap.board).not.toHaveProperty('madeFrom');
    expect(apart.alongside).toEqual(['The board can no longer be changed by its parameters.']);
  });

  test('of a key that is not there, or of the last one, is refused', () => {
    expect(refusal(start, { edit: 'delete-key', key: 'k9' })).toBe('The board has no key with the id "k9".');
    const one = { ...small(), board: { name: 'One', keys: [boardKey('k1', 0)] } };
    expect(refusal(one, { edit: 'delete-key', key: 'k1' })).toBe('A board has one key at least.');
  });
});

describe('set-board', () => {
  test('with the same keys in other places touches nothing else', () => {
    const board = { name: 'Moved', keys: ['k5', 'k4', 'k3', 'k2', 'k1'].map(boardKey) };
    const outcome = edited(start, { edit: 'set-board', board });
    expect(outcome.keymap).toEqual({ ...start, board });
    expect(outcome.title).toBe('Change the board to Moved');
    expect(outcome.alongside).toEqual([]);
  });

  test('drops what lost its key and says how much', () => {
    const board = { name: 'Less', keys: ['k3', 'k4', 'n1'].map(boardKey) };
    const outcome = edited(start, { edit: 'set-board', board });
    expect(outcome.keymap.layers).toEqual([layer('base'), layer('sym')]);
    expect(outcome.keymap.chords?.map(({ id }) => id)).toEqual(['three', 'alike']);
    expect(outcome.alongside).toEqual([
      'Took away 3 bindings of k1, k2.',
      'Deleted the chord Two, which lost k1, k2.',
      'Took k1 out of the chord three.',
      'Deleted the chord apart, which lost k2, k5.',
      'The chords three and alike have the same keys now: only the first of them comes.',
    ]);
  });

  test('keys that become others take bindings, chords and notes along, whatever their ids were', () => {
    const note = { text: 'stiff', writtenAt: '2026-05-04T18:30:00Z', state: 's1', tickedOff: false };
    const noted = {
      ...start,
      diary: [
        { id: 'n1', ...note, keys: ['k1', 'k5'] },
        { id: 'n2', ...note, keys: ['k5'] },
      ],
    };
    const board = { name: 'Turned round', keys: ['k1', 'k2', 'k3', 'new'].map(boardKey) };
    // k1 and k2 change places, k5 goes although nothing else takes it, and k3's old id stands for nothing of its own.
    const became = { k1: 'k2', k2: 'k1', k3: 'new', k4: 'k3' };
    const outcome = edited(noted, { edit: 'set-board', board, became });
    expect(outcome.keymap.layers).toEqual([
      layer('base', { k1: { tap: B }, k2: { tap: A } }),
      layer('sym', { k2: { hold: B } }),
    ]);
    expect(outcome.keymap.chords?.map(({ id, keys }) => [id, ...keys])).toEqual([
      ['two', 'k2', 'k1'],
      ['three', 'k2', 'new', 'k3'],
      ['alike', 'k3', 'new'],
    ]);
    expect(outcome.keymap.diary).toEqual([
      { id: 'n1', ...note, keys: ['k2'] },
      { id: 'n2', ...note },
    ]);
    expect(outcome.alongside).toEqual([
      'Deleted the chord apart, which lost k5.',
      '2 notes of the diary lost what they were pinned to.',
    ]);
  });

  test('is refused where a key is not there, or two would be one', () => {
    const board = { name: 'Two', keys: ['k1', 'k2'].map(boardKey) };
    const because = (became: Record<string, string>) => refusal(start, { edit: 'set-board', board, became });
    expect(because({ k9: 'k1' })).toBe('The board has no key with the id "k9".');
    expect(because({ k1: 'k3' })).toBe('The new board has no key with the id "k3".');
    expect(because({ k1: 'k2', k2: 'k2' })).toBe('Two keys would become the key "k2".');
  });

  test('names six lost keys and counts the rest', () => {
    const wide = small([layer('base', Object.fromEntries(ids(8).map((id) => [id, { tap: A }])))]);
    const eight = { ...wide, board: { name: 'Eight', keys: [...ids(8), 'last'].map(boardKey) } };
    const outcome = edited(eight, { edit: 'set-board', board: { name: 'One', keys: [boardKey('last', 0)] } });
    expect(outcome.alongside).toEqual(['Took away 8 bindings of n0, n1, n2, n3, n4, n5 and 2 more.']);
  });

  test('with one id twice is refused', () => {
    const board = { name: 'Twice', keys: ['k1', 'k1'].map(boardKey) };
    expect(refusal(start, { edit: 'set-board', board })).toBe(
      'board.keys[1].id: found "k1" again, expected an id that is used once.',
    );
  });

  test('beyond the limit is refused', () => {
    expect(refusal(start, { edit: 'set-board', board: { name: 'Many', keys: ids(201).map(boardKey) } })).toBe(
      'board.keys: found a list of 201, expected 200 items at most.',
    );
  });
});

function ids(count: number): string[] {
  return Array.from({ length: count }, (_, index) => `n${index}`);
}
