interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Between a sheet and its anchor, px. */
const GAP = 4;
/** Between a sheet and the window's edge, px. */
const MARGIN = 8;

/**
 * Where a sheet stands beside its anchor, px in the window: under it with the left edges in line; above it where
 * there is no room under it and more above; always wholly in the window if it fits in at all.
 */
export function besideOf(
  anchor: Box,
  sheet: Size,
  win: Size,
): { readonly left: number; readonly top: number } {
  const under = anchor.bottom + GAP;
  const above = anchor.top - GAP - sheet.height;
  const fitsUnder = under + sheet.height <= win.height - MARGIN;
  const moreAbove = anchor.top > win.height - anchor.bottom;
  return {
    left: within(anchor.left, sheet.width, win.width),
    top: within(fitsUnder || !moreAbove ? under : above, sheet.height, win.height),
  };
}

function within(start: number, length: number, whole: number): number {
  return Math.max(MARGIN, Math.min(start, whole - length - MARGIN));
}
