import { type PointerEvent, type RefObject, useRef } from 'react';
import type { Run } from '../../../../core/rehearse/run.ts';
import { colorsNow } from './colors.ts';
import type { Stretch } from './draw.ts';
import styles from './time-line.module.css';
import { useCanvas } from './use-canvas.ts';
import type { View } from './view.ts';

/** The whole stream in one strip, with the part that is in view. Dragging in it moves along; the keyboard has the time line. */
export function Overview({
  run,
  slips,
  viewNow,
  width: viewWidth,
  redraw,
  onMove,
}: {
  readonly run: Run;
  readonly slips: readonly Stretch[];
  readonly viewNow: () => View;
  readonly width: number;
  /** Is given the way to have the strip drawn anew. */
  readonly redraw: RefObject<() => void>;
  readonly onMove: (from: number) => void;
}) {
  const canvas = useCanvas((pen, width, height) => {
    const colors = colorsNow();
    const scale = width / Math.max(1, run.endMs);
    pen.clearRect(0, 0, width, height);
    pen.fillStyle = colors.sunken;
    pen.fillRect(0, 0, width, height);
    pen.fillStyle = colors.edge;
    let drawn = Number.NEGATIVE_INFINITY;
    for (const { down, up } of run.presses) {
      const right = Math.max(down * scale + 1, (up ?? run.endMs) * scale);
      // Of what falls on the same pixels once is enough.
      if (right - drawn < 0.5) continue;
      drawn = right;
      pen.fillRect(down * scale, height / 2 - 3, right - down * scale, 6);
    }
    pen.fillStyle = colors.broken;
    for (const { fromMs } of slips) pen.fillRect(Math.max(0, fromMs * scale), 2, 2, height - 4);
    const { from, msPerPx } = viewNow();
    const left = Math.max(0, from * scale);
    const right = Math.min(width, (from + viewWidth * msPerPx) * scale);
    pen.strokeStyle = colors.accent;
    pen.lineWidth = 2;
    pen.strokeRect(left + 1, 1, Math.max(4, right - left - 2), height - 2);
    return height;
  });
  redraw.current = canvas.request;
  const held = useRef(false);
  const move = (event: PointerEvent<HTMLElement>) => {
    const { left, width } = event.currentTarget.getBoundingClientRect();
    const t = ((event.clientX - left) / width) * run.endMs;
    onMove(t - (viewWidth * viewNow().msPerPx) / 2);
  };
  return (
    <div
      ref={canvas.place}
      className={styles.overview}
      onPointerDown={(event) => {
        held.current = true;
        event.currentTarget.setPointerCapture(event.pointerId);
        move(event);
      }}
      onPointerMove={(event) => {
        if (held.current) move(event);
      }}
      onPointerUp={() => {
        held.current = false;
      }}
    >
      <canvas ref={canvas.canvas} />
    </div>
  );
}
