import type { Lane } from '../../../../core/rehearse/scene.ts';

/** Where everything lies on the time line, px from its top. */
export interface Layout {
  /** What is seen begins here: the ruler lies at its top, the rows at its foot, and the lanes scroll between them. */
  readonly scrollTop: number;
  readonly tops: readonly number[];
  readonly laneHeight: number;
  readonly lanesTop: number;
  readonly whyTop: number;
  readonly outTop: number;
  /** The row of the run that is compared; null without one. */
  readonly otherTop: number | null;
  readonly height: number;
}

/** Room for the keys' names at the left, px. */
export const LABELS = 92;
export const RULER = 24;
export const ROW = 28;
const FINGER_GAP = 4;
const HAND_GAP = 20;
const LANE = { least: 11, most: 26 };

/** Whether the lanes, as thin as can be read, need no scrolling. */
export function fitsIn(lanes: readonly Lane[], height: number, hasOther: boolean): boolean {
  return roomFor(lanes, height, hasOther) >= LANE.least * lanes.length;
}

/** What height is left for lanes without the gaps between them. */
function roomFor(lanes: readonly Lane[], height: number, hasOther: boolean): number {
  const gaps = lanes.reduce((sum, lane) => sum + gapBefore(lane), 0);
  return height - RULER - (hasOther ? 3 * ROW : 2 * ROW) - gaps - 8;
}

/**
 * Lays the lanes out in so much height; they get no thinner than can be read, and then it is higher than what is seen
 * of it, which begins at scrollTop.
 */
export function layoutOf(
  lanes: readonly Lane[],
  height: number,
  hasOther: boolean,
  scrollTop: number,
): Layout {
  const rows = hasOther ? 3 * ROW : 2 * ROW;
  const gaps = lanes.map(gapBefore);
  const room = roomFor(lanes, height, hasOther);
  const laneHeight = Math.floor(Math.min(LANE.most, Math.max(LANE.least, room / Math.max(1, lanes.length))));
  let at = RULER;
  const tops = gaps.map((gap) => {
    at += gap;
    const top = at;
    at += laneHeight;
    return top;
  });
  const whole = Math.max(height, at + 8 + rows);
  const seenFrom = Math.max(0, Math.min(scrollTop, whole - height));
  // What room is left lies between the lanes and the rows under them.
  const whyTop = seenFrom + height - rows;
  return {
    scrollTop: seenFrom,
    tops,
    laneHeight,
    lanesTop: RULER,
    whyTop,
    outTop: whyTop + ROW,
    otherTop: hasOther ? whyTop + 2 * ROW : null,
    height: whole,
  };
}

function gapBefore({ startsHand, startsFinger }: Lane): number {
  if (startsHand) return HAND_GAP;
  return startsFinger ? FINGER_GAP : 0;
}
