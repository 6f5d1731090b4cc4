import { type KeyboardEvent, useEffect, useMemo, useRef } from 'react';
import { decisionWords } from '../../../../core/rehearse/decision-words.ts';
import type { Names } from '../../../../core/rehearse/key-words.ts';
import type { Run } from '../../../../core/rehearse/run.ts';
import { lanesOf, lanesSeen, type Mark, sceneOf } from '../../../../core/rehearse/scene.ts';
import { IconButton } from '../../../widgets/button.tsx';
import { colorsNow } from './colors.ts';
import { draw, type Stretch } from './draw.ts';
import { fitsIn, LABELS, layoutOf } from './layout.ts';
import { lineCommand } from './line-command.ts';
import { momentWords } from './moment-words.ts';
import { momentBeside, momentNear } from './moments.ts';
import { Overview } from './overview.tsx';
import styles from './time-line.module.css';
import { useCanvas } from './use-canvas.ts';
import { useDrag, useWheel } from './use-pointing.ts';
import { fitted, following, moved, type View, withInView, zoomed } from './view.ts';

interface TimeLineProps {
  readonly run: Run;
  /** What the run is of: while it stays the same, so does the view. */
  readonly subject: unknown;
  readonly names: Names;
  /** The run that is held against it, on a row of its own. */
  readonly other: Run | null;
  readonly slips: readonly Stretch[];
  readonly differences: readonly Stretch[];
  readonly cursorMs: number | null;
  readonly onCursor: (t: number) => void;
  /** The run grows: the newest is kept in view. */
  readonly follows: boolean;
}

/** How much closer one step of zooming brings. */
const ZOOM = 1.4;
/** A click goes to a moment that is so near, px. */
const SNAP = 6;

/** A run as an oscilloscope shows it: a lane a key, and under them why and what came out. */
export function TimeLine(props: TimeLineProps) {
  const { run, names, other, cursorMs, onCursor, follows } = props;
  /** Null shows the whole stream, however wide the window gets. */
  const view = useRef<View | null>(null);
  const keyCount = run.presses.length;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a run that is typed live grows in place
  const lanes = useMemo(() => lanesOf(run, names), [run, names, keyCount]);
  const canvas = useCanvas((pen, width, height) => {
    const right = width - LABELS;
    const now = follows ? following(run.endMs, right) : (view.current ?? fitted(run.endMs, right));
    const until = now.from + right * now.msPerPx;
    // Where all have no room, as on a phone, those without anything to see make way.
    const shown = fitsIn(lanes, height, other !== null) ? lanes : lanesSeen(run, lanes, now.from, until);
    const layout = layoutOf(shown, height, other !== null, canvas.place.current?.scrollTop ?? 0);
    draw(pen, {
      ...props,
      scene: sceneOf(run, shown, now.from, until),
      lanes: shown,
      layout,
      view: now,
      width,
      colors: colorsNow(),
      otherNotes: other === null ? [] : sceneOf(other, [], now.from, until).notes,
      endMs: run.endMs,
      wordsOf: (mark: Mark) => wordsOfMark(run, mark, names),
    });
    return layout.height;
  });
  const width = canvas.size.width - LABELS;
  const overview = useRef<() => void>(() => {});
  const show = (next: View | null) => {
    view.current = next;
    canvas.request();
    overview.current();
  };
  const current = () => view.current ?? fitted(run.endMs, width);
  const zoom = (factor: number, atPx = width / 2) => show(zoomed(current(), atPx, factor, run.endMs, width));
  const toMoment = (t: number) => {
    onCursor(Math.min(run.endMs, Math.max(0, t)));
  };
  // Another stream is another picture; after typing the whole of it is shown.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the subject is what makes it another stream
  useEffect(() => {
    view.current = null;
    canvas.request();
    overview.current();
  }, [props.subject, follows]);
  useEffect(() => {
    if (cursorMs === null || view.current === null || width <= 0) return;
    view.current = withInView(view.current, cursorMs, run.endMs, width);
    canvas.request();
    overview.current();
  }, [cursorMs, run, width, canvas.request]);
  useWheel(canvas.place, (px, factor, atPx) => {
    show(
      factor === 1
        ? moved(current(), px, run.endMs, width)
        : zoomed(current(), atPx, factor, run.endMs, width),
    );
  });
  const drag = useDrag(
    (px) => show(moved(current(), -px, run.endMs, width)),
    (atPx) => {
      const { from, msPerPx } = current();
      toMoment(momentNear(run, from + atPx * msPerPx, SNAP * msPerPx));
    },
  );
  const pressed = (event: KeyboardEvent) => {
    const command = lineCommand(event);
    if (command === null) return;
    event.preventDefault();
    const at = cursorMs ?? 0;
    switch (command.do) {
      case 'beside':
        return toMoment(momentBeside(run, at, command.way));
      case 'step':
        return toMoment(at + command.ms);
      case 'end':
        return toMoment(command.at === 'first' ? 0 : run.endMs);
      case 'page':
        return show(moved(current(), 0.9 * command.way * width, run.endMs, width));
      case 'zoom':
        return zoom(command.closer ? 1 / ZOOM : ZOOM);
      default:
        return show(null);
    }
  };
  return (
    <section className={styles.line} aria-label="Time line">
      <div className={styles.tools}>
        <Overview
          run={run}
          slips={props.slips}
          viewNow={current}
          width={width}
          redraw={overview}
          onMove={(from) => show(moved({ ...current(), from }, 0, run.endMs, width))}
        />
        <IconButton label="Zoom out (−)" onClick={() => zoom(ZOOM)}>
          −
        </IconButton>
        <IconButton label="Zoom in (+)" onClick={() => zoom(1 / ZOOM)}>
          +
        </IconButton>
        <IconButton label="The whole stream (0)" onClick={() => show(null)}>
          ↔
        </IconButton>
      </div>
      <div
        ref={canvas.place}
        className={styles.place}
        role="slider"
        tabIndex={0}
        aria-label="Moment on the time line"
        aria-valuemin={0}
        aria-valuemax={Math.round(run.endMs)}
        aria-valuenow={Math.round(cursorMs ?? 0)}
        aria-valuetext={momentWords(run, cursorMs ?? 0, names)}
        onKeyDown={pressed}
        onScroll={canvas.request}
        {...drag}
      >
        <canvas ref={canvas.canvas} />
      </div>
    </section>
  );
}

function wordsOfMark(run: Run, { decision }: Mark, names: Names): string {
  const found = run.decisions[decision];
  return found === undefined ? '' : decisionWords(run, found, names);
}
