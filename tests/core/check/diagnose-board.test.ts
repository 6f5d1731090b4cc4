import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boardRows } from '../../../src/core/board/rows.ts';
import { diagnoseBoard } from '../../../src/core/check/diagnose-board.ts';
import { judge } from '../../../src/core/check/judge.ts';
import { checkPlan } from '../../../src/core/check/steps.ts';
import { hostFromTable } from '../../../src/core/host/host-from-table.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { readKeymap } from '../../../src/core/keymap/read.ts';
import { chordsOf } from '../../../src/core/keymap/timing.ts';
import type { Hand, KeyId, Keymap } from '../../../src/core/keymap/types.ts';
import { shippedTable } from '../host/shipped-tables.ts';
import { type Faults, hear, walked } from './faulty-board.ts';

const keymap = demo('beacon-log');
const plan = checkPlan(keymap, usHost);
const told = (faults: Faults) => diagnoseBoard(keymap, usHost, walked(keymap, usHost, plan.steps, faults));
const kinds = (faults: Faults) => told(faults).map(({ fault }) => fault);

function demo(name: string): Keymap {
  const read = readKeymap(readFileSync(`demo-layouts/${name}.json`, 'utf8'));
  if (!read.ok) throw new Error(read.problem[0]?.sentence);
  return read.value;
}

/** The rows of one half, left to right. */
function rowsOf(hand: Hand): readonly (readonly KeyId[])[] {
  const own = new Set(keymap.board.keys.filter((key) => key.hand === hand).map(({ id }) => id));
  return boardRows(keymap.board).map((row) => row.filter((key) => own.has(key)));
}

const swap = (one: KeyId, other: KeyId) => ({ [one]: other, [other]: one });

/** A row in which every key gives the next one's results; the last one gives nothing. */
function shifted(row: readonly KeyId[]): Faults {
  const wiredAs = Object.fromEntries(row.slice(0, -1).map((key, at) => [key, row[at + 1] ?? key]));
  return { wiredAs, dead: row.slice(-1) };
}

function mirrored(hand: Hand): Readonly<Record<KeyId, KeyId>> {
  const pairs = rowsOf(hand).flatMap((row) =>
    row.map((key, at) => [key, row[row.length - 1 - at] ?? key] as const),
  );
  return Object.fromEntries(pairs.filter(([key, other]) => key !== other));
}

test('a right board has no fault', () => {
  expect(told({})).toEqual([]);
  expect(walked(keymap, usHost, plan.steps).every(({ result }) => result.verdict === 'right')).toBe(true);
});

