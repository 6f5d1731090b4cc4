/** An upright rectangle in the window, px. */
export interface WindowBox {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** What a sheet or the window measures, px. */
export interface BoxSize {
  readonly width: number;
  readonly height: number;
}

/** Where the upper left corner of a sheet stands, px in the window. */
export interface Corner {
  readonly left: number;
  readonly top: number;
}

/** Between a sheet and its anchor, px. */
const GAP = 4;
/** Between a sheet and the window's edge, px. */
export const MARGIN = 8;

/**
 * Where a sheet stands beside its anchor, px in the window: under it with the left edges in line; above it where
 * there is no room under it and more above; always wholly in the window if it fits in at all.
 */
export function besideOf(anchor: WindowBox, sheet: BoxSize, win: BoxSize): Corner {
  const under = anchor.bottom + GAP;
  const above = anchor.top - GAP - sheet.height;
  const fitsUnder = under + sheet.height <= win.height - MARGIN;
  const moreAbove = anchor.top > win.height - anchor.bottom;
  return {
    left: withinWindow(anchor.left, sheet.width, win.width),
    top: withinWindow(fitsUnder || !moreAbove ? under : above, sheet.height, win.height),
  };
}

/** The nearest start at which a length lies in the window, its margin left free. */
export function withinWindow(start: number, length: number, whole: number): number {
  return Math.max(MARGIN, Math.min(start, whole - length - MARGIN));
}
