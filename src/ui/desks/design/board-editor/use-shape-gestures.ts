import { type PointerEvent, type RefObject, useEffect, useRef, useState } from 'react';
import { keyAt } from '../../../../core/board/hand-work.ts';
import type { Point } from '../../../../core/board/point.ts';
import type { Guide } from '../../../../core/board/snap.ts';
import { useBoardDrafts } from '../../../../store/board-drafts.ts';
import type { Frame } from '../../../board/board-scene.ts';
import { boardPoint, mmPerPx } from '../../../board/screen-point.ts';
import type { CameraHandle } from '../../../board/use-camera.ts';
import {
  AT_REST,
  type Grip,
  type ShapeMove,
  type ShapeOutcome,
  type ShapeScene,
  shapeAfter,
} from './shape-gesture.ts';

/** How far a press goes before it is a drag, and within what a key falls into place, px in the window. */
const SLACK_PX = 4;
const SNAP_PX = 7;

const NO_GUIDES: readonly Guide[] = [];

/** Handlers for the pointer on a board that is being worked on; what is drawn while a gesture goes on. */
export function useShapeGestures(
  svg: RefObject<SVGSVGElement | null>,
  scene: Omit<ShapeScene, 'slackMm' | 'snapMm'>,
  camera: CameraHandle,
) {
  const gesture = useRef(AT_REST);
  const panning = useRef<Point | null>(null);
  const [guides, setGuides] = useState(NO_GUIDES);
  const [lasso, setLasso] = useState<Frame | null>(null);

  const take = (outcome: ShapeOutcome) => {
    const { change, select, show } = useBoardDrafts.getState();
    gesture.current = outcome.gesture;
    setGuides(outcome.guides);
    setLasso(outcome.lasso === null ? null : rectangle(outcome.lasso));
    if (outcome.commit !== undefined) {
      const { title, draft, select: selected } = outcome.commit;
      change(title, draft, selected);
    } else show(outcome.preview);
    if (outcome.select !== undefined) select(outcome.select);
  };
  const pan = (event: PointerEvent<SVGSVGElement>) => {
    capture(event);
    panning.current = { x: event.clientX, y: event.clientY };
  };
  const move = (kind: ShapeMove['kind'], event: PointerEvent<SVGSVGElement>) => {
    const element = svg.current;
    if (element === null) return;
    const at = boardPoint(element, { x: event.clientX, y: event.clientY });
    const grip = gripOf(event, at, scene);
    // On bare ground a finger moves what is in view.
    if (kind === 'down' && event.pointerType === 'touch' && grip.on === 'bare' && scene.tool === 'arrange') {
      return pan(event);
    }
    if (kind === 'down') capture(event);
    const scale = mmPerPx(element);
    // A finger has no Shift: its presses add keys and take them away.
    const more = event.shiftKey || event.pointerType === 'touch';
    const free = event.altKey;
    take(
      shapeAfter(
        gesture.current,
        { kind, at, grip, more, free },
        { ...scene, slackMm: SLACK_PX * scale, snapMm: SNAP_PX * scale },
      ),
    );
  };
  const cancel = () => {
    gesture.current = AT_REST;
    setGuides(NO_GUIDES);
    setLasso(null);
    useBoardDrafts.getState().show(null);
  };
  useEscapeFrom(() => gesture.current.doing !== 'rest', cancel);

  return {
    guides,
    lasso,
    handlers: {
      onPointerDown: (event: PointerEvent<SVGSVGElement>) => {
        if (event.button === 0) move('down', event);
        if (event.button !== 1) return;
        event.preventDefault();
        pan(event);
      },
      onPointerMove: (event: PointerEvent<SVGSVGElement>) => {
        const last = panning.current;
        if (last === null) {
          if (gesture.current.doing !== 'rest') move('move', event);
          return;
        }
        camera.panPx({ x: event.clientX - last.x, y: event.clientY - last.y });
        panning.current = { x: event.clientX, y: event.clientY };
      },
      onPointerUp: (event: PointerEvent<SVGSVGElement>) => {
        panning.current = null;
        if (gesture.current.doing !== 'rest') move('up', event);
      },
      onPointerCancel: () => {
        panning.current = null;
        cancel();
      },
    },
  };
}

/** Escape gives up what the pointer is doing, wherever the focus is, before anything else has a use for the key. */
function useEscapeFrom(isBusy: () => boolean, cancel: () => void): void {
  const now = useRef({ isBusy, cancel });
  now.current = { isBusy, cancel };
  useEffect(() => {
    const pressed = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || !now.current.isBusy()) return;
      event.preventDefault();
      event.stopPropagation();
      now.current.cancel();
    };
    document.addEventListener('keydown', pressed, true);
    return () => document.removeEventListener('keydown', pressed, true);
  }, []);
}

function gripOf(event: PointerEvent, at: Point, { draft }: Pick<ShapeScene, 'draft'>): Grip {
  const { target } = event;
  const handle = target instanceof Element ? target.closest('[data-grip]') : null;
  const on = handle?.getAttribute('data-grip');
  if (on === 'turn') return { on };
  if (on === 'half' || on === 'half-turn') {
    return { on, hand: handle?.getAttribute('data-hand') === 'left' ? 'left' : 'right' };
  }
  const key = keyAt(draft.board.keys, at);
  return key === undefined ? { on: 'bare' } : { on: 'key', key: key.id };
}

function rectangle([one, other]: readonly [Point, Point]): Frame {
  return {
    x: Math.min(one.x, other.x),
    y: Math.min(one.y, other.y),
    width: Math.abs(one.x - other.x),
    height: Math.abs(one.y - other.y),
  };
}

function capture(event: PointerEvent<SVGSVGElement>): void {
  try {
    event.currentTarget.setPointerCapture(event.pointerId);
  } catch {
    // Nothing is lost: the gesture ends where the pointer left.
  }
}
