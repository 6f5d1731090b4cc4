import { useEffect, useLayoutEffect, useMemo, useState } from 'react';
import type { Board, Hand } from '../../core/keymap/types.ts';
import { useBench } from '../../store/bench.ts';
import { useMedia } from '../widgets/use-media.ts';
import { halfFrame, handOf } from './half-frames.ts';
import type { CameraHandle } from './use-camera.ts';

/** On a page as narrow as this the keys of a whole board are too small to read. */
const NARROW = '(max-width: 639px)';

/**
 * On a narrow page the board is looked at one half at a time, beginning with the left one. What lights up comes into
 * view: its half, or the whole board where both hands have a part in it. Null where the whole board has room, and for
 * a board of one hand. `drawn` is the board that is seen, where it is another than the design's.
 */
export function useHalfView(
  camera: CameraHandle,
  drawn?: Board,
): { readonly shown: Hand; readonly other: Hand; readonly turn: () => void } | null {
  const ofDesign = useBench((bench) => bench.keymap.board);
  const board = drawn ?? ofDesign;
  const lit = useBench((bench) => bench.lit);
  const narrow = useMedia(NARROW);
  const [hand, setHand] = useState<Hand>('left');
  const halves = useMemo(
    () => ({ left: halfFrame(board, 'left'), right: halfFrame(board, 'right') }),
    [board],
  );
  const part = halves[hand];
  const isApart = narrow && halves.left !== null && halves.right !== null;
  const { fit: showAll, fitTo } = camera;
  useLayoutEffect(() => {
    if (isApart && part !== null) fitTo(part);
    else showAll();
  }, [isApart, part, showAll, fitTo]);
  useEffect(() => {
    if (!isApart || lit === null || lit.keys.length === 0) return;
    const only = handOf(board, lit.keys);
    const half = only === null ? null : halves[only];
    if (only === null || half === null) return showAll();
    setHand(only);
    fitTo(half);
  }, [isApart, lit, board, halves, showAll, fitTo]);
  if (!isApart) return null;
  const other = hand === 'left' ? 'right' : 'left';
  return { shown: hand, other, turn: () => setHand(other) };
}
