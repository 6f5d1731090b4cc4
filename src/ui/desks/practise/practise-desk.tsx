import { useMemo, useState } from 'react';
import { readyOverlays } from '../../../core/board/overlay.ts';
import { heatOf } from '../../../core/practice/heat.ts';
import { wantedNeed } from '../../../core/practice/session.ts';
import { usePractice } from '../../../store/practice/practice.ts';
import { Choice } from '../../widgets/choice.tsx';
import { DeskFrame } from '../../widgets/desk-frame.tsx';
import { type HeatOf, heatLegend, heatMarks } from './heat-marks.ts';
import { hintFor } from './hint.ts';
import { NeedsSide } from './needs-side.tsx';
import styles from './practise.module.css';
import { type BoardShows, PractiseBoard } from './practise-board.tsx';
import { ProgressSide } from './progress-side.tsx';
import { Stage } from './stage.tsx';
import { type Room, useRoom } from './use-room.ts';
import { useHesitation, useRun } from './use-run.ts';

/** The practise desk: what there is to learn, one prompt at a time over the board, and how it goes. */
export function PractiseDesk() {
  const room = useRoom();
  const session = usePractice((state) => state.current);
  const choices = usePractice((state) => state.choices);
  const overlays = useMemo(() => readyOverlays(room.keymap.board), [room.keymap.board]);
  const overlay = overlays.find(({ id }) => id === choices.overlay) ?? overlays[0] ?? NO_OVERLAY;
  const running = useRun(room, overlay);
  useHesitation(running, session, choices.hints);
  const asked = session === null || !running.active ? null : wantedNeed(session);
  const hint = useMemo(
    () => (asked === null || session?.hinted !== true ? null : hintFor(asked, room.keymap, room.ways)),
    [asked, session?.hinted, room],
  );
  const ranked = useMemo(
    () => (session === null ? room.ranked : room.materialFor(session).ranked),
    [room, session],
  );
  const waiting = ranked.filter(({ standing }) => standing !== 'known').length;
  return (
    <DeskFrame
      left={<NeedsSide room={room} ranked={ranked} asked={asked} />}
      leftLabel="To learn"
      leftBadge={waiting === 0 ? null : waiting}
      main={
        <div className={styles.main} data-active={running.active}>
          <Stage room={room} running={running} session={session} hint={hint} overlays={overlays} />
          {running.active ? (
            <div className={styles.board}>
              <PractiseBoard
                keymap={room.keymap}
                host={room.host}
                pressed={running.pressed}
                label={hint === null ? 'The board, without legends' : `The board: ${hint.words}`}
                shows={hint === null ? CAPS : { shows: 'layer', layer: hint.layer, lit: hint.lit }}
              />
            </div>
          ) : (
            <RestingBoard room={room} />
          )}
        </div>
      }
      right={<ProgressSide designName={room.keymap.name} />}
      rightLabel="Progress, care"
    />
  );
}

const NO_OVERLAY = { id: '', title: '', keys: {} };
const CAPS: BoardShows = { shows: 'caps' };
const NOTHING: ReadonlySet<string> = new Set();

const VIEWS = [
  { value: 'keys', label: 'Keys' },
  { value: 'errors', label: 'Errors' },
  { value: 'speed', label: 'Speed' },
] as const;

/** The board between sessions: the base layer, or how it goes key by key. */
function RestingBoard({ room }: { readonly room: Room }) {
  const [view, setView] = useState<'keys' | HeatOf>('keys');
  const heat = useMemo(() => heatOf(room.progress, room.ways), [room]);
  const shows = useMemo((): BoardShows => {
    if (view === 'keys') return { shows: 'layer', layer: room.keymap.layers[0]?.id ?? '', lit: null };
    return { shows: 'heat', marks: heatMarks(room.keymap.board, heat, view) };
  }, [view, heat, room.keymap]);
  return (
    <>
      <div className={styles.board}>
        <PractiseBoard
          keymap={room.keymap}
          host={room.host}
          pressed={NOTHING}
          shows={shows}
          label={view === 'keys' ? 'The board, base layer' : `The board: ${heatLegend(view)}`}
        />
      </div>
      {heat.size > 0 && (
        <div className={styles.views}>
          <Choice label="The board shows" hideLabel value={view} options={VIEWS} onChange={setView} />
          {view !== 'keys' && <p className={styles.quiet}>{heatLegend(view)}</p>}
        </div>
      )}
    </>
  );
}
