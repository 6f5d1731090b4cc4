import { describe, expect, test } from 'vitest';
import type { HostChanges, MovedCharacter } from '../../../../../src/core/coverage/host-changes.ts';
import { usHost } from '../../../../../src/core/host/us.ts';
import { usTable } from '../../../../../src/core/host/us-table.ts';
import type { Need } from '../../../../../src/core/keymap/need.ts';
import {
  cautionFor,
  changesSummary,
  givesWords,
  hostTitle,
  levelWords,
  shortCaution,
  strokeWords,
} from '../../../../../src/ui/desks/design/hosts/host-words.ts';

const moved = (count: number): MovedCharacter[] =>
  Array.from({ length: count }, () => ({ char: 'z', before: [], after: [], sameHands: true }));
const chars = (text: string): Need[] => [...text].map((char) => ({ kind: 'char', char }));
const changes = (part: Partial<HostChanges>): HostChanges => ({ moved: [], lost: [], gained: [], ...part });

describe('what changed, in one sentence', () => {
  test.each<[Partial<HostChanges>, string | null]>([
    [{ moved: moved(12), lost: chars('łą') }, '12 characters moved, 2 lost'],
    [{ moved: moved(1) }, '1 character moved'],
    [{ lost: chars('ł'), gained: chars('üö') }, '1 character lost, 2 gained'],
    [{ gained: chars('ü') }, '1 character gained'],
    [{ lost: [{ kind: 'key', code: 'KeyZ' }] }, '1 need lost'],
    [{}, null],
  ])('%#', (part, sentence) => {
    expect(changesSummary(changes(part))).toBe(sentence);
  });
});

describe('the caution', () => {
  test('stands beside the answers only where the table is another system’s', () => {
    expect(shortCaution({ system: 'linux' })).toBeNull();
    expect(shortCaution({ system: 'windows' })).toContain('single keys differ');
    expect(shortCaution({ system: 'macos' })).toContain('Linux');
  });

  test('says of the mac variants that they are approximations', () => {
    expect(cautionFor({ system: 'macos', variant: 'mac' })).toContain('approximation');
    expect(cautionFor({ system: 'macos', variant: '' })).toContain('Macintosh');
    expect(cautionFor({ system: 'windows', variant: '' })).not.toContain('mac');
  });
});

describe('a host in words', () => {
  const host = { system: 'macos', layout: 'us', variant: 'mac' } as const;
  test('by its title, or by its names where there is no table of it yet', () => {
    expect(hostTitle(host, { host: usHost, table: usTable, state: 'ready' })).toBe('macOS, English (US)');
    expect(hostTitle(host, { host: usHost, table: usTable, state: 'loading' })).toBe('macOS, us mac');
    expect(hostTitle({ ...host, variant: '' }, { host: usHost, table: usTable, state: 'missing' })).toBe(
      'macOS, us',
    );
  });
});

test.each([
  ['', 'nothing'],
  [' ', 'space'],
  ['é', 'é'],
  ['dead_acute', 'dead acute'],
])('%j is called %s', (gives, words) => {
  expect(givesWords(gives)).toBe(words);
});

test('the third level has the name that is on the keys', () => {
  expect(levelWords('level3', 'macos')).toBe('with Option');
  expect(levelWords('shift-level3', 'linux')).toBe('with Shift and AltGr');
  const strokes = [
    { code: 'KeyU', with: ['AltRight'] },
    { code: 'KeyU', with: ['ShiftLeft'] },
  ] as const;
  expect(strokeWords(strokes, 'macos')).toBe('Option + U, then Shift + U');
  expect(strokeWords(strokes.slice(0, 1), 'windows')).toBe('AltGr + U');
});
