import type { Hand, MadeFrom } from '../keymap/types.ts';
import { type BoardDraft, reshaped, withBoard } from './draft.ts';
import { middleOf } from './hand-work.ts';
import { halfOf } from './parametric.ts';
import { minus, type Point, plus, tidy, turned as turnedBy } from './point.ts';

/** The parameters of one half that may differ from the other's. */
export type HalfShape = Pick<MadeFrom, 'columns' | 'thumb' | 'turnDeg'>;

/** The same board, its left half with parameters of its own that say what they said before. */
export function withOwnLeft(madeFrom: MadeFrom): MadeFrom {
  const { columns, thumb, turnDeg, downMm } = halfOf(madeFrom, 'left');
  return { ...madeFrom, left: { columns, thumb, turnDeg, downMm } };
}

/** The board with its left half as the mirror image of the right one. */
export function withMirroredLeft({ left: _, ...madeFrom }: MadeFrom): MadeFrom {
  return madeFrom;
}

/** Changes the parameters of one half, or of both where the left one mirrors the right. */
export function withHalf(madeFrom: MadeFrom, hand: Hand, change: Partial<HalfShape>): MadeFrom {
  return hand === 'left' && madeFrom.left !== undefined
    ? { ...madeFrom, left: { ...madeFrom.left, ...change } }
    : { ...madeFrom, ...change };
}

/**
 * Moves a half. On a board of parameters that is the gap, and with halves of their own how much nearer to the typist
 * the left one lies; with `alike` the other half moves as much the other way. Else all keys of the hand move.
 */
export function moveHalf(draft: BoardDraft, hand: Hand, by: Point, alike: boolean): BoardDraft {
  const { madeFrom } = draft.board;
  const outwards = hand === 'right' ? by.x : -by.x;
  if (madeFrom === undefined) return moved(draft, hand, (at) => plus(at, by), 0, alike);
  const gapMm = within(madeFrom.gapMm + outwards * (alike ? 2 : 1), 0, 600);
  if (alike) return reshaped(draft, { ...madeFrom, gapMm });
  const apart = withOwnLeft(madeFrom);
  const left = apart.left;
  if (left === undefined) return draft;
  const downMm = within(left.downMm + (hand === 'left' ? by.y : -by.y), -150, 150);
  return reshaped(draft, { ...apart, gapMm, left: { ...left, downMm } });
}

/** Turns a half, degrees, clockwise on the board; with `alike` the other half as much the other way. */
export function turnHalf(draft: BoardDraft, hand: Hand, degrees: number, alike: boolean): BoardDraft {
  const { madeFrom } = draft.board;
  if (madeFrom === undefined) {
    const middle = middleOf(draft.board.keys.filter((key) => key.hand === hand));
    return moved(draft, hand, (at) => plus(middle, turnedBy(minus(at, middle), degrees)), degrees, alike);
  }
  const inwards = hand === 'right' ? degrees : -degrees;
  const turned = (to: MadeFrom, which: Hand) =>
    withHalf(to, which, { turnDeg: within(halfOf(to, which).turnDeg + inwards, -45, 45) });
  if (!alike) return reshaped(draft, turned(withOwnLeft(madeFrom), hand));
  const right = turned(madeFrom, 'right');
  return reshaped(draft, right.left === undefined ? right : turned(right, 'left'));
}

/** Moves the keys of a hand by hand; with `alike` the other hand's as in a mirror. */
function moved(
  draft: BoardDraft,
  hand: Hand,
  place: (at: Point) => Point,
  degrees: number,
  alike: boolean,
): BoardDraft {
  const axis = middleOf(draft.board.keys).x;
  const keys = draft.board.keys.map((key) => {
    if (key.hand === hand) {
      const { x, y } = place(key);
      return { ...key, x: tidy(x), y: tidy(y), rotation: tidy(key.rotation + degrees) };
    }
    if (!alike) return key;
    const { x, y } = place({ x: 2 * axis - key.x, y: key.y });
    return { ...key, x: tidy(2 * axis - x), y: tidy(y), rotation: tidy(key.rotation - degrees) };
  });
  return withBoard(draft, { ...draft.board, keys });
}

function within(value: number, least: number, most: number): number {
  return tidy(Math.min(Math.max(value, least), most));
}
