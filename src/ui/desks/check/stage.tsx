import { useMemo } from 'react';
import type { Checked } from '../../../core/check/given-keys.ts';
import type { StepResult } from '../../../core/check/judge.ts';
import { cameWords, stepGives, stepMoves, stepName } from '../../../core/check/step-words.ts';
import type { CheckStep } from '../../../core/check/steps.ts';
import type { CheckRoom } from '../../../store/check/check.ts';
import { keyLights } from '../../board/key-lights.ts';
import { StillBoard } from '../../board/still-board.tsx';
import { OtherLayout } from '../../board/typing/other-layout.tsx';
import { Button } from '../../widgets/button.tsx';
import styles from './check.module.css';
import { abandonedWords, planWords, type Tally, tallyWords, verdictWords } from './check-words.ts';
import { type CheckRun, SILENT_IN_A_ROW } from './use-check-run.ts';

/** The middle of the desk while nothing is pressed: what will be asked for, or how far it has come. */
export function RestingStage({
  room,
  walk,
  tally,
  run,
  startOver,
}: {
  readonly room: CheckRoom;
  readonly walk: readonly CheckStep[];
  readonly tally: Tally;
  readonly run: CheckRun;
  readonly startOver: () => void;
}) {
  const isBegun = tally.pressed > 0;
  const isOver = tally.pressed >= tally.all && !run.abandoned;
  return (
    <section className={styles.stage} aria-label="Check">
      <h2 className={styles.title}>
        {isOver ? 'Everything has been pressed' : 'Does the board do what the design says?'}
      </h2>
      <p>{isBegun ? `${tallyWords(tally)}.` : planWords(walk)}</p>
      {run.abandoned && <p role="status">{abandonedWords(SILENT_IN_A_ROW)}</p>}
      {!isOver && <OtherLayout host={room.known.host} title={room.known.table.title} />}
      {!isOver && (
        <p className={styles.quiet}>
          Press on the real board what stands here; the page watches what comes. It keeps the keys for itself
          meanwhile, Tab and F5 too. Hold Escape for a second to stop, and go on whenever you like.
        </p>
      )}
      <div className={styles.buttons}>
        {!isOver && (
          <Button tone="accent" onClick={run.begin}>
            {isBegun ? 'Go on' : 'Begin'}
          </Button>
        )}
        {isBegun && <Button onClick={startOver}>Start over</Button>}
      </div>
    </section>
  );
}

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
  const [held, press] = splitMoves(stepMoves(source, step));
  return (
    <section
      className={styles.stage}
      aria-label="Press this"
      data-step={step.id}
      data-try={run.last?.again === true ? 2 : 1}
    >
      <progress
        className={styles.progress}
        max={tally.all}
        value={tally.pressed}
        aria-label="Pressed so far"
      />
      <p className={styles.held}>{held.length > 0 ? `${held.join(', then ')}, and` : ' '}</p>
      <p className={styles.press} aria-live="polite">
        {press}
      </p>
      <p className={styles.quiet}>
        {stepName(source, step)}: <b className={styles.gives}>{stepGives(source, step)}</b>
      </p>
      <p className={styles.last} role="status" data-verdict={run.last?.result.verdict}>
        {run.last === null ? '' : lastWords(run.last)}
      </p>
      <div className={styles.buttons}>
        <Button onClick={run.nothingCame}>Nothing comes</Button>
        <Button onClick={run.back}>One back</Button>
        <Button onClick={run.stop}>Stop</Button>
        <span className={styles.quiet}>{tallyWords(tally)}. Escape for a second stops.</span>
      </div>
    </section>
  );
}

/** What is held or done before, and the press itself. */
function splitMoves(moves: readonly string[]): readonly [readonly string[], string] {
  const last = moves.findLastIndex((move) => !move.startsWith('let '));
  return [moves.slice(0, Math.max(0, last)), sentence(moves[last] ?? '')];
}

const sentence = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

function lastWords({ result, again }: NonNullable<CheckRun['last']>): string {
  const said = verdictWords(result.verdict, cameWords(result));
  return again ? `${said} Once more, please.` : said;
}

/** The board with what is asked for lit up, its moves numbered; or with what came wrong. */
export function CheckBoard({
  room,
  step,
  checked,
}: {
  readonly room: CheckRoom;
  readonly step: CheckStep | null;
  readonly checked: readonly Checked[];
}) {
  const { keymap, known } = room;
  const base = keymap.layers[0]?.id ?? '';
  const layer = step !== null && 'place' in step.at ? step.at.place.layer : base;
  const wrong = useMemo(
    () => new Set(checked.filter(({ result }) => isWrong(result)).flatMap(({ step: { keys } }) => keys)),
    [checked],
  );
  const lights = useMemo(() => keyLights(step === null ? null : litFor(step)), [step]);
  return (
    <div className={styles.board}>
      <StillBoard
        keymap={keymap}
        host={known.host}
        layer={layer}
        marked={step === null ? wrong : new Set(lights.keys())}
        lights={lights}
        title={step === null ? 'The board, with the keys that went wrong' : 'The board, with what to press'}
      />
    </div>
  );
}

const isWrong = ({ verdict }: StepResult) => verdict !== 'right';

function litFor(step: CheckStep) {
  const pressed = step.way.filter(({ move }) => move !== 'release');
  const order = pressed.flatMap(({ move, keys }) => keys.map((key) => ({ key, held: move === 'hold' })));
  return { why: '', keys: step.keys, chords: [], layers: [], order };
}
