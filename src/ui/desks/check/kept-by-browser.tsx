import type { CheckStep } from '../../../core/check/steps.ts';
import { mayLock } from '../../board/typing/use-typing.ts';
import { Button } from '../../widgets/button.tsx';
import styles from './check.module.css';
import { count } from './check-words.ts';
import type { CheckRun } from './use-check-run.ts';

/** What the browser or the window system takes before any page, and the way to press it all the same. */
export function KeptByBrowser({
  steps,
  run,
  readOnly,
}: {
  readonly steps: readonly CheckStep[];
  readonly run: CheckRun;
  readonly readOnly: boolean;
}) {
  if (steps.length === 0) return null;
  const isOne = steps.length === 1;
  return (
    <section aria-label="Kept by the browser">
      <h2 className={styles.heading}>Kept by the browser</h2>
      <p>
        {count(steps.length, 'shortcut')} of the design {isOne ? 'is' : 'are'} taken by the browser or the
        window system first. {waysWords(run.refused, isOne ? 'it' : 'them')}
      </p>
      {mayLock() && !readOnly && (
        <Button onClick={run.pressLockable}>
          {run.refused ? 'Try once more' : `Press ${isOne ? 'it' : 'them'} in full screen`}
        </Button>
      )}
    </section>
  );
}

function waysWords(refused: boolean, them: string): string {
  if (!mayLock()) return `This browser gives ${them} to no page, so look by eye.`;
  return refused
    ? `The browser did not give ${them} up just now; look by eye, or try once more.`
    : `In full screen this browser can give ${them} to the page; or look by eye.`;
}