describe('one fault', () => {
  test('two keys swapped', () => {
    expect(told({ wiredAs: swap('L21', 'R22') })).toEqual([{ fault: 'swapped', keys: ['L21', 'R22'] }]);
  });

  test('two thumb keys swapped, which bring layers', () => {
    expect(told({ wiredAs: swap('LT2', 'LT3') })[0]).toMatchObject({ fault: 'swapped' });
  });

  test.each([
    ['a letter', 'L12', 'LT2'],
    ['another of them', 'LT2', 'RT2'],
  ])('a key that only brings a layer, and sends nothing, swapped with %s', (_, one, other) => {
    const silent = demo('two-shore-almanac');
    const { steps } = checkPlan(silent, usHost);
    expect(steps.filter(({ keys, expects }) => keys.includes('LT2') && expects.length > 0)).toEqual([]);
    const faults = diagnoseBoard(
      silent,
      usHost,
      walked(silent, usHost, steps, { wiredAs: swap(one, other) }),
    );
    expect(faults).toEqual([{ fault: 'swapped', keys: [one, other] }]);
  });

  test('a row shifted by one key', () => {
    const [, row = []] = rowsOf('left');
    const faults = told(shifted(row));
    expect(faults[0]).toEqual({ fault: 'row-shifted', hand: 'left', keys: row.slice(0, -1), by: 1 });
    expect(faults.map(({ fault }) => fault)).toEqual(['row-shifted', 'dead-key']);
  });

  test('a half mirrored', () => {
    const faults = told({ wiredAs: mirrored('right') });
    expect(faults.filter(({ fault }) => fault === 'half-mirrored')).toMatchObject([{ hand: 'right' }]);
    expect(faults.filter(({ fault }) => fault === 'swapped')).toEqual([]);
  });

  test('a computer that reads the keys otherwise', () => {
    const [fault] = told({ computer: hostFromTable(shippedTable('de')) });
    expect(fault).toMatchObject({ fault: 'other-host' });
    if (fault?.fault !== 'other-host') throw new Error('another fault');
    // The design has Caps Lock on a key that is pressed before.
    expect(fault.characters).toContainEqual({ code: 'KeyY', expected: 'Y', came: 'Z' });
    expect(kinds({ computer: hostFromTable(shippedTable('de')) })).toEqual(['other-host']);
  });

  test.each(
    keymap.layers
      .slice(1)
      .filter(({ onWhile }) => onWhile === undefined)
      .map(({ id }) => id),
  )('layer %s not turned on by its key', (layer) => {
    const holds: Keymap = {
      ...keymap,
      layers: keymap.layers.map((one) => ({
        ...one,
        places: Object.fromEntries(
          Object.entries(one.places).map(([key, binding]) => {
            const { hold, ...rest } = binding;
            return [key, hold?.do === 'layer' && hold.layer === layer ? rest : binding];
          }),
        ),
      })),
    };
    expect(told({ holds })).toContainEqual(expect.objectContaining({ fault: 'layer-not-reached', layer }));
  });

  test('a chord whose keys come too far apart', () => {
    const faults = told({ chordSpreadMs: 90 });
    expect(faults.map(({ fault }) => fault)).toEqual(chordsOf(keymap).map(() => 'chord-missed'));
    for (const fault of faults) if (fault.fault === 'chord-missed') expect(fault.apartMs).toBeGreaterThan(0);
  });

  test('a switch that chatters', () => {
    expect(told({ chatters: { L22: 12 } })).toMatchObject([{ fault: 'chatters', key: 'L22' }]);
  });

  test('a key that gives nothing', () => {
    expect(told({ dead: ['R33'] })).toMatchObject([{ fault: 'dead-key', key: 'R33' }]);
  });

  test('a key that stays down for the computer', () => {
    expect(told({ stuck: ['KeyQ'] })).toMatchObject([{ fault: 'stuck', code: 'KeyQ' }]);
  });

  test('a key that stays down is told once, and not the shortcuts that need it again', () => {
    expect(plan.steps.filter(({ expects }) => expects.some(({ code }) => code === 'KeyZ')).length).toBe(2);
    expect(told({ stuck: ['KeyZ'] })).toMatchObject([{ fault: 'stuck', code: 'KeyZ' }]);
  });
});

