import type { StepResult, Verdict } from '../../../core/check/judge.ts';
import { stepGives, stepName } from '../../../core/check/step-words.ts';
import type { CheckStep } from '../../../core/check/steps.ts';
import { layerWords } from '../../../core/keymap/action-words.ts';
import type { CheckRoom } from '../../../store/check/check.ts';
import styles from './check.module.css';
import { VERDICT_SIGNS } from './check-words.ts';
import { Unreached } from './unreached.tsx';

/** Left of the board: every step as a mark, layer by layer, and how it went. */
export function StepsSide({
  room,
  walk,
  results,
  asked,
}: {
  readonly room: CheckRoom;
  readonly walk: readonly CheckStep[];
  readonly results: ReadonlyMap<string, StepResult>;
  readonly asked: string | null;
}) {
  const groups = groupsOf(room, walk);
  return (
    <div className={styles.side}>
      {groups.map(({ title, steps }) => (
        <section key={title} aria-label={title}>
          <h2 className={styles.heading}>
            {title} <span className={styles.quiet}>{doneWords(steps, results)}</span>
          </h2>
          <ul className={styles.marks}>
            {steps.map((step) => (
              <Mark
                key={step.id}
                room={room}
                step={step}
                verdict={results.get(step.id)?.verdict ?? 'open'}
                isAsked={step.id === asked}
              />
            ))}
          </ul>
        </section>
      ))}
      {walk.length > 0 && (
        <p className={styles.quiet}>✓ right, ✗ something else, – nothing came, · not pressed yet.</p>
      )}
      <Unreached room={room} />
    </div>
  );
}

function Mark({
  room,
  step,
  verdict,
  isAsked,
}: {
  readonly room: CheckRoom;
  readonly step: CheckStep;
  readonly verdict: Verdict | 'open';
  readonly isAsked: boolean;
}) {
  const source = { keymap: room.keymap, host: room.known.host };
  const words = `${stepName(source, step)}: ${stepGives(source, step)}, ${verdict === 'open' ? 'not pressed yet' : verdict}`;
  return (
    <li className={styles.mark} data-verdict={verdict} data-asked={isAsked} title={words}>
      <span aria-hidden="true">{VERDICT_SIGNS[verdict]}</span>
      <span className={styles.spoken}>{words}</span>
    </li>
  );
}

function groupsOf(room: CheckRoom, walk: readonly CheckStep[]) {
  const layers = room.keymap.layers.map(({ id }) => ({
    title: layerWords(room.keymap, id),
    steps: walk.filter(({ at }) => 'place' in at && at.place.layer === id),
  }));
  const chords = { title: 'Chords', steps: walk.filter(({ at }) => 'chord' in at) };
  return [...layers, chords].filter(({ steps }) => steps.length > 0);
}

function doneWords(steps: readonly CheckStep[], results: ReadonlyMap<string, StepResult>): string {
  return `${steps.filter(({ id }) => results.has(id)).length} of ${steps.length}`;
}
