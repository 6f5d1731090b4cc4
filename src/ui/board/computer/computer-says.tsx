import type { KnownHost } from '../../../store/hosts.ts';
import { Button } from '../../widgets/button.tsx';
import styles from './computer.module.css';
import { leftWords, OTHERWISE } from './computer-words.ts';
import type { Computer } from './use-computer.ts';

/**
 * Says, before anything is typed, how this computer reads keys against the design's host layout, with the way to ask it
 * anew. Silent where the browser says that all is as it should be.
 */
export function ComputerSays({
  computer,
  known,
}: {
  readonly computer: Computer;
  readonly known: KnownHost;
}) {
  const { verdict, left, toBeAsked } = computer;
  const { host, table } = known;
  if (left === null && verdict === 'fits') return null;
  const isOther = verdict === 'other';
  const words =
    left !== null ? leftWords(left, { title: table.title, host }) : withoutPresses(computer, table.title);
  return (
    <p className={styles.says} role={isOther ? 'alert' : 'status'} data-verdict={verdict ?? 'unknown'}>
      {words}{' '}
      {!toBeAsked && (
        <Button tone="quiet" onClick={computer.ask}>
          {left === null ? 'Find out' : 'Ask again'}
        </Button>
      )}
    </p>
  );
}

function withoutPresses({ verdict, toBeAsked }: Computer, title: string): string {
  if (verdict === 'other')
    return `The browser says that this computer is not on ${title}, which the design is for: ${OTHERWISE}`;
  return toBeAsked
    ? `The design is for ${title}. The browser does not say whether this computer is: a few key presses come first.`
    : `Whether this computer is on ${title}, which the design is for, is not known.`;
}
