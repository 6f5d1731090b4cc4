import type { EyeVerdict } from '../../../core/check/judge.ts';
import { stepGives, stepName } from '../../../core/check/step-words.ts';
import type { CheckStep } from '../../../core/check/steps.ts';
import { type CheckRoom, useCheck } from '../../../store/check/check.ts';
import { keptLook } from '../../../store/check/kept-check.ts';
import { Disclosure } from '../../widgets/disclosure.tsx';
import styles from './check.module.css';
import { VERDICT_SIGNS } from './check-words.ts';

/** What no page can see, by its reason: whoever looks says of each whether it did what it should. */
export function ByEye({
  room,
  steps,
  looks,
  readOnly,
}: {
  readonly room: CheckRoom;
  readonly steps: readonly CheckStep[];
  readonly looks: ReadonlyMap<string, EyeVerdict>;
  readonly readOnly: boolean;
}) {
  const reasons = [...new Set(steps.map(({ sight }) => sight.why))];
  if (steps.length === 0) return null;
  const looked = (some: readonly CheckStep[]) =>
    `${some.filter(({ id }) => looks.has(id)).length} of ${some.length}`;
  return (
    <section aria-label="To check by eye">
      <h2 className={styles.heading}>
        To check by eye <span className={styles.quiet}>{looked(steps)}</span>
      </h2>
      <p className={styles.quiet}>
        Press each on the board, look at what happens, and mark it right or wrong.
      </p>
      {reasons.map((why) => {
        const own = steps.filter(({ sight }) => sight.why === why);
        return (
          <Disclosure key={why} title={why} badge={<span className={styles.quiet}>{looked(own)}</span>}>
            <ul className={styles.looks}>
              {own.map((step) => (
                <Look
                  key={step.id}
                  room={room}
                  step={step}
                  verdict={looks.get(step.id) ?? null}
                  readOnly={readOnly}
                />
              ))}
            </ul>
          </Disclosure>
        );
      })}
    </section>
  );
}

const VERDICTS: readonly EyeVerdict[] = ['right', 'wrong'];

function Look({
  room,
  step,
  verdict,
  readOnly,
}: {
  readonly room: CheckRoom;
  readonly step: CheckStep;
  readonly verdict: EyeVerdict | null;
  readonly readOnly: boolean;
}) {
  const look = useCheck((state) => state.look);
  const unlook = useCheck((state) => state.unlook);
  const source = { keymap: room.keymap, host: room.known.host };
  const gives = stepGives(source, step);
  const name = stepName(source, step);
  return (
    <li className={styles.look}>
      <span>
        {gives} <span className={styles.quiet}>{name}</span>
      </span>
      {VERDICTS.map((each) => (
        <button
          key={each}
          type="button"
          className={styles.verdict}
          data-verdict={each}
          aria-pressed={verdict === each}
          aria-label={`${each}: ${gives}, ${name}`}
          title={each}
          disabled={readOnly}
          onClick={() => (verdict === each ? unlook(step.id) : look(keptLook(step, each)))}
        >
          {VERDICT_SIGNS[each]}
        </button>
      ))}
    </li>
  );
}
