import type { CheckStep } from '../../../core/check/steps.ts';
import { codeName } from '../../../core/host/code-names.ts';
import { isCode } from '../../../core/keymap/codes.ts';
import type { CheckRoom } from '../../../store/check/check.ts';
import { Button } from '../../widgets/button.tsx';
import { ByEye } from './by-eye.tsx';
import styles from './check.module.css';
import { count } from './check-words.ts';
import { leftWords, probeCodes, probeWords } from './computer-words.ts';
import { type Computer, useComputer } from './use-computer.ts';

/** Right of the board: which layout the computer is on, what only full screen can hold back, what is checked by eye. */
export function ComputerSide({
  room,
  locked,
  lockable,
  byEye,
  enterFullScreen,
}: {
  readonly room: CheckRoom;
  readonly locked: boolean;
  readonly lockable: readonly CheckStep[];
  readonly byEye: readonly CheckStep[];
  readonly enterFullScreen: () => void;
}) {
  const computer = useComputer(room.known.host);
  return (
    <div className={styles.side}>
      <section aria-label="This computer">
        <h2 className={styles.heading}>This computer</h2>
        <ComputerSays room={room} computer={computer} />
      </section>
      {lockable.length > 0 && !locked && (
        <section aria-label="Kept by the browser">
          <h2 className={styles.heading}>Kept by the browser</h2>
          <p>
            {count(lockable.length, 'shortcut')} of the design {lockable.length === 1 ? 'is' : 'are'} taken by
            the browser or the window system first. In full screen some browsers give them to the page;
            elsewhere they are checked by eye.
          </p>
          <Button onClick={enterFullScreen}>Full screen</Button>
        </section>
      )}
      <ByEye room={room} steps={locked ? byEye : [...byEye, ...lockable]} />
    </div>
  );
}

function ComputerSays({ room, computer }: { readonly room: CheckRoom; readonly computer: Computer }) {
  const design = room.known.table.title;
  const { fits, left, probe, other, finding } = computer;
  if (finding && left === null) return <p role="status">Fetching the layouts…</p>;
  if (probe !== null) {
    return (
      <>
        <p role="status" aria-live="polite">
          On any keyboard of this computer, press{' '}
          <b data-probe={probeCodes(probe).join(' ')}>{probeWords(probe)}</b>.
          {other !== null && isCode(other) && ` That was ${codeName(other)}.`}
        </p>
        <p className={styles.buttons}>
          <Button onClick={computer.noSuchKey}>There is no such key</Button>
          <Button tone="quiet" onClick={computer.stop}>
            Stop
          </Button>
        </p>
      </>
    );
  }
  if (left !== null) {
    return (
      <>
        <p role="status">
          {leftWords(
            left.map(({ title }) => title),
            design,
          )}
        </p>
        <Button onClick={computer.find}>Ask again</Button>
      </>
    );
  }
  return (
    <>
      <p role={fits === false ? 'alert' : 'status'}>
        {fits === true && `As far as the browser tells, it is on ${design}, as the design has it.`}
        {fits === false &&
          `The browser says that it is not on ${design}, which the design is for: characters will come otherwise.`}
        {fits === null && `The design is for ${design}. Whether this computer is on it, a few presses tell.`}
      </p>
      <Button onClick={computer.find}>{fits === null ? 'Find out' : 'Look closer'}</Button>
    </>
  );
}
