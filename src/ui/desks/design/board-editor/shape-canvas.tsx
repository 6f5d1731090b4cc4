import { type FocusEvent, type KeyboardEvent, useMemo, useRef, useState } from 'react';
import { overlappingCaps } from '../../../../core/board/caps.ts';
import type { BoardDraft } from '../../../../core/board/draft.ts';
import { partnersOf } from '../../../../core/board/partners.ts';
import { keysOutOfReach } from '../../../../core/board/reach.ts';
import { legendOf } from '../../../../core/host/legend.ts';
import { bindingOn } from '../../../../core/keymap/lookup.ts';
import type { Finger, KeyId } from '../../../../core/keymap/types.ts';
import { useBench } from '../../../../store/bench.ts';
import { useHost } from '../../../../store/hosts.ts';
import { useCamera } from '../../../board/use-camera.ts';
import { ZoomButtons } from '../../../board/zoom-buttons.tsx';
import styles from './canvas.module.css';
import { useSteadyFrame } from './canvas-frame.ts';
import { GuideLine, MillimetrePaper, Reach, TurnHandle } from './canvas-marks.tsx';
import { HalfHandles, Plates } from './half-handles.tsx';
import { obey } from './obey.ts';
import { ShapeButtons } from './shape-buttons.tsx';
import { shapeCommandOf } from './shape-command.ts';
import type { Tool } from './shape-gesture.ts';
import { ShapeKey } from './shape-key.tsx';
import { useBecame } from './use-became.ts';
import { useBoardWork } from './use-board-work.ts';
import { useShapeGestures } from './use-shape-gestures.ts';

/** The board that is being worked on, to scale, to take hold of. */
export function ShapeCanvas({ tool, finger }: { readonly tool: Tool; readonly finger: Finger }) {
  const svg = useRef<SVGSVGElement>(null);
  const [spoken, say] = useState('');
  const work = useBoardWork();
  const { draft, shown, selected, alike } = work;
  // The frame follows finished steps only: it must not move under a gesture.
  const { frame, framed } = useSteadyFrame(draft.board);
  const camera = useCamera(svg, frame);
  const { guides, lasso, handlers } = useShapeGestures(svg, { draft, selected, alike, tool, finger }, camera);
  const legends = useLegends(shown);
  const wrong = useWrong(shown);
  const following = useFollowing(shown, selected, alike);
  const { x, y, width, height } = camera.frame;
  const pressed = (event: KeyboardEvent<SVGSVGElement>) => {
    const key = event.target instanceof Element ? event.target.getAttribute('data-key') : null;
    const command = key === null ? null : shapeCommandOf(event);
    if (key === null || command === null) return;
    event.preventDefault();
    event.stopPropagation();
    obey(command, key, work, svg.current, say);
  };
  const focused = (event: FocusEvent<SVGSVGElement>) => {
    const key = draft.board.keys.find(({ id }) => id === event.target.getAttribute('data-key'));
    if (key !== undefined) camera.show(key);
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
        onFocus={focused}
      >
        <MillimetrePaper frame={camera.frame} />
        {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of shapes takes no focus */}
        <g aria-hidden="true">
          <Plates board={shown.board} />
          <Reach board={shown.board} selected={selected} />
          {shown.board.keys.map((key) => (
            <ShapeKey
              key={key.id}
              shape={key}
              legend={legends.get(key.id) ?? ''}
              selected={selected.includes(key.id)}
              follows={following.has(key.id)}
              isNew={!legends.has(key.id)}
              wrong={wrong.has(key.id)}
            />
          ))}
          {guides.map((guide) => (
            <GuideLine key={`${guide.of} ${guide.from.x} ${guide.from.y}`} guide={guide} />
          ))}
        </g>
        <ShapeButtons draft={shown} selected={selected} known={legends} />
        <HalfHandles board={shown.board} />
        <TurnHandle draft={shown} selected={selected} />
        {lasso !== null && <rect className={styles.lasso} {...lasso} />}
      </svg>
      <ZoomButtons camera={camera} board={framed} />
      <output className={styles.spoken}>{spoken}</output>
    </div>
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

/** The mirror images that go along with what is selected. */
function useFollowing(
  { board }: BoardDraft,
  selected: readonly KeyId[],
  alike: boolean,
): ReadonlySet<KeyId | undefined> {
  return useMemo(() => {
    const partners = partnersOf(board);
    return new Set(alike ? selected.map((key) => partners.get(key)) : []);
  }, [board, selected, alike]);
}
