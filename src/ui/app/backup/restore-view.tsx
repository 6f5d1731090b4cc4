import { useState } from 'react';
import type { RestorePlan } from '../../../store/keeping/backup/restore.ts';
import { Button } from '../../widgets/button.tsx';
import { Choice } from '../../widgets/choice.tsx';
import styles from './backup.module.css';
import { hasAnything, madeWords, partWords } from './backup-words.ts';

const SIDES = [
  { value: 'here', label: 'leave what is here' },
  { value: 'backup', label: 'take the backup’s' },
] as const;

/** What a backup would bring, and the choices where there can be only one. */
export function RestoreView({
  plan,
  isBusy,
  onRestore,
}: {
  readonly plan: RestorePlan;
  readonly isBusy: boolean;
  readonly onRestore: (fromBackup: ReadonlySet<string>) => void;
}) {
  const [taken, setTaken] = useState<ReadonlySet<string>>(new Set());
  const choose = (id: string, isBackup: boolean) => {
    const next = new Set(taken);
    if (isBackup) next.add(id);
    else next.delete(id);
    setTaken(next);
  };
  return (
    <section aria-label="What the backup brings" className={styles.plan}>
      <h4>{madeWords(plan.madeAt)}</h4>
      <dl className={styles.rows}>
        {plan.parts.map((part) => {
          const words = partWords(part);
          if (words === '' && part.toChoose === 0) return null;
          return (
            <div key={part.id} className={styles.row}>
              <dt>{part.title}</dt>
              <dd>
                {words}
                {part.toChoose > 0 && (
                  <Choice
                    label="differs from here"
                    value={taken.has(part.id) ? 'backup' : 'here'}
                    options={SIDES}
                    onChange={(side) => choose(part.id, side === 'backup')}
                  />
                )}
              </dd>
            </div>
          );
        })}
      </dl>
      {plan.unknown.length > 0 && (
        <p>
          The file also holds what this page does not know ({plan.unknown.join(', ')}); it stays in the file.
        </p>
      )}
      {hasAnything(plan) ? (
        <div className={styles.end}>
          <p className={styles.quiet}>The page is loaded again afterwards.</p>
          <Button tone="accent" disabled={isBusy} onClick={() => onRestore(taken)}>
            Bring it back
          </Button>
        </div>
      ) : (
        <p>All of it is here already.</p>
      )}
    </section>
  );
}
