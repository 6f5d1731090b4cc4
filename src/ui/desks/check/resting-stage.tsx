import { useEffect, useRef } from 'react';
import type { StepResult } from '../../../core/check/judge.ts';
import { stepMoves } from '../../../core/check/step-words.ts';
import type { CheckStep } from '../../../core/check/steps.ts';
import type { CheckRoom } from '../../../store/check/check.ts';
import { ComputerSays } from '../../board/computer/computer-says.tsx';
import type { Computer } from '../../board/computer/use-computer.ts';
import { mayLock } from '../../board/typing/use-typing.ts';
import { Button } from '../../widgets/button.tsx';
import { DeskStage } from '../../widgets/desk-stage.tsx';
import styles from './check.module.css';
import { count, moveWords, pauseWords, planWords, type Tally, tallyWords } from './check-words.ts';
import type { CheckRun } from './use-check-run.ts';

interface Resting {
  readonly room: CheckRoom;
  readonly computer: Computer;
  readonly walk: readonly CheckStep[];
  readonly results: ReadonlyMap<string, StepResult>;
  /** What only full screen shows and was not pressed there yet. */
  readonly lockable: readonly CheckStep[];
  readonly tally: Tally;
  readonly run: CheckRun;
  startOver(): void;
}

/** The middle of the desk while nothing is pressed: what will be asked for, why it waits, or that it is over. */
export function RestingStage(props: Resting) {
  const { room, computer, walk, tally, run } = props;
  const isOver = run.step === null;
  const { title, goOn } = useFocusAfter(run, isOver);
  return (
    <DeskStage label="Check">
      <h2 tabIndex={-1} ref={title}>
        {titleWords(run, isOver)}
      </h2>
      <p>{tally.pressed > 0 ? `${tallyWords(tally)}.` : planWords(walk)}</p>
      {run.pause !== null && <p role="status">{pauseWords(run.pause)}</p>}
      {!isOver && <ComputerSays computer={computer} known={room.known} />}
      {!isOver && run.pause === null && (
        <p className={styles.quiet}>
          Meanwhile the page keeps all keys for itself, Tab and F5 too. To stop, hold Escape of any keyboard
          for a second, or press nothing for half a minute: then every button can be reached with Tab, and you
          go on whenever you like.
        </p>
      )}
      {run.step !== null && run.pause !== null && (
        <p className={styles.quiet}>
          Next: {moveWords(stepMoves({ keymap: room.keymap, host: room.known.host }, run.step))}.
        </p>
      )}
      {isOver && <LockableLeft {...props} />}
      <RestingButtons {...props} goOn={goOn} />
    </DeskStage>
  );
}

function titleWords(run: CheckRun, isOver: boolean): string {
  if (isOver) return 'Everything has been pressed';
  return run.pause === null ? 'Does the board do what the design says?' : 'Stopped';
}

/** Keys are the page's again: where they go on from. */
function useFocusAfter(run: CheckRun, isOver: boolean) {
  const title = useRef<HTMLHeadingElement>(null);
  const goOn = useRef<HTMLButtonElement>(null);
  const wasPressing = run.pause !== null || (isOver && run.last !== null);
  useEffect(() => {
    if (!wasPressing) return;
    (goOn.current ?? title.current)?.focus();
  }, [wasPressing]);
  return { title, goOn };
}

function LockableLeft({ lockable, run }: Resting) {
  if (lockable.length === 0) return null;
  return (
    <p>
      {count(lockable.length, 'shortcut')} that the browser keeps for itself{' '}
      {lockable.length === 1 ? 'is' : 'are'} left, to be{' '}
      {mayLock() && !run.refused ? 'pressed in full screen or checked by eye' : 'checked by eye'}.
    </p>
  );
}

function RestingButtons({
  computer,
  walk,
  results,
  lockable,
  tally,
  run,
  startOver,
  goOn,
}: Resting & { readonly goOn: React.RefObject<HTMLButtonElement | null> }) {
  const isOver = run.step === null;
  const failed = walk.filter(({ id }) => (results.get(id)?.verdict ?? 'right') !== 'right');
  return (
    <div className={styles.buttons}>
      {!isOver && (
        <Button
          tone="accent"
          ref={goOn}
          onClick={computer.toBeAsked ? computer.ask : run.begin}
          autoFocus={computer.told > 0}
        >
          {tally.pressed > 0 || run.pause !== null ? 'Go on' : 'Begin'}
        </Button>
      )}
      {isOver && lockable.length > 0 && mayLock() && (
        <Button tone="accent" onClick={run.pressLockable}>
          Full screen
        </Button>
      )}
      {!isOver && run.pause !== null && (
        <>
          <Button onClick={run.nothingCame}>Nothing comes</Button>
          <Button onClick={run.back}>One back</Button>
        </>
      )}
      {failed.length > 0 && (
        <Button onClick={() => run.again(failed.map(({ id }) => id))}>Press again what went wrong</Button>
      )}
      {tally.pressed > 0 && (
        <Button tone="quiet" onClick={startOver}>
          Start over
        </Button>
      )}
    </div>
  );
}
