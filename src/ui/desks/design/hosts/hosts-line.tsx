import { useBench } from '../../../../store/bench.ts';
import { useHost } from '../../../../store/hosts.ts';
import { usePageDialog } from '../../../../store/page.ts';
import { hostTitle, shortCaution } from './host-words.ts';
import styles from './hosts.module.css';
import { HostsDialog } from './hosts-dialog.tsx';

/** The computer that all answers are for, beside them, with the caution where one is due; it opens the computers. */
export function HostsLine() {
  const keymap = useBench((bench) => bench.keymap);
  const known = useHost(keymap);
  const computers = usePageDialog('computers');
  const [first] = keymap.hosts;
  if (first === undefined) return null;
  const caution = shortCaution(first);
  const more = keymap.hosts.length - 1;
  const corrections = first.corrections?.length ?? 0;
  return (
    <div className={styles.line}>
      <button type="button" className={styles.lineButton} aria-haspopup="dialog" onClick={computers.open}>
        <span className={styles.lineLabel}>Typed on</span> <b>{hostTitle(first, known)}</b>
        {corrections > 0 && <span className={styles.lineLabel}>, {corrections} corrected</span>}
        {more > 0 && <span className={styles.lineLabel}>, and {more} more</span>}
      </button>
      {caution !== null && <p className={styles.caution}>{caution}</p>}
      {computers.isOpen && <HostsDialog onClose={computers.close} />}
    </div>
  );
}
