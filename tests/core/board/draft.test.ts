import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { rowsOf, withColumn, withoutColumn, withRows } from '../../../src/core/board/columns.ts';
import {
  type BoardDraft,
  draftOf,
  handWork,
  keysBecome,
  newKeyId,
  reshaped,
  startedFrom,
  withoutHandWork,
} from '../../../src/core/board/draft.ts';
import { withMirroredLeft, withOwnLeft } from '../../../src/core/board/halves.ts';
import { addKeyAt, moveKeys, paintFinger, removeKeys } from '../../../src/core/board/hand-work.ts';
import { halfOf, parametricBoard } from '../../../src/core/board/parametric.ts';
import { distanceMm } from '../../../src/core/board/point.ts';
import { READY_BOARDS } from '../../../src/core/board/ready-boards.ts';
import type { MadeFrom } from '../../../src/core/keymap/types.ts';
import { FAMILY, readyBoard, sensibleBoards } from './boards.ts';

const START = draftOf(readyBoard('split-36'));
const FROM = parametersOf(START);

function parametersOf({ board }: BoardDraft): MadeFrom {
  if (board.madeFrom === undefined) throw new Error('no parameters');
  return board.madeFrom;
}

function keyOf({ board }: BoardDraft, id: string) {
  const key = board.keys.find((each) => each.id === id);
  if (key === undefined) throw new Error(`no key ${id}`);
  return key;
}

/** The keys of the design that come to lie on a key with another id, or on none. */
function moves(draft: BoardDraft): Record<string, string | null> {
  const became = keysBecome(draft);
  const entries = draft.origin.keys.map(({ id }) => [id, became[id] ?? null] as const);
  return Object.fromEntries(entries.filter(([id, to]) => id !== to));
}

const by = (...keys: string[]) => ({ keys, alike: false });

describe('a draft of a board', () => {
  test('is the design’s board at first, and every key stays', () => {
    expect(START.board).toBe(START.origin);
    expect(moves(START)).toEqual({});
  });

  test('of a column less names what loses its place; with the column back nothing does', () => {
    const fewer = reshaped(START, { ...FROM, columns: FROM.columns.slice(0, 4) });
    const gone = { L15: null, L25: null, L35: null, R15: null, R25: null, R35: null };
    expect(moves(fewer)).toEqual(gone);
    expect(moves(reshaped(fewer, FROM))).toEqual({});
  });

  test('of an inner column more gives the keys that stay other ids', () => {
    const wider = reshaped(START, { ...FROM, columns: withColumn(FROM.columns, 'inner') });
    expect(keysBecome(wider)).toMatchObject({ L22: 'L23', R11: 'R12', RT1: 'RT1' });
    expect(Object.keys(keysBecome(wider))).toHaveLength(36);
  });

  test('of other home rows or fingers has the same keys, whatever ids follow from it', () => {
    const columns = FROM.columns.map((column) =>
      column.finger === 'middle' ? { ...column, homeRow: 0 } : column,
    );
    const draft = reshaped(START, { ...FROM, columns });
    expect(Object.keys(keysBecome(draft))).toHaveLength(36);
    const was = START.board.keys.find(({ id }) => id === 'R13');
    expect(keyOf(draft, keysBecome(draft).R13 ?? '')).toMatchObject({ x: was?.x, y: was?.y });
  });

  test('begun anew keeps what has a place', () => {
    const ready = READY_BOARDS.find(({ id }) => id === 'split-34')?.madeFrom ?? FROM;
    const moved = moveKeys(START, by('L22'), { x: 1, y: 1 });
    expect(moves(startedFrom(moved, ready))).toEqual({ LT3: null, RT3: null });
  });

  test('begun anew and then changed keeps what it was begun with', () => {
    const odd = {
      ...START.origin,
      keys: START.origin.keys.map((key) => (key.id === 'L35' ? { ...key, x: -190 } : key)),
    };
    const begun = startedFrom(draftOf(odd), FROM);
    expect(keysBecome(begun).L35).toBe('L35');
    expect(keysBecome(reshaped(begun, { ...FROM, columns: withColumn(FROM.columns, 'outer') })).L35).toBe(
      'L35',
    );
  });

  test('keeps what was done by hand when the parameters change', () => {
    const worked = removeKeys(
      paintFinger(moveKeys(START, by('R25'), { x: 2, y: 3 }), by('R15'), 'ring'),
      by('L35'),
    );
    const splayed = FROM.columns.map((column) => ({ ...column, splayDeg: column.splayDeg + 10 }));
    const draft = reshaped(worked, { ...FROM, columns: splayed });
    const made = draftOf(parametricBoard({ ...FROM, columns: splayed }, 'made'));
    const [is, model] = [keyOf(draft, 'R25'), keyOf(made, 'R25')];
    expect(distanceMm(is, model)).toBeCloseTo(Math.hypot(2, 3), 2);
    // The column leans by ten degrees more, and what was moved leans along.
    const leaning = (Math.atan2(is.y - model.y, is.x - model.x) - Math.atan2(3, 2)) * (180 / Math.PI);
    expect(leaning).toBeCloseTo(10, 0);
    expect(keyOf(draft, 'R15').finger).toBe('ring');
    expect(draft.board.keys.some(({ id }) => id === 'L35')).toBe(false);
    expect(handWork(draft.board)).toEqual({ keys: ['R15', 'R25'], missing: 1 });
    expect(handWork(withoutHandWork(draft).board)).toEqual({ keys: [], missing: 0 });
  });

  test('takes keys added by hand along with their half', () => {
    const at = { x: keyOf(START, 'R15').x + 19, y: keyOf(START, 'R15').y };
    const { draft, keys } = addKeyAt(START, at, false);
    const wider = reshaped(draft, { ...FROM, gapMm: FROM.gapMm + 20, turnDeg: FROM.turnDeg + 10 });
    const apart = (of: BoardDraft) => distanceMm(keyOf(of, keys[0] ?? ''), keyOf(of, 'R15'));
    expect(apart(wider)).toBeCloseTo(apart(draft), 2);
    expect(keyOf(wider, keys[0] ?? '').x).toBeGreaterThan(keyOf(draft, keys[0] ?? '').x);
  });

  test('is named anew while its name is its own, and keeps a name given to it', () => {
    const wider = { ...FROM, columns: withColumn(FROM.columns, 'outer') };
    expect(reshaped(START, wider).board.name).toBe('42 keys, split');
    const named = { ...START, board: { ...START.board, name: 'Mine' } };
    expect(reshaped(named, wider).board.name).toBe('Mine');
  });

  test.each(FAMILY)(
    'of a ready board has the name that a board of itself has: $title',
    ({ title, board }) => {
      const same = parametricBoard(parametersOf(draftOf(board)), board.name);
      expect(title).toContain(reshaped(draftOf(same), parametersOf(draftOf(board))).board.name);
    },
  );

  test('parameters that are not those of the board are begun anew', () => {
    const foreign = { ...START.board, keys: START.board.keys.map((key, at) => ({ ...key, id: `x${at}` })) };
    const draft = reshaped(draftOf(foreign), FROM);
    expect(draft.board.keys).toEqual(START.board.keys);
    expect(Object.keys(keysBecome(draft))).toHaveLength(36);
  });

  test('halves of their own begin as they were, and are mirrored again', () => {
    const own = withOwnLeft(FROM);
    expect(parametricBoard(own, '').keys).toEqual(START.board.keys);
    expect(withMirroredLeft(own)).toEqual(FROM);
  });

  test.prop([sensibleBoards, sensibleBoards], { numRuns: 60 })(
    'any parameters, there and back, lose nothing and give no id twice',
    (one, other) => {
      const first = draftOf(parametricBoard(one, 'one'));
      const there = reshaped(first, other);
      const ids = there.board.keys.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      const back = reshaped(there, one);
      expect(back.board.keys).toEqual(first.board.keys);
      expect(moves(back)).toEqual({});
      expect(ids).not.toContain(newKeyId(there, 'left'));
    },
  );
});

