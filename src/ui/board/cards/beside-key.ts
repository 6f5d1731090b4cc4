import { type BoxSize, type Corner, MARGIN, type WindowBox, withinWindow } from '../../widgets/beside-of.ts';

/** Between a card and its key, px. */
const GAP = 10;

/**
 * Where a card stands, px in the window, so that it does not cover its key: to the right of it, else to the left, else
 * under it, else above it; where it fits nowhere, at the side of the window that leaves most of the key in view. What of
 * the window is above `top` is left free, if the card fits under it.
 */
export function besideKey(key: WindowBox, card: BoxSize, win: BoxSize, top = 0): Corner {
  const { left: beside, top: wished } = anywhere(key, card, win);
  // A key may lie outside the window, where a zoomed board shows another part of itself.
  const left = withinWindow(beside, card.width, win.width);
  const least = Math.max(0, Math.min(top, win.height - card.height - 2 * MARGIN));
  return { left, top: Math.max(wished, least + MARGIN) };
}

function anywhere(key: WindowBox, card: BoxSize, win: BoxSize): Corner {
  const across = withinWindow(middleOf(key.left, key.right) - card.width / 2, card.width, win.width);
  const down = withinWindow(middleOf(key.top, key.bottom) - card.height / 3, card.height, win.height);
  if (key.right + GAP + card.width <= win.width - MARGIN) return { left: key.right + GAP, top: down };
  if (key.left - GAP - card.width >= MARGIN) return { left: key.left - GAP - card.width, top: down };
  if (key.bottom + GAP + card.height <= win.height - MARGIN) return { left: across, top: key.bottom + GAP };
  if (key.top - GAP - card.height >= MARGIN) return { left: across, top: key.top - GAP - card.height };
  const isLow = middleOf(key.top, key.bottom) > win.height / 2;
  return { left: across, top: isLow ? MARGIN : Math.max(MARGIN, win.height - card.height - MARGIN) };
}

/** The smallest box that holds all; null where there are none. */
export function boxAround(boxes: readonly WindowBox[]): WindowBox | null {
  if (boxes.length === 0) return null;
  return {
    left: Math.min(...boxes.map((box) => box.left)),
    top: Math.min(...boxes.map((box) => box.top)),
    right: Math.max(...boxes.map((box) => box.right)),
    bottom: Math.max(...boxes.map((box) => box.bottom)),
  };
}

function middleOf(one: number, other: number): number {
  return (one + other) / 2;
}
