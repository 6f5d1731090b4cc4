import type { Point } from '../../core/board/point.ts';

/** A pointer on the board, client px. */
export interface PointerMove {
  readonly kind: 'down' | 'move' | 'up' | 'cancel';
  readonly id: number;
  readonly at: Point;
  readonly touch: boolean;
  /** 0 the main button, 1 the middle one. */
  readonly button: number;
  /** The press began on a key or a tag, which then has its own use for it. */
  readonly onThing: boolean;
  readonly shift: boolean;
}

/** What a gesture does; px in the window. */
export type GestureEffect =
  | { readonly does: 'pan'; readonly by: Point }
  | { readonly does: 'zoom'; readonly at: Point; readonly factor: number }
  /** Null: the lasso is taken away. */
  | { readonly does: 'lasso'; readonly corners: readonly [Point, Point] | null }
  | { readonly does: 'catch'; readonly corners: readonly [Point, Point]; readonly add: boolean }
  /** A press on the bare board that moved nothing. */
  | { readonly does: 'clear' };

/** How far a pointer goes before a press becomes a gesture, px. */
export const SLACK_PX = 5;

type Doing = 'nothing' | 'press' | 'pan' | 'lasso' | 'pinch';

/** What the board remembers of the pointers that are down on it. */
export interface Gesture {
  readonly doing: Doing;
  readonly from: Point;
  readonly add: boolean;
  readonly asPan: boolean;
  readonly pointers: ReadonlyMap<number, Point>;
}

/** No pointer is down. */
export const AT_REST: Gesture = {
  doing: 'nothing',
  from: { x: 0, y: 0 },
  add: false,
  asPan: false,
  pointers: new Map(),
};

interface Outcome {
  readonly gesture: Gesture;
  readonly effects: readonly GestureEffect[];
}

/**
 * What a pointer's move makes of a gesture. A mouse draws a lasso on the bare board and pans with the middle button;
 * one finger pans, two fingers pan and zoom, wherever they lie. A cancelled gesture leaves no trace.
 */
export function gestureAfter(gesture: Gesture, move: PointerMove): Outcome {
  switch (move.kind) {
    case 'down':
      return pressed(gesture, move);
    case 'move':
      return gesture.pointers.has(move.id) ? moved(gesture, move) : { gesture, effects: [] };
    case 'up':
    case 'cancel':
      return lifted(gesture, move);
  }
}

function pressed(gesture: Gesture, move: PointerMove): Outcome {
  const pointers = new Map(gesture.pointers).set(move.id, move.at);
  const held = { ...gesture, pointers };
  if (pointers.size === 2 && move.touch) {
    const effects: GestureEffect[] = gesture.doing === 'lasso' ? [{ does: 'lasso', corners: null }] : [];
    return { gesture: { ...held, doing: 'pinch' }, effects };
  }
  const isMine = pointers.size === 1 && (move.button === 1 || (move.button === 0 && !move.onThing));
  if (!isMine) return { gesture: held, effects: [] };
  const asPan = move.touch || move.button === 1;
  return { gesture: { ...held, doing: 'press', from: move.at, add: move.shift, asPan }, effects: [] };
}

function moved(gesture: Gesture, move: PointerMove): Outcome {
  const before = gesture.pointers.get(move.id) ?? move.at;
  const pointers = new Map(gesture.pointers).set(move.id, move.at);
  const held = { ...gesture, pointers };
  const by = { x: move.at.x - before.x, y: move.at.y - before.y };
  switch (gesture.doing) {
    case 'press':
      return begun(held, move);
    case 'pan':
      return { gesture: held, effects: [{ does: 'pan', by }] };
    case 'lasso':
      return { gesture: held, effects: [{ does: 'lasso', corners: [gesture.from, move.at] }] };
    case 'pinch':
      return { gesture: held, effects: pinched(gesture.pointers, pointers) };
    case 'nothing':
      return { gesture: held, effects: [] };
  }
}

function begun(held: Gesture, move: PointerMove): Outcome {
  const by = { x: move.at.x - held.from.x, y: move.at.y - held.from.y };
  if (Math.hypot(by.x, by.y) < SLACK_PX) return { gesture: held, effects: [] };
  return held.asPan
    ? { gesture: { ...held, doing: 'pan' }, effects: [{ does: 'pan', by }] }
    : { gesture: { ...held, doing: 'lasso' }, effects: [{ does: 'lasso', corners: [held.from, move.at] }] };
}

function lifted(gesture: Gesture, move: PointerMove): Outcome {
  const pointers = new Map(gesture.pointers);
  pointers.delete(move.id);
  // The finger that stays after a pinch does nothing more.
  const left: Gesture = { ...gesture, pointers, doing: 'nothing' };
  if (gesture.doing === 'lasso') {
    const caught: GestureEffect = { does: 'catch', corners: [gesture.from, move.at], add: gesture.add };
    const away: GestureEffect = { does: 'lasso', corners: null };
    return { gesture: left, effects: move.kind === 'up' ? [away, caught] : [away] };
  }
  const isClick = gesture.doing === 'press' && move.kind === 'up' && move.button === 0;
  return { gesture: left, effects: isClick ? [{ does: 'clear' }] : [] };
}

function pinched(before: ReadonlyMap<number, Point>, now: ReadonlyMap<number, Point>): GestureEffect[] {
  const [was, is] = [spanOf(before), spanOf(now)];
  const factor = was.width < 1 ? 1 : is.width / was.width;
  return [
    { does: 'pan', by: { x: is.middle.x - was.middle.x, y: is.middle.y - was.middle.y } },
    { does: 'zoom', at: is.middle, factor },
  ];
}

function spanOf(pointers: ReadonlyMap<number, Point>): { readonly middle: Point; readonly width: number } {
  const [one = { x: 0, y: 0 }, other = one] = [...pointers.values()];
  return {
    middle: { x: (one.x + other.x) / 2, y: (one.y + other.y) / 2 },
    width: Math.hypot(one.x - other.x, one.y - other.y),
  };
}