describe('columns', () => {
  const UPRIGHT = { ...FROM, turnDeg: 0 };
  const upright = reshaped(START, UPRIGHT);
  const half = halfOf(UPRIGHT, 'right');

  test('rows above and below the home row change without moving it', () => {
    expect(rowsOf(half, 2)).toEqual({ above: 1, below: 1 });
    for (const rows of [
      { above: 2, below: 1 },
      { above: 1, below: 0 },
      { above: 0, below: 3 },
    ]) {
      const column = withRows(half, 2, rows);
      const columns = FROM.columns.map((each, at) => (at === 2 && column ? column : each));
      const draft = reshaped(upright, { ...UPRIGHT, columns });
      const home = draft.board.keys.find(
        (key) => key.hand === 'right' && key.finger === 'middle' && key.home,
      );
      expect(home?.y).toBeCloseTo(keyOf(upright, 'R23').y, 2);
      expect(keysBecome(draft).R23).toBe(home?.id);
      expect(rowsOf({ ...half, columns }, 2)).toEqual(rows);
    }
  });

  test('a finger that loses the column of its home takes the row of its next one', () => {
    const columns = withoutColumn(half, 1);
    expect(columns.map(({ finger, homeRow }) => `${finger} ${homeRow}`)).toEqual([
      'index 1',
      'middle 1',
      'ring 1',
      'little 1',
    ]);
    expect(withoutColumn({ ...half, columns: columns.slice(0, 1) }, 0)).toHaveLength(1);
  });

  test.prop([fc.constantFrom('inner', 'outer')])('there are eight at most', (end) => {
    let columns = FROM.columns;
    for (let step = 0; step < 9; step += 1) columns = withColumn(columns, end);
    expect(columns).toHaveLength(8);
    expect(columns.filter(({ homeRow }) => homeRow !== null)).toHaveLength(4);
  });
});
