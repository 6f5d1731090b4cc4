import { type RefObject, useRef } from 'react';
import { isBreakDue, spellsOf } from '../../../core/practice/care.ts';
import { diagnosisWords } from '../../../core/practice/fault-words.ts';
import type { Session } from '../../../core/practice/session.ts';
import { useBench } from '../../../store/bench.ts';
import { type KnownHost, useHost } from '../../../store/hosts.ts';
import { usePractice } from '../../../store/practice/practice.ts';
import { ComputerQuestion } from '../../board/computer/computer-question.tsx';
import { ComputerSays } from '../../board/computer/computer-says.tsx';
import { type Computer, useComputer } from '../../board/computer/use-computer.ts';
import { Elsewhere } from '../../board/elsewhere.tsx';
import { Button } from '../../widgets/button.tsx';
import { DeskStage } from '../../widgets/desk-stage.tsx';
import { useFocusKept } from '../../widgets/use-focus-kept.ts';
import type { Hint } from './hint.ts';
import styles from './practise.module.css';
import { minutesWords, promptReason, strayWords } from './practise-words.ts';
import { PromptLine } from './prompt-line.tsx';
import { SessionChoices } from './session-choices.tsx';
import { SessionSummary, Welcome } from './session-summary.tsx';
import type { Room } from './use-room.ts';
import type { Running } from './use-run.ts';

/** What stands over the board: the prompt, or how to begin. */
export function Stage(props: {
  readonly room: Room;
  readonly running: Running;
  readonly session: Session | null;
  readonly hint: Hint | null;
}) {
  const { room, running, session, hint } = props;
  const readOnly = useBench((bench) => bench.readOnly);
  const known = useHost(room.keymap);
  const computer = useComputer(known);
  const { active } = running;
  const focus = useStageFocus(session === null ? 'idle' : active ? 'drill' : 'paused');
  if (session !== null && active) {
    return <Prompting room={room} running={running} session={session} hint={hint} focus={focus} />;
  }
  if (readOnly) return <Elsewhere label="Practise" todo="Practise it" />;
  if (computer.asking) return <ComputerQuestion computer={computer} title={known.table.title} />;
  const start = { computer, known, running, focus };
  return session !== null ? <Paused session={session} start={start} /> : <Idle room={room} start={start} />;
}

/** Where the focus goes when one stage gives way to another. */
interface StageFocus {
  readonly stage: RefObject<HTMLElement | null>;
  readonly goOn: RefObject<HTMLButtonElement | null>;
}

/** After a pause it is the way on. When a session ends by itself somebody is typing, who must press no button by that. */
function useStageFocus(shown: 'idle' | 'drill' | 'paused'): StageFocus {
  const stage = useRef<HTMLElement>(null);
  const goOn = useRef<HTMLButtonElement>(null);
  useFocusKept(shown, () => (shown === 'paused' ? goOn.current : stage.current));
  return { stage, goOn };
}

/** What a session is begun with. */
interface Start {
  readonly computer: Computer;
  readonly known: KnownHost;
  readonly running: Running;
  readonly focus: StageFocus;
}

/** Begins or goes on; on the real board only once it is known, or nobody wants to know, how this computer reads it. */
function BeginButton(props: {
  readonly start: Start;
  readonly onBoard: boolean;
  readonly tone: 'plain' | 'accent';
  readonly disabled?: boolean;
  readonly children: string;
}) {
  const { start, onBoard, ...rest } = props;
  const { computer, running, focus } = start;
  const begin = onBoard && computer.toBeAsked ? computer.ask : running.begin;
  return <Button {...rest} ref={focus.goOn} onClick={begin} autoFocus={onBoard && computer.told > 0} />;
}

