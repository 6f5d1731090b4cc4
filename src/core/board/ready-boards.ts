import type { MadeFrom } from '../keymap/types.ts';

/** A board that a new design can start from. */
export interface ReadyBoard {
  readonly id: string;
  readonly title: string;
  readonly keys: number;
  readonly madeFrom: MadeFrom;
}

type Column = MadeFrom['columns'][number];

const column = (finger: Column['finger'], staggerMm: number, splayDeg: number, isHome = true): Column => ({
  finger,
  keys: 3,
  homeRow: isHome ? 1 : null,
  staggerMm,
  splayDeg,
});

/** Stagger as wide as fingers differ in length: common practice, no source. */
const STRAIGHT: readonly Column[] = [
  column('index', 5, 0, false),
  column('index', 2, 0),
  column('middle', -4, 0),
  column('ring', 0, 0),
  column('little', 12, 0),
];

/** The same hand with the columns fanned out as the fingers are: common practice, no source. */
const FANNED: readonly Column[] = [
  column('index', 5, 0, false),
  column('index', 2, 0),
  column('middle', -5, 3),
  column('ring', 0, 6),
  column('little', 15, 12),
];

const FLAT: readonly Column[] = STRAIGHT.map((each) => ({ ...each, staggerMm: 0 }));

const OUTER_THREE: Column = column('little', 12, 0, false);
/** Two keys lie at half a pitch above and below their middle: half a pitch lower puts the upper one in the home row. */
const OUTER_TWO: Column = { ...OUTER_THREE, keys: 2, staggerMm: 12 + 19.05 / 2 };

const TWO_THUMBS = { keys: 2, radiusMm: 80, inwardsMm: 9, downMm: 43, turnDeg: 15, stepDeg: 15 };
const THREE_THUMBS = { keys: 3, radiusMm: 80, inwardsMm: 24, downMm: 51.5, turnDeg: 30, stepDeg: 15 };
const STRAIGHT_THUMBS = { keys: 3, radiusMm: 300, inwardsMm: 0, downMm: 38.1, turnDeg: 0, stepDeg: 0 };

const split = (columns: readonly Column[], thumb: MadeFrom['thumb']): MadeFrom => ({
  columns,
  pitchXMm: 19.05,
  pitchYMm: 19.05,
  capGapMm: 1.05,
  thumb,
  gapMm: 70,
  turnDeg: -8,
});

const onePiece: MadeFrom = { ...split(FLAT, STRAIGHT_THUMBS), gapMm: 0, turnDeg: 0 };

/** Boards of 34 to 42 keys, at full pitch; `atPitch` makes the others. */
export const READY_BOARDS: readonly ReadyBoard[] = [
  { id: 'split-34', title: '34 keys, split', keys: 34, madeFrom: split(FANNED, TWO_THUMBS) },
  { id: 'split-36', title: '36 keys, split', keys: 36, madeFrom: split(FANNED, THREE_THUMBS) },
  {
    id: 'split-38',
    title: '38 keys, split',
    keys: 38,
    madeFrom: split([...STRAIGHT, OUTER_TWO], TWO_THUMBS),
  },
  {
    id: 'split-40',
    title: '40 keys, split',
    keys: 40,
    madeFrom: split([...STRAIGHT, OUTER_TWO], THREE_THUMBS),
  },
  {
    id: 'split-42',
    title: '42 keys, split',
    keys: 42,
    madeFrom: split([...STRAIGHT, OUTER_THREE], THREE_THUMBS),
  },
  { id: 'one-piece-36', title: '36 keys, one piece', keys: 36, madeFrom: onePiece },
];
