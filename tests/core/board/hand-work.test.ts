import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { overlappingCaps } from '../../../src/core/board/caps.ts';
import { type BoardDraft, draftOf } from '../../../src/core/board/draft.ts';
import { moveHalf, turnHalf } from '../../../src/core/board/halves.ts';
import {
  addKeyAt,
  addKeyBeside,
  giveToHand,
  keyAt,
  moveKeys,
  paintFinger,
  paintHome,
  removeKeys,
  setKeys,
  turnKeys,
} from '../../../src/core/board/hand-work.ts';
import { isMirrored, mirrorAxis, partnersOf } from '../../../src/core/board/partners.ts';
import { distanceMm } from '../../../src/core/board/point.ts';
import { boardSchema } from '../../../src/core/keymap/schema.ts';
import { FAMILY, readyBoard } from './boards.ts';

const START = draftOf(readyBoard('split-36'));

function keyOf({ board }: BoardDraft, id: string) {
  const key = board.keys.find((each) => each.id === id);
  if (key === undefined) throw new Error(`no key ${id}`);
  return key;
}

const homes = ({ board }: BoardDraft, of: string) =>
  board.keys.filter((key) => key.home && `${key.hand} ${key.finger}` === of).map(({ id }) => id);

describe('mirror images', () => {
  test.each(FAMILY)('every key of $title has its own, and the board is mirrored', ({ board }) => {
    const partners = partnersOf(board);
    for (const { id } of board.keys) expect(partners.get(id)).toBe((id[0] === 'L' ? 'R' : 'L') + id.slice(1));
    expect(mirrorAxis(board)).toBeCloseTo(0, 9);
    expect(isMirrored(board)).toBe(true);
    const off = moveKeys(draftOf(board), { keys: ['R21'], alike: false }, { x: 1, y: 0 });
    expect(isMirrored(off.board)).toBe(false);
  });
});

