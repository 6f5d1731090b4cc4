import type { Point } from '../../core/board/point.ts';
import type { Frame } from './board-scene.ts';

/** A point of the window, px, as a point of the board, mm. */
export function boardPoint(svg: SVGSVGElement, at: Point): Point {
  const matrix = svg.getScreenCTM()?.inverse();
  if (matrix === undefined) return at;
  const { x, y } = new DOMPoint(at.x, at.y).matrixTransform(matrix);
  return { x, y };
}

/** How many mm of the board one px of the window shows. */
export function mmPerPx(svg: SVGSVGElement): number {
  const scale = svg.getScreenCTM()?.a ?? 1;
  return scale === 0 ? 1 : 1 / scale;
}

/** The rectangle of the board between two points of the window. */
export function boardFrame(svg: SVGSVGElement, corners: readonly [Point, Point]): Frame {
  const [one, other] = [boardPoint(svg, corners[0]), boardPoint(svg, corners[1])];
  return {
    x: Math.min(one.x, other.x),
    y: Math.min(one.y, other.y),
    width: Math.abs(one.x - other.x),
    height: Math.abs(one.y - other.y),
  };
}
