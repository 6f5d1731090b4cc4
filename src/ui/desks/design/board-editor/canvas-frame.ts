import { useRef } from 'react';
import { boardExtent } from '../../../../core/board/caps.ts';
import type { Board } from '../../../../core/keymap/types.ts';
import type { Frame } from '../../../board/board-scene.ts';

/** Room around the caps for the handles of the halves, mm. */
const AIR = { aside: 14, above: 22, below: 14 };
/** A frame that a board fills less of than this is too large. */
const LEAST_FILLED = 0.7;

/** What is shown of a board at least, mm. */
function frameOf(board: Board): Frame {
  const { minX, minY, maxX, maxY } = boardExtent(board);
  return {
    x: minX - AIR.aside,
    y: minY - AIR.above,
    width: maxX - minX + 2 * AIR.aside,
    height: maxY - minY + AIR.above + AIR.below,
  };
}

function holds(outer: Frame, inner: Frame): boolean {
  return (
    inner.x >= outer.x &&
    inner.y >= outer.y &&
    inner.x + inner.width <= outer.x + outer.width &&
    inner.y + inner.height <= outer.y + outer.height
  );
}

/** The frame to show a board in: the one before for as long as the board fits and fills it, so that work does not shift it. */
export function steadyFrame(before: Frame | null, board: Board): Frame {
  const needed = frameOf(board);
  const fits =
    before !== null &&
    holds(before, needed) &&
    needed.width >= before.width * LEAST_FILLED &&
    needed.height >= before.height * LEAST_FILLED;
  return fits ? before : needed;
}

/** A frame that stays while a board is worked on, and the board that it was made for. */
export function useSteadyFrame(board: Board): { readonly frame: Frame; readonly framed: Board } {
  const before = useRef<{ readonly frame: Frame; readonly framed: Board } | null>(null);
  const frame = steadyFrame(before.current?.frame ?? null, board);
  if (before.current?.frame !== frame) before.current = { frame, framed: board };
  return before.current;
}
