import type { Point } from '../../core/board/point.ts';
import type { Frame } from './board-scene.ts';

/** How far one can go in, and out, against the whole board in view. */
export const MOST_ZOOM = 6;
const LEAST_ZOOM = 0.6;

/** One press of a zoom button. */
export const ZOOM_STEP = 1.3;

/** What is looked at: the zoom against the whole board in view, and the point of the board in the middle, mm. */
export interface Camera {
  readonly zoom: number;
  readonly middle: Point;
}

/** The whole board in view. */
export function fitted(board: Frame): Camera {
  return { zoom: 1, middle: { x: board.x + board.width / 2, y: board.y + board.height / 2 } };
}

/**
 * A part of the board in view, as large as it goes. How large that is depends on the shape of the window on it, of which
 * only the proportions count; the whole board fits the window too.
 */
export function fittedTo(part: Frame, board: Frame, window: Pick<Frame, 'width' | 'height'>): Camera {
  const scale = (frame: Frame) => Math.min(window.width / frame.width, window.height / frame.height);
  const { middle } = fitted(part);
  return kept({ zoom: Math.min(scale(part) / scale(board), MOST_ZOOM), middle }, board);
}

/** The part of the board that the camera shows, mm. */
export function shownFrame(camera: Camera, board: Frame): Frame {
  const width = board.width / camera.zoom;
  const height = board.height / camera.zoom;
  return { x: camera.middle.x - width / 2, y: camera.middle.y - height / 2, width, height };
}

/** Zooms by a factor so that the given point of the board stays where it is on screen. */
export function zoomedAt(camera: Camera, board: Frame, point: Point, factor: number): Camera {
  const zoom = Math.min(Math.max(camera.zoom * factor, LEAST_ZOOM), MOST_ZOOM);
  const part = camera.zoom / zoom;
  const middle = {
    x: point.x + (camera.middle.x - point.x) * part,
    y: point.y + (camera.middle.y - point.y) * part,
  };
  return kept({ zoom, middle }, board);
}

/** Moves what is shown, mm on the board. */
export function movedBy(camera: Camera, board: Frame, by: Point): Camera {
  return kept({ ...camera, middle: { x: camera.middle.x + by.x, y: camera.middle.y + by.y } }, board);
}

/** Moves as little as it takes to have a point in view, with room around it, mm. */
export function broughtIntoView(camera: Camera, board: Frame, point: Point, roomMm: number): Camera {
  const frame = shownFrame(camera, board);
  const by = {
    x: missing(point.x, frame.x, frame.width, roomMm),
    y: missing(point.y, frame.y, frame.height, roomMm),
  };
  return by.x === 0 && by.y === 0 ? camera : movedBy(camera, board, by);
}

function missing(at: number, start: number, length: number, room: number): number {
  const margin = Math.min(room, length / 2);
  if (at < start + margin) return at - start - margin;
  return at > start + length - margin ? at - (start + length - margin) : 0;
}

/** The middle never leaves the board, so that it cannot get lost. */
function kept(camera: Camera, board: Frame): Camera {
  const within = (value: number, start: number, length: number) =>
    Math.min(Math.max(value, start), start + length);
  return {
    zoom: camera.zoom,
    middle: {
      x: within(camera.middle.x, board.x, board.width),
      y: within(camera.middle.y, board.y, board.height),
    },
  };
}