describe('what the computer keeps from one press to the next', () => {
  test('Caps Lock, which the design can turn on, makes no other layout of the letters that follow', () => {
    const [first] = keymap.layers;
    const places = { ...first?.places, L11: { tap: { do: 'key', code: 'CapsLock' } as const } };
    const withCaps: Keymap = { ...keymap, layers: [{ id: 'letters', name: 'Letters', places }], chords: [] };
    const { steps } = checkPlan(withCaps, usHost);
    const capsFirst = [...steps].sort(
      (one, other) => Number(other.id.includes('L11')) - Number(one.id.includes('L11')),
    );
    const checked = walked(withCaps, usHost, capsFirst);
    expect(diagnoseBoard(withCaps, usHost, checked)).toEqual([]);
    expect(checked.every(({ result }) => result.verdict === 'right')).toBe(true);
  });

  test.each(['ShiftLeft', 'ControlLeft', 'AltLeft', 'ShiftRight', 'MetaRight'] as const)(
    'a %s that stays down is told once, and not the presses that follow it',
    (code) => {
      const faults = told({ stuck: [code] });
      expect(faults.map(({ fault }) => fault)).toEqual(['stuck']);
      expect(faults).toMatchObject([{ code }]);
    },
  );

  test('a Shift that stays down does not hide two keys swapped, nor that the computer reads the keys otherwise', () => {
    expect(kinds({ stuck: ['ShiftLeft'], wiredAs: swap('R21', 'R22') })).toEqual(
      expect.arrayContaining(['stuck', 'swapped']),
    );
    expect(kinds({ stuck: ['ControlRight'], computer: hostFromTable(shippedTable('de')) })).toEqual(
      expect.arrayContaining(['stuck', 'other-host']),
    );
  });

  test('a Shift that was down before anything was pressed is told by itself', () => {
    const checked = plan.steps.slice(0, 6).map((step) => ({
      step,
      result: judge(step, hear(keymap, usHost, step, {}, { down: new Set(['ShiftLeft']), caps: false })),
    }));
    const faults = diagnoseBoard(keymap, usHost, checked);
    expect(faults).toMatchObject([{ fault: 'modifier-down', states: ['Shift'] }]);
  });
});

describe('mixed faults do not hide each other', () => {
  test('a mirrored half, two keys swapped on the other one, and a switch that chatters', () => {
    const wiredAs = { ...mirrored('right'), ...swap('L21', 'L32') };
    const faults = kinds({ wiredAs, chatters: { L13: 9 } });
    expect(faults).toEqual(expect.arrayContaining(['half-mirrored', 'swapped', 'chatters']));
  });

  test('two dead keys, of which one brings a layer of the other', () => {
    const dead = told({ dead: ['RT1', 'L24'] }).flatMap((fault) =>
      fault.fault === 'dead-key' ? fault.key : [],
    );
    expect(dead).toEqual(['L24', 'RT1']);
  });

  test('a swap within a mirrored half', () => {
    const mirror = mirrored('right');
    const wiredAs = { ...mirror, R11: mirror.R32 ?? '', R32: mirror.R11 ?? '' };
    expect(told({ wiredAs })).toEqual(
      expect.arrayContaining([
        expect.objectContaining({ fault: 'half-mirrored' }),
        { fault: 'swapped', keys: ['R11', 'R32'] },
      ]),
    );
  });

  test('two keys swapped and chords that are too slow', () => {
    const faults = kinds({ wiredAs: swap('L31', 'L33'), chordSpreadMs: 90 });
    expect(faults).toEqual(expect.arrayContaining(['swapped', 'chord-missed']));
  });

  test('two keys swapped, on a computer that reads the keys otherwise', () => {
    const faults = kinds({ wiredAs: swap('L22', 'L23'), computer: hostFromTable(shippedTable('fr')) });
    expect(faults).toEqual(expect.arrayContaining(['swapped', 'other-host']));
  });
});

test('any two finger keys swapped are found, and nothing is told of other keys', () => {
  const fingers = keymap.board.keys.filter(({ finger }) => finger !== 'thumb').map(({ id }) => id);
  const visible = new Set(walked(keymap, usHost, plan.steps).map(({ step }) => `${step.keys[0]}`));
  fc.assert(
    fc.property(fc.subarray(fingers, { minLength: 2, maxLength: 2 }), ([one = '', other = '']) => {
      fc.pre(visible.has(one) && visible.has(other));
      const faults = told({ wiredAs: swap(one, other) });
      const swapped = faults.filter(({ fault }) => fault === 'swapped');
      expect(swapped).toHaveLength(1);
      expect(swapped[0]).toMatchObject({ keys: expect.arrayContaining([one, other]) });
      for (const fault of faults) if ('key' in fault) expect([one, other]).toContain(fault.key);
    }),
    { numRuns: 25, seed: 7 },
  );
});
