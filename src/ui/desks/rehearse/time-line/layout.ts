import type { Lane } from '../../../../core/rehearse/scene.ts';

/** Where everything lies on the time line, px from its top. */
export interface Layout {
  readonly tops: readonly number[];
  readonly laneHeight: number;
  readonly lanesTop: number;
  readonly lanesBottom: number;
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

/** Lays the lanes out in so much height; they get no thinner than can be read, and then it is higher. */
export function layoutOf(lanes: readonly Lane[], height: number, hasOther: boolean): Layout {
  const rows = hasOther ? 3 * ROW : 2 * ROW;
  const gaps = lanes.map(gapBefore);
  const gapSum = gaps.reduce((sum, gap) => sum + gap, 0);
  const room = height - RULER - rows - gapSum - 8;
  const laneHeight = Math.floor(Math.min(LANE.most, Math.max(LANE.least, room / Math.max(1, lanes.length))));
  let at = RULER;
  const tops = gaps.map((gap) => {
    at += gap;
    const top = at;
    at += laneHeight;
    return top;
  });
  const lanesBottom = at + 8;
  // What room is left lies between the lanes and the rows under them.
  const whyTop = Math.max(lanesBottom, height - rows);
  return {
    tops,
    laneHeight,
    lanesTop: RULER,
    lanesBottom: whyTop,
    whyTop,
    outTop: whyTop + ROW,
    otherTop: hasOther ? whyTop + 2 * ROW : null,
    height: whyTop + rows,
  };
}

function gapBefore({ startsHand, startsFinger }: Lane): number {
  if (startsHand) return HAND_GAP;
  return startsFinger ? FINGER_GAP : 0;
}
