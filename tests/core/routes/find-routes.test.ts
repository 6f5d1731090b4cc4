import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parametricBoard } from '../../../src/core/board/parametric.ts';
import { READY_BOARDS } from '../../../src/core/board/ready-boards.ts';
import { hostFromTable } from '../../../src/core/host/host-from-table.ts';
import { readHostTable } from '../../../src/core/host/host-table.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { parseNeed } from '../../../src/core/keymap/need.ts';
import type { Action, Binding, Chord, Keymap, Layer } from '../../../src/core/keymap/types.ts';
import { describeSteps } from '../../../src/core/routes/describe.ts';
import { findRoutes } from '../../../src/core/routes/find-routes.ts';

const ready = READY_BOARDS.find(({ id }) => id === 'split-36');
if (ready === undefined) throw new Error('no board of 36 keys');
const board = parametricBoard(ready.madeFrom, 'thirty-six');

const char = (text: string): Action => ({ do: 'char', char: text });
const key = (code: 'ShiftLeft' | 'ControlLeft' | 'Tab' | 'KeyA' | 'KeyB'): Action => ({ do: 'key', code });
const layer = (to: string, mode: 'while-held' | 'latch' | 'lock'): Action => ({
  do: 'layer',
  layer: to,
  mode,
});

type Places = Readonly<Record<string, Binding>>;

function design(
  layers: Readonly<Record<string, Places>>,
  chords: readonly Chord[] = [],
  onWhile: readonly string[] = [],
): Keymap {
  const sheets: Layer[] = Object.entries(layers).map(([id, places]) => ({
    id,
    name: id,
    places,
    ...(id === 'both' ? { onWhile } : {}),
  }));
  return {
    format: 'neutral-keymap',
    version: 1,
    name: 'Route examples',
    board,
    hosts: [{ system: 'linux', layout: 'us', variant: '' }],
    layers: sheets,
    chords,
  };
}

function ask(keymap: Keymap, text: string) {
  const need = parseNeed(text);
  if (!need.ok) throw new Error(need.problem);
  const route = findRoutes(keymap, usHost, [need.value])[0]?.route ?? null;
  if (route === null) return 'missing';
  const { strokes, presses, holds, waitMs } = route.cost;
  const steps = route.steps.map(({ move, keys }) => `${move} ${keys.join('+')}`).join(', ');
  return `${steps} | ${strokes} ${presses} ${holds} ${waitMs}${route.clumsy ? ' clumsy' : ''}`;
}

const SHIFT: Binding = { tap: char('f'), hold: key('ShiftLeft') };

