import { expect, test } from 'vitest';
import { openNotesAbout, openNotesOfLayer } from '../../../src/core/keymap/open-notes.ts';
import { stateDigest } from '../../../src/core/rehearse/state-digest.ts';
import { sample } from '../rehearse/played.ts';

const note = (id: string, more: object) => ({
  id,
  text: id,
  writtenAt: '2026-05-04T18:30:00Z',
  state: 'x',
  tickedOff: false,
  ...more,
});

test('a key has the open notes pinned to it and to its chords', () => {
  const keymap = {
    ...sample,
    diary: [
      note('own', { keys: ['R', 'A'] }),
      note('chord', { chord: 'rt' }),
      note('layer', { layer: 'digits' }),
      note('done', { keys: ['R'], tickedOff: true }),
    ],
  };
  const about = (key: string) => openNotesAbout(keymap, key).map(({ id }) => id);
  expect([about('R'), about('T'), about('A'), about('S')]).toEqual([
    ['own', 'chord'],
    ['chord'],
    ['own'],
    [],
  ]);
  expect(openNotesAbout(sample, 'R')).toEqual([]);
  const ofLayer = (layer: string) => openNotesOfLayer(keymap, layer).map(({ id }) => id);
  expect([ofLayer('digits'), ofLayer('base'), openNotesOfLayer(sample, 'digits')]).toEqual([
    ['layer'],
    [],
    [],
  ]);
});

test('the digest of a design changes with what presses do, not with its name, notes or diary', () => {
  const before = stateDigest(sample);
  expect(before).toMatch(/^[0-9a-f]{16}$/);
  expect(stateDigest({ ...sample, name: 'Other', notes: 'n', diary: [note('one', {})] })).toBe(before);
  expect(stateDigest({ ...sample, timing: { holdAfterMs: 201 } })).not.toBe(before);
});
