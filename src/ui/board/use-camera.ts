import { type RefObject, useCallback, useEffect, useRef, useState } from 'react';
import type { Point } from '../../core/board/point.ts';
import type { Frame } from './board-scene.ts';
import {
  broughtIntoView,
  type Camera,
  fitted,
  fittedTo,
  movedBy,
  shownFrame,
  ZOOM_STEP,
  zoomedAt,
} from './camera.ts';
import { boardPoint, mmPerPx } from './screen-point.ts';

/** How far one wheel step zooms, by the px that it reports. */
const ZOOM_PER_PX = 0.0016;
/** How much of the board stays in view around a key that is looked at, mm. */
const ROOM_MM = 16;

/** What the board's camera shows, and the ways to move it. */
export interface CameraHandle {
  readonly frame: Frame;
  readonly zoomed: boolean;
  /** Window px. */
  readonly panPx: (by: Point) => void;
  readonly zoomAtPx: (at: Point, factor: number) => void;
  readonly zoomIn: () => void;
  readonly zoomOut: () => void;
  readonly fit: () => void;
  /** Fits a part of the board into the window on it. */
  readonly fitTo: (part: Frame) => void;
  readonly show: (point: Point) => void;
}

/** The camera over a board: fitted at first and whenever the board's extent changes; the wheel zooms. */
export function useCamera(svg: RefObject<SVGSVGElement | null>, board: Frame): CameraHandle {
  const [state, setState] = useState<{ readonly board: Frame; readonly camera: Camera | null }>({
    board,
    camera: null,
  });
  const camera = (state.board === board ? state.camera : null) ?? fitted(board);
  const now = useRef(camera);
  now.current = camera;
  const set = useCallback(
    (next: Camera | null) => {
      now.current = next ?? fitted(board);
      setState({ board, camera: next });
    },
    [board],
  );
  const panPx = (by: Point) => {
    if (svg.current === null) return;
    const scale = mmPerPx(svg.current);
    set(movedBy(now.current, board, { x: -by.x * scale, y: -by.y * scale }));
  };
  const zoomAtPx = useCallback(
    (at: Point, factor: number) => {
      if (svg.current !== null) set(zoomedAt(now.current, board, boardPoint(svg.current, at), factor));
    },
    [svg, board, set],
  );
  const fit = useCallback(() => set(null), [set]);
  const fitTo = useCallback(
    (part: Frame) => {
      const { width, height } = svg.current?.getBoundingClientRect() ?? { width: 0, height: 0 };
      if (width > 0 && height > 0) set(fittedTo(part, board, { width, height }));
    },
    [svg, board, set],
  );
  useWheel(svg, zoomAtPx);
  return {
    frame: shownFrame(camera, board),
    zoomed: camera.zoom !== 1,
    panPx,
    zoomAtPx,
    zoomIn: () => set(zoomedAt(now.current, board, now.current.middle, ZOOM_STEP)),
    zoomOut: () => set(zoomedAt(now.current, board, now.current.middle, 1 / ZOOM_STEP)),
    fit,
    fitTo,
    show: (point) => {
      const next = broughtIntoView(now.current, board, point, ROOM_MM);
      if (next !== now.current) set(next);
    },
  };
}

/** React listens to the wheel passively, so that the page would scroll as well. */
function useWheel(svg: RefObject<SVGSVGElement | null>, zoomAtPx: CameraHandle['zoomAtPx']): void {
  useEffect(() => {
    const element = svg.current;
    if (element === null) return;
    const turned = (event: WheelEvent) => {
      // A pinch on a touch pad comes as a wheel with Control. Without it a page that scrolls keeps its wheel.
      if (!event.ctrlKey && pageScrolls()) return;
      event.preventDefault();
      const factor = Math.exp(-event.deltaY * ZOOM_PER_PX * (event.ctrlKey ? 5 : 1));
      zoomAtPx({ x: event.clientX, y: event.clientY }, factor);
    };
    element.addEventListener('wheel', turned, { passive: false });
    return () => element.removeEventListener('wheel', turned);
  }, [svg, zoomAtPx]);
}

function pageScrolls(): boolean {
  const page = document.scrollingElement;
  return page !== null && page.scrollHeight > page.clientHeight + 1;
}
