import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { hostChanges } from '../../../src/core/coverage/host-changes.ts';
import { onBothHosts } from '../../../src/core/coverage/on-both-hosts.ts';
import { correctedTable } from '../../../src/core/host/corrected-host.ts';
import { hostFromTable } from '../../../src/core/host/host-from-table.ts';
import { type Need, needText, parseNeed } from '../../../src/core/keymap/need.ts';
import { readKeymap } from '../../../src/core/keymap/read.ts';
import type { Action, Correction, Keymap } from '../../../src/core/keymap/types.ts';
import { findRoutes } from '../../../src/core/routes/find-routes.ts';
import { shippedTable } from '../host/shipped-tables.ts';
import { routeLine } from '../host/strokes.ts';
import { layer, small } from '../keymap/small.ts';

const char = (one: string): Action => ({ do: 'char', char: one });
const needs = (...texts: string[]): Need[] =>
  texts.flatMap((text) => {
    const read = parseNeed(text);
    return read.ok ? [read.value] : [];
  });

/** Five keys: the given actions as taps, in order. */
const taps = (...actions: Action[]): Keymap =>
  small([layer('base', Object.fromEntries(actions.map((tap, at) => [`k${at + 1}`, { tap }])))]);

function onHost(keymap: Keymap, name: string, asked: readonly Need[], corrections: Correction[] = []) {
  const host = hostFromTable(correctedTable(shippedTable(name), corrections));
  return { host, needs: findRoutes(keymap, host, asked) };
}

/** The changes in one line each: `z KeyZ > KeyY same`, the lost and gained as they are written. */
function changes(
  keymap: Keymap,
  from: string,
  to: string,
  asked: readonly Need[],
  corrections: Correction[] = [],
) {
  const found = hostChanges(keymap, onHost(keymap, from, asked), onHost(keymap, to, asked, corrections));
  return {
    moved: found.moved.map(
      (one) =>
        `${one.char} ${routeLine(one.before)} > ${routeLine(one.after)} ${one.sameHands ? 'same' : 'other'} hands`,
    ),
    lost: found.lost.map(needText),
    gained: found.gained.map(needText),
  };
}

const NOTHING = { moved: [], lost: [], gained: [] };

describe('from one host to another', () => {
  test('nothing changes on the same one', () => {
    const keymap = taps(char('z'), char('ü'), { do: 'key', code: 'KeyA' });
    expect(changes(keymap, 'de', 'de', needs('z', 'ü', 'a', 'key:KeyA'))).toEqual(NOTHING);
  });

  // The strokes are XKB's, see against-xkb.test.ts.
  test.each<[string, string, string, Action, string, object]>([
    [
      'a letter that lies elsewhere is typed by the same press',
      'us',
      'de',
      char('z'),
      'z',
      { moved: ['z KeyZ > KeyY same hands'] },
    ],
    ['a letter that only the second has', 'us', 'de', char('ü'), 'ü', { gained: ['ü'] }],
    ['and the way back', 'de', 'us', char('ü'), 'ü', { lost: ['ü'] }],
    [
      'one key, then two strokes',
      'de',
      'us-mac',
      char('ü'),
      'ü',
      { moved: ['ü BracketLeft > AltRight+KeyU KeyU same hands'] },
    ],
    ['a code types what the layout says', 'us', 'de', { do: 'key', code: 'KeyZ' }, 'z', { lost: ['z'] }],
    ['a code stays a code', 'us', 'de', { do: 'key', code: 'KeyZ' }, 'key:KeyZ', {}],
    [
      'a character may have been the way to a code',
      'us',
      'de',
      char('z'),
      'key:KeyZ',
      { lost: ['key:KeyZ'], moved: ['z KeyZ > KeyY same hands'] },
    ],
    ['what lies alike stays', 'us', 'pl', char(';'), ';', {}],
    ['what neither has is no change', 'us', 'us-dvorak', char('ł'), 'ł', {}],
  ])('%s (%s to %s)', (_, from, to, action, asked, expected) => {
    expect(changes(taps(action), from, to, needs(asked))).toEqual({ ...NOTHING, ...expected });
  });

  test('where the hands have to do something else it is said', () => {
    const keymap = taps({ do: 'key', code: 'KeyY' }, { do: 'key', code: 'KeyZ' });
    expect(changes(keymap, 'us', 'de', needs('y', 'z')).moved).toEqual([
      'y KeyY > KeyZ other hands',
      'z KeyZ > KeyY other hands',
    ]);
  });

  test('characters that only actions ask for count too, each once, after the needs', () => {
    const keymap = taps(char('ł'), { do: 'text', text: 'łął' }, char('z'));
    expect(changes(keymap, 'pl', 'us', needs('z'))).toEqual({ ...NOTHING, lost: ['ł', 'ą'] });
    expect(changes(keymap, 'pl', 'de', []).moved).toContain('z KeyZ > KeyY same hands');
  });

  test('a correction brings a lost character back', () => {
    const keymap = taps(char('ş'));
    expect(changes(keymap, 'tr', 'us', needs('ş')).lost).toEqual(['ş']);
    const correction: Correction = { code: 'Semicolon', level: 'level3', gives: 'ş' };
    expect(changes(keymap, 'tr', 'us', needs('ş'), [correction])).toEqual({
      ...NOTHING,
      moved: ['ş Semicolon > AltRight+Semicolon same hands'],
    });
  });
});

describe('needs on two hosts', () => {
  const keymap = taps(char('z'), char('ü'), char('ł'), char('あ'), { do: 'key', code: 'F5' });
  const asked = needs('z', 'ü', 'ł', 'あ', 'key:F5');

  test('each stands in one of four lists', () => {
    const { both, firstOnly, secondOnly, neither } = onBothHosts(
      onHost(keymap, 'us-intl', asked).needs,
      onHost(keymap, 'pl', asked, [{ code: 'BracketLeft', level: 'level3', gives: '' }]).needs,
    );
    expect([both, firstOnly, secondOnly, neither].map((list) => list.map(needText))).toEqual([
      ['z', 'key:F5'],
      ['ü'],
      ['ł'],
      ['あ'],
    ]);
  });

  test('a need that one of them was not asked for is missing there', () => {
    const first = onHost(keymap, 'us', needs('z')).needs;
    expect(onBothHosts(first, []).firstOnly.map(needText)).toEqual(['z']);
    expect(onBothHosts([], first).secondOnly.map(needText)).toEqual(['z']);
  });
});

describe('the almanac, which is written on Linux in Polish', () => {
  const read = readKeymap(
    readFileSync(new URL('../../../demo-layouts/two-shore-almanac.json', import.meta.url), 'utf8'),
  );
  const keymap = read.ok ? read.value : small();
  const asked = needs('ą', 'ł', 'z', '@', 'key:Enter');

  test.each(['us', 'us-mac', 'de', 'fr'])('what changes towards pl is undone by the way back, %s', (name) => {
    const there = changes(keymap, 'pl', name, asked);
    const back = changes(keymap, name, 'pl', asked);
    expect(back.lost).toEqual(there.gained);
    expect(back.gained).toEqual(there.lost);
    expect(back.moved).toHaveLength(there.moved.length);
  });

  test('on us every letter of Polish that is beyond ASCII is lost', () => {
    expect(changes(keymap, 'pl', 'us', asked).lost).toEqual(expect.arrayContaining(['ą', 'ł']));
  });
});
