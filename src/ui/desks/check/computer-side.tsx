import { codeName } from '../../../core/host/code-names.ts';
import { isCode } from '../../../core/keymap/codes.ts';
import type { CheckRoom } from '../../../store/check/check.ts';
import { Button } from '../../widgets/button.tsx';
import styles from './check.module.css';
import { leftWords, probeCodes, probeWords } from './computer-words.ts';
import { type Computer, useComputer } from './use-computer.ts';

/** Which layout the computer is on, as far as it is known, and the presses that tell. */
export function ComputerSide({ room }: { readonly room: CheckRoom }) {
  const computer = useComputer(room.known.host);
  return (
    <section aria-label="This computer">
      <h2 className={styles.heading}>This computer</h2>
      <ComputerSays room={room} computer={computer} />
    </section>
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
