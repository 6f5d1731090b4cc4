import type { Board, BoardKey, Finger, Hand } from '../../core/keymap/types.ts';

/** Fingers of a half's six columns, from the outer edge to the middle of the board. */
const FINGERS: readonly Finger[] = ['little', 'little', 'ring', 'middle', 'index', 'index'];
/** How far each column is moved towards the typist, mm. */
const STAGGER_MM: readonly number[] = [14, 14, 5, 0, 4, 6];
const PITCH_X_MM = 18;
const PITCH_Y_MM = 17;
/** The mirror line between the halves, mm from the left edge. */
const MIDDLE_MM = 160;

function place(hand: Hand, x: number): number {
  return hand === 'left' ? x : 2 * MIDDLE_MM - x;
}

function columnKeys(hand: Hand, column: number): BoardKey[] {
  const finger = FINGERS[column] ?? 'index';
  return [1, 2, 3].map((row) => ({
    id: `${hand === 'left' ? 'L' : 'R'}${row}${column}`,
    x: place(hand, column * PITCH_X_MM),
    y: row * PITCH_Y_MM + (STAGGER_MM[column] ?? 0),
    rotation: 0,
    width: 17.5,
    height: 16.5,
    hand,
    finger,
    home: row === 2 && column > 0 && column < 5,
  }));
}

function thumbKeys(hand: Hand): BoardKey[] {
  return [0, 1, 2].map((index) => ({
    id: `${hand === 'left' ? 'L' : 'R'}T${index}`,
    x: place(hand, 74 + index * 20),
    y: 78 + index * 4,
    rotation: (hand === 'left' ? 1 : -1) * index * 10,
    width: 17.5,
    height: 16.5,
    hand,
    finger: 'thumb',
    home: index === 1,
  }));
}

/**
 * A split board of 42 keys: per half six columns of three and three thumb keys. Ids are hand, row (1 to 3 from the
 * top) and column (0 at the outer edge), for example L21; the thumb keys are LT0 to RT2, outer first.
 */
export function benchBoard(): Board {
  const half = (hand: Hand): BoardKey[] => [
    ...FINGERS.flatMap((_, column) => columnKeys(hand, column)),
    ...thumbKeys(hand),
  ];
  return { name: 'Bench, 42 keys', keys: [...half('left'), ...half('right')] };
}
