import { type PointerEvent, type RefObject, useEffect, useRef } from 'react';
import { LABELS } from './layout.ts';

/** The wheel moves along the stream; with Control, or by pinching, it zooms about the pointer. */
export function useWheel(
  place: RefObject<HTMLDivElement | null>,
  act: (px: number, factor: number, atPx: number) => void,
): void {
  const latest = useRef(act);
  latest.current = act;
  useEffect(() => {
    const element = place.current;
    if (element === null) return;
    const turned = (event: WheelEvent) => {
      const canScroll = element.scrollHeight > element.clientHeight + 1;
      if (!event.ctrlKey && event.deltaX === 0 && !event.shiftKey && canScroll) return;
      event.preventDefault();
      const unit = event.deltaMode === 1 ? 16 : 1;
      const atPx = event.clientX - element.getBoundingClientRect().left - LABELS;
      if (event.ctrlKey) latest.current(0, Math.exp(event.deltaY * unit * 0.004), atPx);
      else latest.current((event.deltaX + event.deltaY) * unit, 1, atPx);
    };
    // React's own listener may not keep the page from zooming.
    element.addEventListener('wheel', turned, { passive: false });
    return () => element.removeEventListener('wheel', turned);
  }, [place]);
}

/** A drag moves along, a click goes to a moment. */
export function useDrag(onMove: (px: number) => void, onClick: (atPx: number) => void) {
  const from = useRef<{ x: number; moved: boolean } | null>(null);
  return {
    onPointerDown: (event: PointerEvent<HTMLElement>) => {
      if (event.button !== 0) return;
      from.current = { x: event.clientX, moved: false };
      event.currentTarget.setPointerCapture(event.pointerId);
    },
    onPointerMove: (event: PointerEvent<HTMLElement>) => {
      const start = from.current;
      if (start === null) return;
      const px = event.clientX - start.x;
      if (!start.moved && Math.abs(px) < 4) return;
      from.current = { x: event.clientX, moved: true };
      onMove(px);
    },
    onPointerUp: (event: PointerEvent<HTMLElement>) => {
      const start = from.current;
      from.current = null;
      if (start === null || start.moved) return;
      const atPx = event.clientX - event.currentTarget.getBoundingClientRect().left - LABELS;
      if (atPx >= 0) onClick(atPx);
    },
    onPointerCancel: () => {
      from.current = null;
    },
  };
}
