import { type KeyboardEvent, useMemo, useRef } from 'react';
import { overlappingCaps } from '../../../../core/board/caps.ts';
import type { BoardDraft } from '../../../../core/board/draft.ts';
import { middleOf } from '../../../../core/board/hand-work.ts';
import { keysOutOfReach } from '../../../../core/board/reach.ts';
import { legendOf } from '../../../../core/host/legend.ts';
import { bindingOn } from '../../../../core/keymap/lookup.ts';
import type { Finger, KeyId } from '../../../../core/keymap/types.ts';
import { useBench } from '../../../../store/bench.ts';
import { useHost } from '../../../../store/hosts.ts';
import { tabStopOf } from '../../../board/tab-stop.ts';
import { useCamera } from '../../../board/use-camera.ts';
import { ZoomButtons } from '../../../board/zoom-buttons.tsx';
import styles from './canvas.module.css';
import { useSteadyFrame } from './canvas-frame.ts';
import { HalfHandles, Plates } from './half-handles.tsx';
import { obey } from './obey.ts';
import { shapeCommandOf } from './shape-command.ts';
import type { Tool } from './shape-gesture.ts';
import { ShapeKey } from './shape-key.tsx';
import { shapeLabel } from './shape-words.ts';
import { useBecame } from './use-became.ts';
import { useBoardWork } from './use-board-work.ts';
import { useShapeGestures } from './use-shape-gestures.ts';

/** The board that is being worked on, to scale, to take hold of. */
export function ShapeCanvas({ tool, finger }: { readonly tool: Tool; readonly finger: Finger }) {
  const svg = useRef<SVGSVGElement>(null);
  const work = useBoardWork();
  const { draft, shown, selected, alike } = work;
  // The frame follows finished steps only: it must not move under a gesture.
  const frame = useSteadyFrame(draft.board);
  const camera = useCamera(svg, frame);
  const { guides, lasso, handlers } = useShapeGestures(svg, { draft, selected, alike, tool, finger }, camera);
  const legends = useLegends(shown);
  const wrong = useWrong(shown);
  const { x, y, width, height } = camera.frame;
  const pressed = (event: KeyboardEvent<SVGSVGElement>) => {
    const key = event.target instanceof Element ? event.target.getAttribute('data-key') : null;
    const command = key === null ? null : shapeCommandOf(event);
    if (key === null || command === null) return;
    event.preventDefault();
    event.stopPropagation();
    obey(command, key, work, svg.current);
  };
  return (
    <div className={styles.canvas} data-tool={tool}>
      {/* biome-ignore lint/a11y/useSemanticElements: a drawing is no fieldset */}
      <svg
        ref={svg}
        className={styles.svg}
        viewBox={`${x} ${y} ${width} ${height}`}
        role="group"
        aria-label={`Board: ${shown.board.name}`}
        {...handlers}
        onKeyDown={pressed}
      >
        <MillimetrePaper frame={camera.frame} />
        {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of shapes takes no focus */}
        <g aria-hidden="true">
          <Plates board={shown.board} />
          {shown.board.keys.map((key) => (
            <ShapeKey
              key={key.id}
              shape={key}
              legend={legends.get(key.id) ?? ''}
              selected={selected.includes(key.id)}
              isNew={!legends.has(key.id)}
              wrong={wrong.has(key.id)}
            />
          ))}
          {guides.map((guide) => (
            <line
              key={`${guide.of} ${guide.from.x} ${guide.from.y}`}
              className={styles.guide}
              x1={guide.from.x}
              y1={guide.from.y}
              x2={guide.to.x}
              y2={guide.to.y}
            />
          ))}
        </g>
        <ShapeButtons draft={shown} selected={selected} known={legends} />
        <HalfHandles board={shown.board} />
        <TurnHandle draft={shown} selected={selected} />
        {lasso !== null && <rect className={styles.lasso} {...lasso} />}
      </svg>
      <ZoomButtons camera={camera} />
    </div>
  );
}