describe('work by hand', () => {
  test('moves one key, or its mirror image the other way across', () => {
    const alone = moveKeys(START, { keys: ['L21'], alike: false }, { x: 2, y: -1 });
    expect(keyOf(alone, 'L21').x).toBeCloseTo(keyOf(START, 'L21').x + 2, 3);
    expect(keyOf(alone, 'R21')).toEqual(keyOf(START, 'R21'));
    const both = moveKeys(START, { keys: ['L21'], alike: true }, { x: 2, y: -1 });
    expect(keyOf(both, 'R21').x).toBeCloseTo(keyOf(START, 'R21').x - 2, 3);
    expect(keyOf(both, 'R21').y).toBeCloseTo(keyOf(START, 'R21').y - 1, 3);
  });

  test('with both of a pair named the first one’s hand leads', () => {
    const both = moveKeys(START, { keys: ['R21', 'L21'], alike: true }, { x: 2, y: 0 });
    expect(keyOf(both, 'R21').x).toBeCloseTo(keyOf(START, 'R21').x + 2, 3);
    expect(keyOf(both, 'L21').x).toBeCloseTo(keyOf(START, 'L21').x - 2, 3);
  });

  test('turns keys about the middle of them all', () => {
    const turned = turnKeys(START, { keys: ['RT1', 'RT2', 'RT3'], alike: false }, 90);
    for (const id of ['RT1', 'RT2', 'RT3']) {
      expect(keyOf(turned, id).rotation).toBeCloseTo(keyOf(START, id).rotation + 90, 3);
    }
    const apart = (of: BoardDraft) => distanceMm(keyOf(of, 'RT1'), keyOf(of, 'RT3'));
    expect(apart(turned)).toBeCloseTo(apart(START), 2);
  });

  test('sets exact numbers within what a document may hold', () => {
    const set = setKeys(START, { keys: ['R21'], alike: false }, { x: 9000, rotation: 270, width: 1 });
    expect(keyOf(set, 'R21')).toMatchObject({ x: 2000, rotation: -90, width: 5 });
  });

  test('paints fingers; a finger has one home', () => {
    const painted = paintFinger(START, { keys: ['R22', 'R32'], alike: true }, 'middle');
    expect([keyOf(painted, 'L32').finger, keyOf(painted, 'R22').finger]).toEqual(['middle', 'middle']);
    expect(homes(painted, 'right middle')).toEqual(['R23']);
    const home = paintHome(START, { keys: ['R33'], alike: true }, true);
    expect([homes(home, 'right middle'), homes(home, 'left middle')]).toEqual([['R33'], ['L33']]);
    expect(homes(paintHome(home, { keys: ['R33'], alike: true }, false), 'left middle')).toEqual([]);
    const swept = paintHome(START, { keys: ['R33', 'R13', 'R14'], alike: false }, true);
    expect([homes(swept, 'right middle'), homes(swept, 'right ring')]).toEqual([['R13'], ['R14']]);
  });

  test('gives keys to the other hand, and their images the other way', () => {
    const given = giveToHand(START, { keys: ['R21'], alike: true }, 'left');
    expect([keyOf(given, 'R21').hand, keyOf(given, 'L21').hand]).toEqual(['left', 'right']);
    const home = giveToHand(START, { keys: ['R22'], alike: false }, 'left');
    expect(keyOf(home, 'R22')).toMatchObject({ hand: 'left', home: false });
    expect(homes(home, 'left index')).toEqual(['L22']);
  });

  test('adds a key where there is room beside another, its image too', () => {
    const { draft, keys } = addKeyBeside(START, 'R25', true);
    expect(keys).toEqual(['R1', 'L1']);
    expect(draft.board.keys).toHaveLength(38);
    expect(overlappingCaps(draft.board)).toEqual([]);
    expect(isMirrored(draft.board)).toBe(true);
    expect(distanceMm(keyOf(draft, 'R1'), keyOf(START, 'R25'))).toBeCloseTo(19.05, 2);
    expect(keyOf(draft, 'R1')).toMatchObject({ finger: 'little', hand: 'right', home: false });
    expect(draft.board.name).toBe('38 keys, split');
  });

  test('adds a key at a point, like its nearest one', () => {
    const { draft, keys } = addKeyAt(START, { x: -20, y: 80 }, false);
    expect(keyOf(draft, keys[0] ?? '')).toMatchObject({ x: -20, y: 80, finger: 'thumb', hand: 'left' });
  });

  test('takes keys away but the last one', () => {
    expect(removeKeys(START, { keys: ['R25'], alike: true }).board.keys).toHaveLength(34);
    const all = START.board.keys.map(({ id }) => id);
    expect(removeKeys(START, { keys: all, alike: false })).toBe(START);
    expect(removeKeys(START, { keys: ['L11'], alike: false }).from.has('L11')).toBe(false);
  });

  test('finds the key under a point of its turned cap', () => {
    const key = keyOf(START, 'RT1');
    expect(keyAt(START.board.keys, key)?.id).toBe('RT1');
    expect(keyAt(START.board.keys, { x: 0, y: -100 })).toBeUndefined();
  });

  const work = fc.record({
    keys: fc.subarray(
      START.board.keys.map(({ id }) => id),
      { minLength: 1, maxLength: 6 },
    ),
    x: fc.integer({ min: -30, max: 30 }),
    y: fc.integer({ min: -30, max: 30 }),
    degrees: fc.integer({ min: -180, max: 180 }),
  });
  test.prop([work], { numRuns: 80 })(
    'with both halves alike a mirrored board stays mirrored, is valid, and the draft handed in stays',
    ({ keys, x, y, degrees }) => {
      const before = JSON.stringify(START.board);
      const which = { keys, alike: true };
      const after = turnKeys(moveKeys(START, which, { x, y }), which, degrees);
      const places = new Map(after.board.keys.map((key) => [key.id, key]));
      for (const [one, other] of partnersOf(START.board)) {
        const [a, b] = [places.get(one), places.get(other)];
        expect([a?.x, a?.y]).toEqual([expect.closeTo(-(b?.x ?? 0), 2), expect.closeTo(b?.y ?? 0, 2)]);
      }
      expect(boardSchema.safeParse(after.board).success).toBe(true);
      expect(JSON.stringify(START.board)).toBe(before);
    },
  );
});

describe('halves', () => {
  test('moved apart with both alike: the gap grows by twice as much', () => {
    const apart = moveHalf(START, 'left', { x: -5, y: 9 }, true);
    expect(apart.board.madeFrom?.gapMm).toBe(80);
    expect(isMirrored(apart.board)).toBe(true);
  });

  test('moved alone: the gap grows by as much, and one lies nearer to the typist', () => {
    const apart = moveHalf(START, 'right', { x: 5, y: -4 }, false);
    expect(apart.board.madeFrom).toMatchObject({ gapMm: 75, left: { downMm: 4 } });
    expect(keyOf(apart, 'L21').y - keyOf(apart, 'R21').y).toBeCloseTo(4, 3);
  });

  test('turned: clockwise is the thumbs outwards on the left hand', () => {
    expect(turnHalf(START, 'left', 3, true).board.madeFrom?.turnDeg).toBe(-11);
    const alone = turnHalf(START, 'left', 3, false).board.madeFrom;
    expect([alone?.turnDeg, alone?.left?.turnDeg]).toEqual([-8, -11]);
  });

  test('of a board without parameters all keys of the hand go', () => {
    const { madeFrom: _, ...bare } = START.board;
    const draft = draftOf(bare);
    const moved = moveHalf(draft, 'right', { x: 5, y: 2 }, false);
    expect(keyOf(moved, 'R11').x - keyOf(draft, 'R11').x).toBeCloseTo(5, 2);
    expect(keyOf(moved, 'L11')).toEqual(keyOf(draft, 'L11'));
    expect(isMirrored(turnHalf(draft, 'right', 12, true).board)).toBe(true);
    expect(keyOf(turnHalf(draft, 'right', 12, true), 'L11').rotation).toBeCloseTo(
      keyOf(draft, 'L11').rotation - 12,
      3,
    );
  });
});
