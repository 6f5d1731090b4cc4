import {
  DndContext,
  type DragEndEvent,
  DragOverlay,
  type DragStartEvent,
  getClientRect,
  MouseSensor,
  TouchSensor,
  useSensor,
  useSensors,
} from '@dnd-kit/core';
import { lazy, useState } from 'react';
import { useFindings } from '../../../store/accidents/use-accidents.ts';
import { useAnalysis } from '../../../store/analysis.ts';
import { AnalysisAfterEdit } from '../../../store/analysis-after-edit.tsx';
import { useBench } from '../../../store/bench.ts';
import type { Carried, Target } from '../../../store/bench-state.ts';
import { useBoardDrafts } from '../../../store/board-drafts.ts';
import { usePageView } from '../../../store/page.ts';
import { Board } from '../../board/board.tsx';
import { keyHalfCollision } from '../../board/key-half-collision.ts';
import { Choice } from '../../widgets/choice.tsx';
import { DeskFrame } from '../../widgets/desk-frame.tsx';
import { AccidentsPanel } from './accidents/accidents-panel.tsx';
import { BoardLine } from './board-editor/board-line.tsx';
import { CoveragePanel } from './coverage/coverage-panel.tsx';
import styles from './design-desk.module.css';
import { FindingsPanel } from './findings/findings-panel.tsx';
import { LayerStack } from './layers/layer-stack.tsx';
import { Looking } from './looking.tsx';
import { NeedsPanel } from './needs/needs-panel.tsx';
import { SuggestPanel } from './suggest/suggest-panel.tsx';
import { useEscape } from './use-escape.ts';

/** Drop targets are measured as they are drawn: the SVG's own transforms would be taken off otherwise. */
const MEASURING = { droppable: { measure: (element: HTMLElement) => getClientRect(element) } };

/** A press that hardly moves is a click; a finger must rest first, so that it can still scroll. */
const MOUSE = { activationConstraint: { distance: 5 } };
const TOUCH = { activationConstraint: { delay: 180, tolerance: 8 } };

/** Dragging is for pointers; the keyboard's way is to pick up with Enter and put down with Enter. */
const NO_DRAG_BY_KEYS = {
  draggable: 'Press Enter to pick this up, then Enter on a key of the board to put it down.',
};

/** Most visits never open it. */
const BoardEditor = lazy(async () => ({
  default: (await import('./board-editor/board-editor.tsx')).BoardEditor,
}));

/** The design desk: the keys and what is on them, or in their place the board itself. */
export function DesignDesk() {
  const isOpen = useBoardDrafts((drafts) => drafts.isOpen);
  if (isOpen) return <BoardEditor />;
  return (
    <AnalysisAfterEdit>
      <KeysDesk />
    </AnalysisAfterEdit>
  );
}

/** Needs, board with layers, findings. */
function KeysDesk() {
  const [dragged, setDragged] = useState<Carried | null>(null);
  const putDown = useBench((bench) => bench.putDown);
  useEscape();
  const sensors = useSensors(useSensor(MouseSensor, MOUSE), useSensor(TouchSensor, TOUCH));
  const ended = (event: DragEndEvent) => {
    setDragged(null);
    const what = carriedOf(event.active.data.current);
    const target = targetOf(event.over?.data.current);
    if (what !== null && target !== null) putDown(target, what);
  };
  return (
    <DndContext
      sensors={sensors}
      measuring={MEASURING}
      collisionDetection={keyHalfCollision}
      accessibility={{ screenReaderInstructions: NO_DRAG_BY_KEYS }}
      onDragStart={(event: DragStartEvent) => setDragged(carriedOf(event.active.data.current))}
      onDragCancel={() => setDragged(null)}
      onDragEnd={ended}
    >
      <DeskFrame
        left={<NeedsPanel />}
        leftLabel="Needs"
        leftBadge={<MissingCount />}
        main={
          <div className={styles.main}>
            <BoardLine />
            <div className={styles.board}>
              <Board />
            </div>
            <LayerStack />
          </div>
        }
        right={<RightSide />}
        rightLabel="Findings, coverage, accidents"
        rightBadge={<FindingCount />}
      />
      <DragOverlay dropAnimation={null}>
        {dragged === null ? null : <span className={styles.dragged}>{dragged.label}</span>}
      </DragOverlay>
    </DndContext>
  );
}

const RIGHT = [
  { value: 'findings', label: 'Findings' },
  { value: 'coverage', label: 'Coverage' },
  { value: 'accidents', label: 'Accidents' },
] as const;

/** The search for a chord belongs to the accidents, but needs the place for itself. */
const RIGHT_VIEWS = [...RIGHT.map(({ value }) => value), 'suggest'] as const;

/** Right of the board: what stands against the design, what it covers and at what cost, or what typing sets off. */
function RightSide() {
  const [shown, setShown] = usePageView('right of the board', RIGHT_VIEWS, 'findings');
  return (
    <>
      <div className={styles.switch}>
        <Choice
          label="Right of the board"
          hideLabel
          value={shown === 'suggest' ? 'accidents' : shown}
          options={RIGHT}
          onChange={setShown}
        />
        <Looking />
      </div>
      {shown === 'findings' && <FindingsPanel />}
      {shown === 'coverage' && <CoveragePanel />}
      {shown === 'accidents' && <AccidentsPanel />}
      {shown === 'suggest' && <SuggestPanel onBack={() => setShown('accidents')} />}
    </>
  );
}

/** How many needs are missing: what a closed side must still say. */
function MissingCount() {
  const { needs } = useAnalysis();
  const missing = needs.filter(({ route }) => route === null).length;
  return missing === 0 ? null : missing;
}

function FindingCount() {
  const findings = useFindings();
  return findings.length === 0 ? null : findings.length;
}

type Data = Readonly<Record<string, unknown>> | undefined;

/** What a draggable carries in its data; null if it is none of this desk's. */
function carriedOf(data: Data): Carried | null {
  return data !== undefined && 'carry' in data ? (data as unknown as Carried) : null;
}

/** The key and side of a drop target; null if it is none of the board's. */
function targetOf(data: Data): Target | null {
  return data !== undefined && 'key' in data && 'side' in data ? (data as unknown as Target) : null;
}
