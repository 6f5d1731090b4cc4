import type { ComputerVerdict } from '../../../core/host/computer-verdict.ts';
import type { CheckRoom } from '../../../store/check/check.ts';
import type { Computer } from '../../board/computer/use-computer.ts';
import { Button } from '../../widgets/button.tsx';
import styles from './check.module.css';

/** Whether the computer is on the design's layout, as far as it is known, and the way to find out. */
export function ComputerSide({ room, computer }: { readonly room: CheckRoom; readonly computer: Computer }) {
  return (
    <section aria-label="This computer">
      <h2 className={styles.heading}>This computer</h2>
      <p>{KNOWN_WORDS[computer.verdict ?? 'unknown'](room.known.table.title)}</p>
      <Button onClick={computer.ask} disabled={computer.asking}>
        {computer.left !== null ? 'Ask again' : computer.verdict === null ? 'Find out' : 'Look closer'}
      </Button>
    </section>
  );
}

/** How this computer reads keys, in a line; what follows from it stands where the check begins. */
const KNOWN_WORDS: Readonly<Record<ComputerVerdict | 'unknown', (title: string) => string>> = {
  fits: (title) => `As far as is known it reads keys as ${title}, which the design is for.`,
  unsure: (title) => `It may be on ${title}, which the design is for; presses do not tell.`,
  other: (title) => `It does not read keys as ${title}, which the design is for.`,
  unknown: (title) => `The design is for ${title}. Whether this computer is on it, a few presses tell.`,
};
