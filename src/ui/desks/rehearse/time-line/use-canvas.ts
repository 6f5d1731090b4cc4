import { useEffect, useRef, useState } from 'react';

/** A canvas that is as large as its place, drawn at most once a frame. */
export interface CanvasPlace {
  readonly place: React.RefObject<HTMLDivElement | null>;
  readonly canvas: React.RefObject<HTMLCanvasElement | null>;
  /** Width and height of the place, px. */
  readonly size: { readonly width: number; readonly height: number };
  /** Asks for a drawing in the next frame. */
  readonly request: () => void;
}

/** `paint` draws in CSS pixels and gives the height that it needs. */
export function useCanvas(
  paint: (pen: CanvasRenderingContext2D, width: number, height: number) => number,
): CanvasPlace {
  const place = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const [size, setSize] = useState({ width: 0, height: 0 });
  const latest = useRef(paint);
  latest.current = paint;
  const frame = useRef(0);
  const measured = useRef(size);
  const requested = useRef(() => {
    if (frame.current !== 0) return;
    frame.current = requestAnimationFrame(() => {
      frame.current = 0;
      drawNow(canvas.current, measured.current, latest.current);
    });
  });
  useEffect(() => {
    const element = place.current;
    if (element === null) return;
    const watch = new ResizeObserver(() => {
      measured.current = { width: element.clientWidth, height: element.clientHeight };
      setSize(measured.current);
      requested.current();
    });
    watch.observe(element);
    // The theme's colours are read anew when it changes.
    const theme = new MutationObserver(() => requested.current());
    theme.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
    return () => {
      watch.disconnect();
      theme.disconnect();
      cancelAnimationFrame(frame.current);
      frame.current = 0;
    };
  }, []);
  // Whatever has led to this rendering may show on the canvas too.
  useEffect(() => requested.current());
  return { place, canvas, size, request: requested.current };
}

function drawNow(
  canvas: HTMLCanvasElement | null,
  { width, height }: { readonly width: number; readonly height: number },
  paint: (pen: CanvasRenderingContext2D, width: number, height: number) => number,
): void {
  const pen = canvas?.getContext('2d');
  if (canvas === null || pen === null || pen === undefined || width === 0) return;
  const scale = window.devicePixelRatio;
  const before = canvas.height / scale;
  sizeTo(canvas, width, Math.max(height, before), scale);
  pen.setTransform(scale, 0, 0, scale, 0, 0);
  const needed = paint(pen, width, height);
  if (Math.abs(needed - canvas.height / scale) < 1) return;
  sizeTo(canvas, width, needed, scale);
  pen.setTransform(scale, 0, 0, scale, 0, 0);
  paint(pen, width, height);
}

/** Setting the size of a canvas empties it, so it is only set where it differs. */
function sizeTo(canvas: HTMLCanvasElement, width: number, height: number, scale: number): void {
  const [w, h] = [Math.round(width * scale), Math.round(height * scale)];
  if (canvas.width !== w) canvas.width = w;
  if (canvas.height !== h) canvas.height = h;
  canvas.style.width = `${width}px`;
  canvas.style.height = `${height}px`;
}