function Prompting({
  room,
  running,
  session,
  hint,
  focus,
}: {
  readonly room: Room;
  readonly running: Running;
  readonly session: Session;
  readonly hint: Hint | null;
  readonly focus: StageFocus;
}) {
  const prompt = session.prompts.at(-1);
  if (prompt === undefined) return null;
  return (
    <DeskStage label="Drill" centred tabIndex={-1} ref={focus.stage}>
      <p className={styles.reason}>{promptReason(prompt, room.textTitle)}</p>
      <PromptLine prompt={prompt} session={session} keymap={room.keymap} host={room.host} />
      <Word room={room} running={running} session={session} hint={hint} />
      <div className={styles.bar}>
        <TimeLine session={session} />
        <Button tone="quiet" onClick={running.hint} disabled={hint !== null}>
          Hint
        </Button>
        <Button tone="quiet" onClick={running.pause}>
          Pause
        </Button>
        {session.input === 'board' && !running.locked && document.fullscreenEnabled && (
          <Button tone="quiet" onClick={running.enterFullScreen}>
            Full screen
          </Button>
        )}
        <span className={styles.quiet}>
          Escape held for half a second shows the hint; held for a second it pauses.
        </span>
      </div>
    </DeskStage>
  );
}

/** One line under the prompt, always there so that nothing jumps: the slip, else the hint, else nothing. */
function Word({
  room,
  running,
  session,
  hint,
}: {
  readonly room: Room;
  readonly running: Running;
  readonly session: Session;
  readonly hint: Hint | null;
}) {
  const { slip } = session;
  const stray = running.strayCode;
  return (
    <div className={styles.word} aria-live="polite">
      {slip !== null && (
        <p className={styles.slip} data-testid="slip">
          {diagnosisWords(room.keymap, slip).slice(0, 2).join(' ')}
        </p>
      )}
      {slip === null && stray !== null && <p className={styles.quiet}>{strayWords(stray)}</p>}
      {hint !== null && <p className={styles.quiet}>{hint.words}</p>}
    </div>
  );
}

function TimeLine({ session }: { readonly session: Session }) {
  const { activeMs, minutes } = session;
  const share = Math.min(1, activeMs / (minutes * 60_000));
  return (
    <span className={styles.time}>
      <svg viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true" className={styles.timeBar}>
        <rect width="100" height="4" className={styles.timeAll} />
        <rect width={100 * share} height="4" className={styles.timeDone} />
      </svg>
      {minutesWords(activeMs, minutes)}
    </span>
  );
}

function Paused({ session, start }: { readonly session: Session; readonly start: Start }) {
  const onBoard = session.input === 'board';
  const end = usePractice((state) => state.end);
  return (
    <DeskStage label="Paused session">
      <h2>Paused</h2>
      <p>
        {minutesWords(session.activeMs, session.minutes)}, {session.attempts.length} typed. Nothing of it is
        lost, even if the page is closed.
      </p>
      {onBoard && <ComputerSays computer={start.computer} known={start.known} />}
      <div className={styles.bar}>
        <BeginButton start={start} onBoard={onBoard} tone="accent">
          Go on
        </BeginButton>
        <Button onClick={end}>End the session</Button>
      </div>
    </DeskStage>
  );
}

function Idle({ room, start }: { readonly room: Room; readonly start: Start }) {
  const ended = usePractice((state) => state.ended);
  const last = ended.at(-1);
  const isRecent = last !== undefined && Date.now() - (last.endedAt ?? 0) < 30 * 60_000;
  const isBreak = isBreakDue(spellsOf(ended), Date.now());
  const group = usePractice((state) => state.choices.group);
  const isRealBoard = usePractice((state) => state.choices.input === 'board');
  const cannot = room.ranked.every((need) => group !== null && need.group !== group);
  return (
    <DeskStage label="Practise" tabIndex={-1} ref={start.focus.stage}>
      {isRecent ? <SessionSummary room={room} session={last} /> : <Welcome room={room} />}
      {isBreak && (
        <p className={styles.rest} role="status">
          Twenty minutes without a break: five minutes away from the keys now.
        </p>
      )}
      {isRealBoard && !cannot && <ComputerSays computer={start.computer} known={start.known} />}
      <div className={styles.bar}>
        <BeginButton
          start={start}
          onBoard={isRealBoard}
          tone={isBreak ? 'plain' : 'accent'}
          disabled={cannot}
        >
          {isRecent ? 'Another session' : 'Begin'}
        </BeginButton>
      </div>
      <div className={styles.how}>
        <SessionChoices board={room.keymap.board} />
      </div>
    </DeskStage>
  );
}
