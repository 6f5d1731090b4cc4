/** A stretch in which two lists differ: what the first has there and what the second has, half-open by index. */
export interface Difference {
  readonly oneFrom: number;
  readonly oneTo: number;
  readonly otherFrom: number;
  readonly otherTo: number;
}

/** Beyond so many single differences the rest counts as one: who differs that much is not compared step by step. */
const MOST_STEPS = 1500;

/**
 * Where two lists differ, with as few insertions and deletions as can be (Myers, An O(ND) difference algorithm, 1986);
 * differences that touch are one. Of several ways the one that takes from the first list earlier.
 */
export function differences(one: readonly string[], other: readonly string[]): readonly Difference[] {
  let start = 0;
  while (start < one.length && start < other.length && one[start] === other[start]) start++;
  let ends = 0;
  while (
    ends < one.length - start &&
    ends < other.length - start &&
    one[one.length - 1 - ends] === other[other.length - 1 - ends]
  )
    ends++;
  const inner = pathBetween(one.slice(start, one.length - ends), other.slice(start, other.length - ends));
  return merged(inner, start);
}

interface Step {
  readonly x: number;
  readonly y: number;
  readonly takes: 'one' | 'other';
}

/** Furthest points by diagonal for each number of steps; then back along them. */
function pathBetween(one: readonly string[], other: readonly string[]): readonly Step[] {
  const most = Math.min(one.length + other.length, MOST_STEPS);
  const offset = most + 1;
  const reach = new Int32Array(2 * offset + 1);
  const kept: Int32Array[] = [];
  for (let steps = 0; steps <= most; steps++) {
    kept.push(reach.slice());
    for (let diagonal = -steps; diagonal <= steps; diagonal += 2) {
      let x = comesDown(reach, offset, diagonal, steps)
        ? (reach[offset + diagonal + 1] ?? 0)
        : (reach[offset + diagonal - 1] ?? 0) + 1;
      while (x < one.length && x - diagonal < other.length && one[x] === other[x - diagonal]) x++;
      reach[offset + diagonal] = x;
      if (x >= one.length && x - diagonal >= other.length)
        return walkedBack(kept, offset, one.length, other.length);
    }
  }
  return [
    ...one.map((_, x): Step => ({ x, y: 0, takes: 'one' })),
    ...other.map((_, y): Step => ({ x: one.length, y, takes: 'other' })),
  ];
}

function comesDown(reach: Int32Array, offset: number, diagonal: number, steps: number): boolean {
  if (diagonal === -steps) return true;
  if (diagonal === steps) return false;
  return (reach[offset + diagonal - 1] ?? 0) < (reach[offset + diagonal + 1] ?? 0);
}

function walkedBack(kept: readonly Int32Array[], offset: number, width: number, height: number): Step[] {
  const steps: Step[] = [];
  let [x, y] = [width, height];
  for (let at = kept.length - 1; at > 0; at--) {
    const reach = kept[at] ?? new Int32Array();
    const down = comesDown(reach, offset, x - y, at);
    const diagonal = x - y + (down ? 1 : -1);
    const fromX = reach[offset + diagonal] ?? 0;
    const fromY = fromX - diagonal;
    steps.push({ x: fromX, y: fromY, takes: down ? 'other' : 'one' });
    [x, y] = [fromX, fromY];
  }
  return steps.reverse();
}

function merged(steps: readonly Step[], start: number): readonly Difference[] {
  const found: { oneFrom: number; oneTo: number; otherFrom: number; otherTo: number }[] = [];
  for (const { x, y, takes } of steps) {
    const last = found.at(-1);
    const [one, other] = [start + x, start + y];
    const touches = last !== undefined && last.oneTo === one && last.otherTo === other;
    const now = touches ? last : { oneFrom: one, oneTo: one, otherFrom: other, otherTo: other };
    if (!touches) found.push(now);
    if (takes === 'one') now.oneTo = one + 1;
    else now.otherTo = other + 1;
  }
  return found;
}
