import { boardExtent, type Extent } from '../board/caps.ts';
import type { Board, BoardKey } from '../keymap/types.ts';

/** The halves of a board are drawn this near to one another at most, mm of the board. */
const BETWEEN_HALVES_MM = 4;

/**
 * A board as a sheet shows it: both halves as they are, but moved together, since paper is narrower than a desk; and
 * turned caps never upside down, so that what stands on them can be read.
 */
export function boardForSheet(board: Board): Board {
  const shift = shiftOfRight(board.keys);
  const keys = board.keys.map((key) => ({
    ...key,
    x: key.hand === 'right' ? key.x - shift : key.x,
    rotation: readableTurn(key.rotation),
  }));
  return { ...board, keys };
}

/** How far the right half moves towards the left one, mm; 0 where the halves are near or lie in one another. */
function shiftOfRight(keys: readonly BoardKey[]): number {
  const left = extentOf(keys.filter((key) => key.hand === 'left'));
  const right = extentOf(keys.filter((key) => key.hand === 'right'));
  if (left === null || right === null) return 0;
  return Math.max(0, right.minX - left.maxX - BETWEEN_HALVES_MM);
}

function extentOf(keys: readonly BoardKey[]): Extent | null {
  const [first, ...rest] = keys;
  return first === undefined ? null : boardExtent({ name: '', keys: [first, ...rest] });
}

/** A rectangle looks the same turned by half a circle, and its text stands the right way up within a quarter. */
export function readableTurn(degrees: number): number {
  const turn = ((degrees % 180) + 180) % 180;
  return turn > 90 ? turn - 180 : turn;
}

/** The middle one of the caps' heights or widths, mm: what most keys have. */
export function middling(lengths: readonly number[]): number {
  const sorted = lengths.toSorted((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}
