import { useEffect, useRef } from 'react';
import { cameWords, stepGives, stepMoves, stepName } from '../../../core/check/step-words.ts';
import type { CheckStep } from '../../../core/check/steps.ts';
import type { LegendSource } from '../../../core/host/legend.ts';
import type { CheckRoom } from '../../../store/check/check.ts';
import { Button } from '../../widgets/button.tsx';
import { DeskStage } from '../../widgets/desk-stage.tsx';
import styles from './check.module.css';
import { splitMoves, type Tally, tallyWords, verdictWords } from './check-words.ts';
import type { CheckRun } from './use-check-run.ts';

/** The middle of the desk while a step is asked for. */
export function AskingStage({
  room,
  step,
  run,
  tally,
}: {
  readonly room: CheckRoom;
  readonly step: CheckStep;
  readonly run: CheckRun;
  readonly tally: Tally;
}) {
  const source = { keymap: room.keymap, host: room.known.host };
  const { before, press } = splitMoves(stepMoves(source, step));
  const stage = useRef<HTMLElement>(null);
  // What began it is gone: from here on a screen reader reads what is asked for.
  useEffect(() => stage.current?.focus(), []);
  return (
    <DeskStage
      label="Press this"
      centred
      tabIndex={-1}
      ref={stage}
      data-step={step.id}
      data-try={run.last?.again === true ? 2 : 1}
    >
      <progress
        className={styles.progress}
        max={tally.all}
        value={tally.pressed}
        aria-label="Pressed so far"
      />
      <div aria-live="polite" aria-atomic="true">
        <p className={styles.held}>{before.length > 0 ? `${before.join(', then ')}, and` : ' '}</p>
        <p className={styles.press}>{press}</p>
      </div>
      <p className={styles.quiet}>
        {stepName(source, step)}: <b className={styles.gives}>{stepGives(source, step)}</b>
        {step.expects.some(({ code }) => code === 'Escape') &&
          '. Let go soon: held for a second, it stops the check'}
      </p>
      <p className={styles.last} role="status" data-verdict={run.last?.result.verdict}>
        {run.last === null ? '' : lastWords(source, run.last)}
      </p>
      <div className={styles.buttons}>
        <Button onClick={run.nothingCame}>Nothing comes</Button>
        <Button onClick={run.back}>One back</Button>
        <Button onClick={run.stop}>Stop</Button>
        <span className={styles.quiet}>{tallyWords(tally)}.</span>
      </div>
      <p className={styles.ways}>
        Ten seconds without a key count as nothing, and three times in a row stop the check. Escape of any
        keyboard, held for a second, stops it at once. Then Tab reaches the buttons.
      </p>
    </DeskStage>
  );
}

function lastWords(source: LegendSource, { result, step, again }: NonNullable<CheckRun['last']>): string {
  const said = verdictWords(result.verdict, cameWords(result));
  if (again) return `${said} Once more, please.`;
  if (result.verdict === 'right') return said;
  return `${stepName(source, step)}: ${said.charAt(0).toLowerCase()}${said.slice(1)}`;
}

/** The middle of the desk while the browser has not yet given its keys up. */
export function AwaitingStage({ run }: { readonly run: CheckRun }) {
  return (
    <DeskStage label="Press this" centred>
      <p className={styles.press} role="status">
        Waiting for the browser to give its keys up…
      </p>
      <div className={styles.buttons}>
        <Button onClick={run.stop}>Stop</Button>
        <span className={styles.quiet}>It may ask for your leave. Escape for a second stops.</span>
      </div>
    </DeskStage>
  );
}
