import { useMemo, useState } from 'react';
import type { Overlay } from '../../../core/board/overlay.ts';
import { heatOf } from '../../../core/practice/heat.ts';
import { wantedNeed } from '../../../core/practice/session.ts';
import { useOpenPractice, usePractice } from '../../../store/practice/practice.ts';
import { useChosenOverlay } from '../../../store/rehearse/kept-overlays.ts';
import { Choice } from '../../widgets/choice.tsx';
import { DeskFrame } from '../../widgets/desk-frame.tsx';
import { hintFor } from './hint.ts';
import { type HeatOf, heatFigures, heatLegend, overlayFigures } from './key-figures.ts';
import { NeedsSide } from './needs-side.tsx';
import styles from './practise.module.css';
import { type BoardShows, PractiseBoard } from './practise-board.tsx';
import { ProgressSide } from './progress-side.tsx';
import { Stage } from './stage.tsx';
import { type Room, useRoom } from './use-room.ts';
import { useHesitation, useRun } from './use-run.ts';

/** The practise desk: what there is to learn, one prompt at a time over the board, and how it goes. */
export function PractiseDesk() {
  useOpenPractice();
  const room = useRoom();
  const session = usePractice((state) => state.current);
  const choices = usePractice((state) => state.choices);
  const { overlay } = useChosenOverlay(room.keymap.board);
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
      isAtRest={!running.active}
      main={
        <div className={styles.main}>
          <Stage room={room} running={running} session={session} hint={hint} />
          {running.active ? (
            <div className={styles.board}>
              <PractiseBoard
                keymap={room.keymap}
                host={room.host}
                pressed={running.pressed}
                label={hint === null ? 'The board, without legends' : `The board: ${hint.words}`}
                shows={hint === null ? CAPS : { shows: 'layer', layer: hint.layer, lights: hint.lights }}
              />
            </div>
          ) : (
            <RestingBoard room={room} overlay={overlay} />
          )}
        </div>
      }
      right={<ProgressSide designName={room.keymap.name} />}
      rightLabel="Progress, care"
    />
  );
}

const CAPS: BoardShows = { shows: 'caps' };
const NO_LIGHTS: ReadonlyMap<string, string> = new Map();
const NOTHING: ReadonlySet<string> = new Set();

type View = 'keys' | 'overlay' | HeatOf;

const VIEWS: readonly { readonly value: View; readonly label: string }[] = [
  { value: 'keys', label: 'Keys' },
  { value: 'overlay', label: 'My keyboard' },
  { value: 'errors', label: 'Errors' },
  { value: 'speed', label: 'Speed' },
];

/** What a view of the board means, in a line; the keys speak for themselves. */
function viewWords(view: View): string | null {
  if (view === 'keys') return null;
  if (view === 'overlay') return 'Which key of the keyboard at hand stands for which key of the board.';
  return heatLegend(view);
}

/** The board between sessions: the base layer, how another keyboard is laid onto it, or how it goes key by key. */
function RestingBoard({ room, overlay }: { readonly room: Room; readonly overlay: Overlay }) {
  const [wished, setView] = useState<View>('keys');
  const isOnEngine = usePractice((state) => state.choices.input === 'engine');
  const heat = useMemo(() => heatOf(room.progress, room.ways), [room]);
  const views = VIEWS.filter(
    ({ value }) => value === 'keys' || (value === 'overlay' ? isOnEngine : heat.size > 0),
  );
  const view = views.find(({ value }) => value === wished)?.value ?? 'keys';
  const shows = useMemo((): BoardShows => {
    const { board, layers } = room.keymap;
    if (view === 'keys') return { shows: 'layer', layer: layers[0]?.id ?? '', lights: NO_LIGHTS };
    const marks = view === 'overlay' ? overlayFigures(board, overlay) : heatFigures(board, heat, view);
    return { shows: 'figures', marks };
  }, [view, heat, overlay, room.keymap]);
  const words = viewWords(view);
  return (
    <>
      <div className={styles.board} data-rest="true">
        <PractiseBoard
          keymap={room.keymap}
          host={room.host}
          pressed={NOTHING}
          shows={shows}
          label={words === null ? 'The board, base layer' : `The board: ${words}`}
        />
      </div>
      {views.length > 1 && (
        <div className={styles.views}>
          <Choice label="The board shows" hideLabel value={view} options={views} onChange={setView} />
          <p className={styles.quiet}>{words}</p>
        </div>
      )}
    </>
  );
}
