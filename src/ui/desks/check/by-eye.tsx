import { stepGives, stepName } from '../../../core/check/step-words.ts';
import type { CheckStep } from '../../../core/check/steps.ts';
import type { CheckRoom } from '../../../store/check/check.ts';
import { useCheck } from '../../../store/check/check.ts';
import { CheckList } from '../../widgets/check-list.tsx';
import { Disclosure } from '../../widgets/disclosure.tsx';
import styles from './check.module.css';

/** What no page can see, by its reason, to be ticked off by whoever looks. */
export function ByEye({ room, steps }: { readonly room: CheckRoom; readonly steps: readonly CheckStep[] }) {
  const ticked = useCheck((state) => state.check.byEye);
  const tick = useCheck((state) => state.tick);
  const source = { keymap: room.keymap, host: room.known.host };
  const reasons = [...new Set(steps.map(({ sight }) => sight.why))];
  if (steps.length === 0) return null;
  return (
    <section aria-label="To check by eye">
      <h2 className={styles.heading}>
        To check by eye{' '}
        <span
          className={styles.quiet}
        >{`${steps.filter(({ id }) => ticked.includes(id)).length} of ${steps.length}`}</span>
      </h2>
      {reasons.map((why) => {
        const own = steps.filter(({ sight }) => sight.why === why);
        return (
          <Disclosure key={why} title={why} badge={<span className={styles.quiet}>{own.length}</span>}>
            <CheckList
              label={why}
              options={own.map((step) => ({
                value: step.id,
                label: stepGives(source, step),
                hint: stepName(source, step),
              }))}
              values={ticked}
              onChange={(values) => {
                for (const { id } of own) {
                  if (values.includes(id) !== ticked.includes(id)) tick(id, values.includes(id));
                }
              }}
            />
          </Disclosure>
        );
      })}
    </section>
  );
}