describe('how a need is typed: steps | strokes, presses, holds, ms of waiting', () => {
  test.each<[string, Keymap, string, string]>([
    ['a key of the base layer', design({ base: { R22: { tap: char('j') } } }), 'j', 'press R22 | 1 1 0 0'],
    ['nothing gives it', design({ base: { R22: { tap: char('j') } } }), 'k', 'missing'],
    [
      'a held layer',
      design({ base: { LT1: { tap: layer('signs', 'while-held') } }, signs: { R22: { tap: char('(') } } }),
      '(',
      'hold LT1, press R22 | 1 2 1 0',
    ],
    [
      'a layer under a hold/tap key waits until it is a hold',
      design({
        base: { LT1: { tap: char('t'), hold: layer('signs', 'while-held') } },
        signs: { R22: { tap: char('(') } },
      }),
      '(',
      'hold LT1, press R22 | 1 2 1 200',
    ],
    [
      'by a press inside it does not wait',
      design({
        base: { LT1: { tap: char('t'), hold: layer('signs', 'while-held'), holdBy: 'press-inside' } },
        signs: { R22: { tap: char('(') } },
      }),
      '(',
      'hold LT1, press R22 | 1 2 1 0',
    ],
    [
      'a tap inside settles it too',
      design({ base: { L22: { ...SHIFT, holdBy: 'tap-inside' }, R22: { tap: char('j') } } }),
      'J',
      'hold L22, press R22 | 1 2 1 0',
    ],
    [
      'but not where taps of the same hand are taps',
      design({
        base: { L22: { ...SHIFT, holdBy: 'tap-inside', sameHandTaps: true }, L23: { tap: char('d') } },
      }),
      'D',
      'hold L22, press L23 | 1 2 1 200',
    ],
    [
      'a latched layer needs no hold',
      design({ base: { LT1: { tap: layer('signs', 'latch') } }, signs: { R22: { tap: char('(') } } }),
      '(',
      'press LT1, press R22 | 1 2 0 0',
    ],
    [
      'a lock is taken off again',
      design({
        base: { LT1: { tap: layer('signs', 'lock') } },
        signs: { R22: { tap: char('(') }, LT1: { tap: layer('signs', 'lock') } },
      }),
      '(',
      'press LT1, press R22, press LT1 | 1 3 0 0',
    ],
    [
      'a lock that nothing takes off leads nowhere',
      design({
        base: { LT1: { tap: layer('signs', 'lock') } },
        signs: { R22: { tap: char('(') }, LT1: { tap: { do: 'nothing' } } },
      }),
      '(',
      'missing',
    ],
    [
      'never with the key that it holds',
      design({ base: { LT1: { tap: layer('signs', 'while-held') } }, signs: { LT1: { tap: char('(') } } }),
      '(',
      'missing',
    ],
    [
      'one finger that holds and presses is clumsy',
      design({ base: { L22: { hold: key('ShiftLeft') }, L32: { tap: char('v') } } }),
      'V',
      'hold L22, press L32 | 1 2 1 0 clumsy',
    ],
    [
      'of two ways of one cost the one that is not clumsy',
      design({
        base: { L22: { hold: key('ShiftLeft') }, L32: { tap: char('v') }, R22: { hold: key('ShiftLeft') } },
      }),
      'V',
      'hold R22, press L32 | 1 2 1 0',
    ],
    [
      'a modifier of an upper layer stays on when the layer is let go',
      design({
        base: { LT1: { tap: layer('moves', 'while-held') }, L22: { tap: char('f') } },
        moves: { L22: { tap: { do: 'nothing' } }, R22: { tap: key('ControlLeft') } },
      }),
      'shortcut:Control+KeyF',
      'hold LT1, hold R22, release LT1, press L22 | 1 3 2 0',
    ],
    [
      'a layer that is on while two others are',
      design(
        {
          base: { LT1: { tap: layer('one', 'while-held') }, RT1: { tap: layer('two', 'while-held') } },
          one: {},
          two: {},
          both: { R22: { tap: char('^') } },
        },
        [],
        ['one', 'two'],
      ),
      '^',
      'hold LT1, hold RT1, press R22 | 1 3 2 0',
    ],
    [
      'a chord counts each of its keys',
      design({ base: {} }, [{ id: 'c', keys: ['L22', 'L23'], windowMs: 45, action: key('Tab') }]),
      'key:Tab',
      'press L22+L23 | 1 2 0 0',
    ],
    [
      'a chord of another layer waits until its layer key is a hold, whatever is pressed inside',
      design(
        {
          base: { LT1: { tap: char('t'), hold: layer('signs', 'while-held'), holdBy: 'press-inside' } },
          signs: {},
        },
        [{ id: 'c', keys: ['R22', 'R23'], windowMs: 45, layers: ['signs'], action: key('Tab') }],
      ),
      'key:Tab',
      'hold LT1, press R22+R23 | 1 3 1 200',
    ],
    [
      'a held key that could become a chord with the next one is waited out',
      design({ base: { L22: { hold: key('ShiftLeft') }, L23: { tap: char('d') } } }, [
        { id: 'c', keys: ['L22', 'L23'], windowMs: 45, action: key('Tab') },
      ]),
      'D',
      'hold L22, press L23 | 1 2 1 45',
    ],
    [
      'Shift changes what a character key gives',
      design({ base: { L22: { hold: key('ShiftLeft') }, R11: { tap: char('1') } } }),
      '!',
      'hold L22, press R11 | 1 2 1 0',
    ],
    [
      'a modifier by itself is held past its time',
      design({ base: { L22: SHIFT } }),
      'key:ShiftLeft',
      'hold L22 | 1 1 1 200',
    ],
    [
      'a shortcut takes either side, a key none',
      design({ base: { L22: { hold: { do: 'key', code: 'ControlRight' } }, R22: { tap: key('KeyA') } } }),
      'shortcut:Control+KeyA',
      'hold L22, press R22 | 1 2 1 0',
    ],
    [
      'a key with its own modifiers is a shortcut in one press',
      design({ base: { R22: { tap: { do: 'key', code: 'KeyA', with: ['ControlLeft'] } } } }),
      'shortcut:Control+KeyA',
      'press R22 | 1 1 0 0',
    ],
    [
      'a modifier that changes nothing does no harm',
      design({ base: { R22: { tap: { do: 'key', code: 'Space', with: ['ShiftLeft'] } } } }),
      ' ',
      'press R22 | 1 1 0 0',
    ],
    [
      'a text of one character types it',
      design({ base: { R22: { tap: { do: 'text', text: '~' } } } }),
      '~',
      'press R22 | 1 1 0 0',
    ],
    [
      'a text of two does not',
      design({ base: { R22: { tap: { do: 'text', text: '~~' } } } }),
      '~',
      'missing',
    ],
  ])('%s', (_, keymap, need, told) => {
    expect(ask(keymap, need)).toBe(told);
  });

  test('steps in words', () => {
    const keymap = design(
      { base: { LT1: { tap: layer('signs', 'while-held') } }, signs: { R22: { tap: char('(') } } },
      [{ id: 'c', keys: ['L22', 'L23'], windowMs: 45, action: key('Tab') }],
    );
    const told = (text: string) => {
      const need = parseNeed(text);
      const route = need.ok ? findRoutes(keymap, usHost, [need.value])[0]?.route : null;
      return route ? describeSteps(keymap, route) : [];
    };
    expect(told('(')).toEqual(['hold left inner thumb (signs)', 'press right index home']);
    expect(told('key:Tab')).toEqual(['press left index home + left middle home together (Tab)']);
  });

  test('after a layer was let go, a key is told by what it does then', () => {
    const keymap = design({
      base: { LT1: { tap: layer('moves', 'while-held') }, L22: { tap: char('f') } },
      moves: { L22: { tap: layer('signs', 'latch') }, R22: { tap: key('ControlLeft') } },
      signs: {},
    });
    const need = parseNeed('shortcut:Control+KeyF');
    const route = need.ok ? findRoutes(keymap, usHost, [need.value])[0]?.route : null;
    expect(route ? describeSteps(keymap, route) : []).toEqual([
      'hold left inner thumb (moves)',
      'hold right index home (Left Control)',
      'release left inner thumb',
      'press left index home',
    ]);
  });

  test('a need asked for twice is answered twice, in the order asked', () => {
    const keymap = design({ base: { R22: { tap: char('j') } } });
    const need = { kind: 'char', char: 'j' } as const;
    const other = { kind: 'char', char: 'k' } as const;
    expect(findRoutes(keymap, usHost, [need, other, need]).map(({ route }) => route !== null)).toEqual([
      true,
      false,
      true,
    ]);
  });

  test('two strokes: the modifier of the dead key is let go before the letter', () => {
    const table = readHostTable(JSON.parse(readFileSync('public/hosts/us-mac.json', 'utf8')));
    if (!table.ok) throw new Error(table.problem);
    const keymap = design({
      base: { L22: { hold: { do: 'key', code: 'AltRight' } }, R12: { tap: { do: 'key', code: 'KeyU' } } },
    });
    const need = { kind: 'char', char: '\u00fc' } as const;
    const route = findRoutes(keymap, hostFromTable(table.value), [need])[0]?.route;
    expect(route?.cost).toEqual({ strokes: 2, presses: 3, holds: 1, waitMs: 0 });
    expect(route?.steps.map(({ move, keys }) => `${move} ${keys.join('+')}`)).toEqual([
      'hold L22',
      'press R12',
      'release L22',
      'press R12',
    ]);
  });

  test('two strokes: the layer of the dead key is left before the letter that it covers', () => {
    const table = readHostTable(JSON.parse(readFileSync('public/hosts/de.json', 'utf8')));
    if (!table.ok) throw new Error(table.problem);
    const keymap = design({
      base: { R22: { tap: { do: 'key', code: 'KeyA' } }, L31: { hold: layer('sym', 'while-held') } },
      sym: { R22: { tap: { do: 'key', code: 'Equal' } } },
    });
    const need = { kind: 'char', char: 'á' } as const;
    const route = findRoutes(keymap, hostFromTable(table.value), [need])[0]?.route;
    expect(route?.steps.map(({ move, keys }) => `${move} ${keys.join('+')}`)).toEqual([
      'hold L31',
      'press R22',
      'release L31',
      'press R22',
    ]);
  });

  test('a level that repeats another types the same character', () => {
    const table = readHostTable(JSON.parse(readFileSync('public/hosts/fi.json', 'utf8')));
    if (!table.ok) throw new Error(table.problem);
    const keymap = design({ base: { R22: { tap: { do: 'key', code: 'KeyQ', with: ['AltRight'] } } } });
    const needs = ['q', 'Q'].map((text) => ({ kind: 'char', char: text }) as const);
    const told = findRoutes(keymap, hostFromTable(table.value), needs);
    expect(told.map(({ route }) => route?.cost.presses ?? null)).toEqual([1, null]);
  });

  test('layers that cannot help are no obstacle: one that leads to a layer that helps is entered', () => {
    const keymap = design({
      base: { LT1: { tap: layer('way', 'while-held') }, LT2: { tap: layer('signs', 'while-held') } },
      signs: { R12: { tap: char('+') } },
      way: { RT1: { tap: layer('goal', 'while-held') } },
      goal: { R22: { tap: char('(') } },
    });
    expect(ask(keymap, '(')).toBe('hold LT1, hold RT1, press R22 | 1 3 2 0');
  });
});
