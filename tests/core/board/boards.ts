import { fc } from '@fast-check/vitest';
import { parametricBoard } from '../../../src/core/board/parametric.ts';
import { atPitch, PITCHES } from '../../../src/core/board/pitches.ts';
import { READY_BOARDS } from '../../../src/core/board/ready-boards.ts';
import type { Board, BoardKey, MadeFrom } from '../../../src/core/keymap/types.ts';

/** A cap of 18 × 18 mm, to be given a place. */
export function cap(id: string, x: number, y: number, more: Partial<BoardKey> = {}): BoardKey {
  return {
    id,
    x,
    y,
    rotation: 0,
    width: 18,
    height: 18,
    hand: 'right',
    finger: 'index',
    home: false,
    ...more,
  };
}

/** Every ready board at every pitch on offer, with a name to tell a failure by. */
export const FAMILY: readonly { readonly title: string; readonly keys: number; readonly board: Board }[] =
  READY_BOARDS.flatMap((ready) =>
    PITCHES.map((pitch) => ({
      title: `${ready.title}, ${pitch.id}`,
      keys: ready.keys,
      board: parametricBoard(atPitch(ready.madeFrom, pitch), ready.title),
    })),
  );

/** The ready board of an id at full pitch; fails loudly, so that a test cannot pass on the wrong board. */
export function readyBoard(id: string): Board {
  const ready = READY_BOARDS.find((each) => each.id === id);
  if (ready === undefined) throw new Error(`no ready board ${id}`);
  return parametricBoard(ready.madeFrom, ready.title);
}

const FINGERS = ['index', 'index', 'middle', 'ring', 'little', 'little'] as const;

/** Boards that a person might build: fingers fan out from inner to outer, thumbs lie on an arc below the columns. */
export const sensibleBoards: fc.Arbitrary<MadeFrom> = fc
  .record({
    columns: fc.array(
      fc.record({
        keys: fc.integer({ min: 2, max: 4 }),
        staggerMm: fc.double({ min: -6, max: 14, noNaN: true }),
        fanDeg: fc.double({ min: 0, max: 7, noNaN: true }),
      }),
      { minLength: 4, maxLength: 6 },
    ),
    pitch: fc.constantFrom(...PITCHES),
    thumbs: fc.integer({ min: 0, max: 3 }),
    stepDeg: fc.double({ min: 15, max: 22, noNaN: true }),
    turnDeg: fc.double({ min: -15, max: 0, noNaN: true }),
    gapMm: fc.double({ min: 90, max: 300, noNaN: true }),
  })
  .map(({ columns, pitch, thumbs, stepDeg, turnDeg, gapMm }) => {
    let splayDeg = 0;
    const lowest = Math.max(...columns.map((each) => each.staggerMm + (each.keys / 2) * pitch.yMm));
    const inner = columns[0]?.staggerMm ?? 0;
    return {
      columns: columns.map(({ fanDeg, ...each }, index) => {
        splayDeg += index === 0 ? 0 : fanDeg;
        return { ...each, finger: FINGERS[index] ?? 'little', homeRow: index === 0 ? null : 1, splayDeg };
      }),
      pitchXMm: pitch.xMm,
      pitchYMm: pitch.yMm,
      capGapMm: 1,
      thumb: {
        keys: thumbs,
        radiusMm: 85,
        inwardsMm: 20,
        downMm: lowest - inner + 45,
        turnDeg: stepDeg * Math.max(0, thumbs - 1),
        stepDeg,
      },
      gapMm,
      turnDeg,
    };
  });

/** Caps anywhere, turned anyhow: for geometry that must not count on order. */
export const scatteredBoards: fc.Arbitrary<Board> = fc
  .array(
    fc.record({
      x: fc.integer({ min: -150, max: 150 }),
      y: fc.integer({ min: -60, max: 60 }),
      rotation: fc.integer({ min: -180, max: 180 }),
      hand: fc.constantFrom('left', 'right'),
      finger: fc.constantFrom('thumb', 'index', 'middle', 'ring', 'little'),
      home: fc.boolean(),
    }),
    { minLength: 1, maxLength: 30 },
  )
  .map((keys) => ({
    name: 'scattered',
    keys: keys.map((key, index) => cap(`K${index}`, key.x, key.y, key)),
  }));
