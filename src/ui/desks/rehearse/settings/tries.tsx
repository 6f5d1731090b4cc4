import { useBench } from '../../../../store/bench.ts';
import { useRehearsal } from '../../../../store/rehearse/rehearsal.ts';
import { Button, IconButton } from '../../../widgets/button.tsx';
import { CrossIcon } from '../../../widgets/icons.tsx';
import styles from '../rehearse.module.css';

/** What is tried on the stream and is not in the design: to be kept or dropped. */
export function Tries() {
  const { tries, dropTry, clearTries } = useRehearsal();
  const edit = useBench((bench) => bench.edit);
  const readOnly = useBench((bench) => bench.readOnly);
  if (tries.length === 0) return null;
  const keep = () => {
    const [only] = tries;
    if (tries.length === 1 && only !== undefined) edit(only.edit);
    else edit({ edit: 'several', title: `${tries.length} settings`, edits: tries.map((each) => each.edit) });
    clearTries();
  };
  return (
    <section className={styles.tries} aria-label="Tried here, not in the design">
      <h2 className={styles.heading}>Tried here, not in the design</h2>
      {tries.map(({ title }, at) => (
        <div key={title} className={styles.rowHead}>
          <span>{title}</span>
          <IconButton label={`Drop: ${title}`} onClick={() => dropTry(at)}>
            <CrossIcon />
          </IconButton>
        </div>
      ))}
      <div className={styles.buttons}>
        <Button tone="accent" disabled={readOnly} onClick={keep}>
          Keep in the design
        </Button>
        <Button tone="quiet" onClick={clearTries}>
          Drop all
        </Button>
      </div>
    </section>
  );
}
