import { type PointerEvent, type RefObject, useRef, useState } from 'react';
import { useBench } from '../../store/bench.ts';
import {
  AT_REST,
  type Gesture,
  type GestureEffect,
  gestureAfter,
  type PointerMove,
} from './board-gesture.ts';
import { type BoardScene, type Frame, keysInFrame } from './board-scene.ts';
import { boardFrame } from './screen-point.ts';
import type { CameraHandle } from './use-camera.ts';

/** Handlers for the bare board: lasso, pan and pinch. `lasso` is the rectangle being drawn, mm. */
export function useBoardGestures(
  svg: RefObject<SVGSVGElement | null>,
  scene: BoardScene,
  camera: CameraHandle,
) {
  const gesture = useRef<Gesture>(AT_REST);
  const [lasso, setLasso] = useState<Frame | null>(null);

  const take = (effect: GestureEffect) => {
    if (svg.current === null) return;
    if (effect.does === 'pan') camera.panPx(effect.by);
    if (effect.does === 'zoom') camera.zoomAtPx(effect.at, effect.factor);
    if (effect.does === 'lasso')
      setLasso(effect.corners === null ? null : boardFrame(svg.current, effect.corners));
    if (effect.does === 'catch') {
      caught(keysInFrame(scene.keys, boardFrame(svg.current, effect.corners)), effect.add);
    }
    if (effect.does === 'clear') cleared();
  };
  const on = (kind: PointerMove['kind']) => (event: PointerEvent<SVGSVGElement>) => {
    const outcome = gestureAfter(gesture.current, moveOf(kind, event));
    gesture.current = outcome.gesture;
    if (kind === 'down' && outcome.gesture.doing === 'press') capture(event);
    // The middle button would start the browser's own scrolling.
    if (kind === 'down' && event.button === 1) event.preventDefault();
    outcome.effects.forEach(take);
  };
  return {
    lasso,
    handlers: {
      onPointerDown: on('down'),
      onPointerMove: on('move'),
      onPointerUp: on('up'),
      onPointerCancel: on('cancel'),
    },
  };
}

function caught(keys: readonly string[], add: boolean): void {
  const { selectKeys, selectedKeys } = useBench.getState();
  selectKeys(add ? [...new Set([...selectedKeys, ...keys])] : keys, 'only');
}

/** A press on the bare board lets go of what is selected, lit or open; what is carried stays in hand. */
function cleared(): void {
  const { selectKeys, light, openCardOf } = useBench.getState();
  selectKeys([], 'only');
  light(null);
  openCardOf(null);
}

function moveOf(kind: PointerMove['kind'], event: PointerEvent<SVGSVGElement>): PointerMove {
  const { target } = event;
  return {
    kind,
    id: event.pointerId,
    at: { x: event.clientX, y: event.clientY },
    touch: event.pointerType === 'touch',
    button: event.button,
    onThing: target instanceof Element && target.closest('[data-key], [data-chord]') !== null,
    shift: event.shiftKey,
  };
}

/** Moves and the release then come here even from outside; a pointer that is gone already cannot be captured. */
function capture(event: PointerEvent<SVGSVGElement>): void {
  try {
    event.currentTarget.setPointerCapture(event.pointerId);
  } catch {
    // Nothing is lost: the gesture ends where the pointer left.
  }
}
