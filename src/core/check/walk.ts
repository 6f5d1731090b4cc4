import { distanceMm } from '../board/point.ts';
import type { Board, BoardKey, Keymap } from '../keymap/types.ts';
import type { CheckStep } from './steps.ts';

/**
 * The steps in an order that saves movement: those with the same keys held together, fewest held first; in each such
 * group from the nearest key to the next, beginning at the key farthest to the left (then top, then in document order).
 * Chords come after the single keys of their group.
 */
export function walkOf(keymap: Keymap, steps: readonly CheckStep[]): readonly CheckStep[] {
  const groups = new Map<string, CheckStep[]>();
  for (const step of steps) {
    const name = `${String(step.held.length).padStart(2, '0')} ${[...step.held].sort().join('+')} ${step.keys.length > 1 ? 1 : 0}`;
    groups.set(name, [...(groups.get(name) ?? []), step]);
  }
  const byHeld = [...groups].sort(([one], [other]) => heldCount(one) - heldCount(other));
  return byHeld.flatMap(([, group]) => nearestFirst(keymap.board, group));
}

function heldCount(name: string): number {
  return Number(name.slice(0, 2));
}

/** How far hands travel over steps in that order, mm, from the first key of each to the first of the next. */
export function travelMm(board: Board, steps: readonly CheckStep[]): number {
  const places = steps.map((step) => keyOf(board, step));
  return places.reduce((sum, place, at) => {
    const before = places[at - 1];
    return before === undefined || place === undefined ? sum : sum + distanceMm(before, place);
  }, 0);
}

function nearestFirst(board: Board, group: readonly CheckStep[]): readonly CheckStep[] {
  const left = [...group].sort((one, other) => across(board, one) - across(board, other));
  const walk: CheckStep[] = [];
  let at = left.shift();
  while (at !== undefined) {
    walk.push(at);
    const from = keyOf(board, at);
    const nearest = left.reduce<{ step: CheckStep; far: number } | null>((best, step) => {
      const to = keyOf(board, step);
      const far = from === undefined || to === undefined ? Number.POSITIVE_INFINITY : distanceMm(from, to);
      return best === null || far < best.far ? { step, far } : best;
    }, null);
    if (nearest !== null) left.splice(left.indexOf(nearest.step), 1);
    at = nearest?.step;
  }
  return travelMm(board, walk) <= travelMm(board, group) ? walk : group;
}

const across = (board: Board, step: CheckStep) => {
  const key = keyOf(board, step);
  return key === undefined ? 0 : key.x * 1000 + key.y;
};

function keyOf(board: Board, { keys }: CheckStep): BoardKey | undefined {
  return board.keys.find(({ id }) => id === keys[0]);
}