/** Paper with a cross at every centimetre, so that the eye has a measure. */
function MillimetrePaper({
  frame,
}: {
  readonly frame: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
}) {
  return (
    <>
      <defs>
        <pattern id="centimetres" width={10} height={10} patternUnits="userSpaceOnUse">
          <path className={styles.cross} d="M-0.8 0h1.6M0 -0.8v1.6M9.2 0h0.8M0 9.2v0.8" />
        </pattern>
      </defs>
      {/* Wide enough for any window's proportions. */}
      <rect
        x={frame.x - frame.width}
        y={frame.y - frame.height}
        width={frame.width * 3}
        height={frame.height * 3}
        fill="url(#centimetres)"
      />
    </>
  );
}

/** The keys that can be focused; they have no looks of their own but the focus ring. */
function ShapeButtons({
  draft,
  selected,
  known,
}: {
  readonly draft: BoardDraft;
  readonly selected: readonly KeyId[];
  readonly known: ReadonlyMap<KeyId, string>;
}) {
  const { board } = draft;
  const tabStop = tabStopOf(board, selected[0] ?? null);
  return (
    <g role="listbox" aria-multiselectable="true" aria-label="Keys">
      {board.keys.map((key) => (
        <g
          key={key.id}
          role="option"
          aria-selected={selected.includes(key.id)}
          aria-label={shapeLabel(board, key, !known.has(key.id))}
          tabIndex={key.id === tabStop ? 0 : -1}
          data-key={key.id}
          className={styles.hold}
          transform={`translate(${key.x} ${key.y}) rotate(${key.rotation})`}
        >
          <rect
            x={-key.width / 2 - 0.7}
            y={-key.height / 2 - 0.7}
            width={key.width + 1.4}
            height={key.height + 1.4}
            rx={3.2}
          />
        </g>
      ))}
    </g>
  );
}

/** Above what is selected: drag it round to turn the keys about their middle. */
function TurnHandle({
  draft,
  selected,
}: {
  readonly draft: BoardDraft;
  readonly selected: readonly KeyId[];
}) {
  const { alike } = useBoardWork();
  const all = selected.flatMap((id) => draft.board.keys.find((key) => key.id === id) ?? []);
  // With both halves alike the first key's hand leads, and the other one follows.
  const keys = alike ? all.filter(({ hand }) => hand === all[0]?.hand) : all;
  if (keys.length === 0) return null;
  const { x, y } = middleOf(keys);
  const top = Math.min(...keys.map((key) => key.y - Math.hypot(key.width, key.height) / 2)) - 3;
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of shapes takes no focus
    <g data-grip="turn" className={styles.turn} aria-hidden="true">
      <line x1={x} y1={y} x2={x} y2={top} />
      <circle cx={x} cy={top - 2.6} r={2.6} />
      <path
        transform={`translate(${x - 4.1} ${top - 6.8})`}
        d="M2.8 4.8a1.5 1.5 0 1 1 2.5.2M5.4 5.2l-.2-.9M5.4 5.2l.9-.2"
      />
    </g>
  );
}

/** What the design types with each key on its base layer; keys of the draft that are none of the design's are not in it. */
function useLegends(draft: BoardDraft): ReadonlyMap<KeyId, string> {
  const keymap = useBench((bench) => bench.keymap);
  const { host } = useHost(keymap);
  const { became } = useBecame(draft);
  return useMemo(() => {
    const base = keymap.layers[0];
    return new Map(
      Object.entries(became).map(([was, now]): [KeyId, string] => {
        const tap = base && bindingOn(base, was)?.tap;
        return [now, tap === undefined ? '' : legendOf(tap, { keymap, host })];
      }),
    );
  }, [keymap, host, became]);
}

function useWrong({ board }: BoardDraft): ReadonlySet<KeyId> {
  return useMemo(
    () => new Set([...overlappingCaps(board).flat(), ...keysOutOfReach(board).map(({ key }) => key)]),
    [board],
  );
}
