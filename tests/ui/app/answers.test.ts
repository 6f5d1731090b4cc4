import { describe, expect, test } from 'vitest';
import { PITCHES } from '../../../src/core/board/pitches.ts';
import { READY_BOARDS } from '../../../src/core/board/ready-boards.ts';
import { needListNamed } from '../../../src/core/needs/need-lists.ts';
import {
  boardOf,
  charactersOf,
  choicesOf,
  firstAnswers,
  hostKey,
  systemOf,
  withHost,
  withSystem,
} from '../../../src/ui/app/new-design/answers.ts';

test.each([
  ['Mozilla/5.0 (X11; Linux x86_64)', 'linux'],
  ['Mozilla/5.0 (Windows NT 10.0; Win64; x64)', 'windows'],
  ['Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7)', 'macos'],
  ['something else', 'linux'],
])('%o runs on %s', (agent, system) => {
  expect(systemOf(agent)).toBe(system);
});

test('every list that the dialog opens with is there', () => {
  for (const system of ['linux', 'macos'] as const) {
    for (const list of firstAnswers(system).lists)
      expect(needListNamed(list)?.needs.length).toBeGreaterThan(0);
  }
});

describe('another system', () => {
  test('brings its own shortcuts in place of the others', () => {
    const { lists } = withSystem(firstAnswers('linux'), 'macos');
    expect(lists).toContain('shortcuts-macos');
    expect(lists).not.toContain('shortcuts');
  });

  test('brings none to somebody who wanted none, and none twice', () => {
    expect(withSystem({ ...firstAnswers('linux'), lists: ['ascii'] }, 'macos').lists).toEqual(['ascii']);
    const both = { ...firstAnswers('linux'), lists: ['shortcuts', 'shortcuts-macos'] };
    expect(withSystem(both, 'macos').lists).toEqual(['shortcuts-macos']);
  });
});

test.each([
  ['us', '', 'qwerty'],
  ['de', '', 'qwertz'],
  ['ch', 'fr', 'qwertz'],
  ['fr', 'mac', 'azerty'],
  ['be', '', 'azerty'],
  ['us', 'dvorak', 'dvorak'],
  ['pl', '', 'qwerty'],
])('the host layout %s %s starts with %s', (layout, variant, arrangement) => {
  expect(withHost(firstAnswers('linux'), { layout, variant })).toMatchObject({
    host: { layout, variant },
    arrangement,
  });
});

test('hosts are told apart by layout and variant', () => {
  expect(hostKey({ layout: 'us', variant: '' })).toBe('us');
  expect(hostKey({ layout: 'us', variant: 'mac' })).toBe('us mac');
});

test.each(READY_BOARDS.flatMap(({ id, keys }) => PITCHES.map((pitch) => [id, pitch.id, keys] as const)))(
  'the board %s at %s has its %d keys',
  (id, pitch, keys) => {
    expect(boardOf(id, pitch).keys).toHaveLength(keys);
  },
);

test('characters are taken one by one, whole and once each', () => {
  expect(charactersOf('ä  öä€ e\u0301 👩‍🚀')).toEqual(['ä', 'ö', '€', 'é', '👩‍🚀']);
});

test('the answers come to what a design is made from', () => {
  const choices = choicesOf({ ...firstAnswers('windows'), name: '  Quay ', others: 'ß' });
  expect(choices).toMatchObject({
    name: 'Quay',
    host: { system: 'windows', layout: 'us', variant: '' },
    needs: { own: ['ß'], waived: [] },
    arrangement: 'qwerty',
  });
});
