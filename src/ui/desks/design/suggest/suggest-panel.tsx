import { usePage } from '../../../../store/page.ts';
import { Button } from '../../../widgets/button.tsx';
import styles from './suggest.module.css';
import { SuggestChord } from './suggest-chord.tsx';

/** Right of the board: the search for a chord, and the way back to the accidents. */
export function SuggestPanel({ onBack }: { readonly onBack: () => void }) {
  return (
    <section className={styles.side} aria-label="Suggest a chord">
      <div className={styles.head}>
        <h2>Suggest a chord</h2>
        <Button tone="quiet" onClick={onBack}>
          Back to accidents
        </Button>
      </div>
      <SuggestChord />
    </section>
  );
}

/** Brings up the search for a chord. */
export function SuggestButton() {
  const showView = usePage(({ showView: show }) => show);
  return <Button onClick={() => showView('right of the board', 'suggest')}>Suggest a chord…</Button>;
}
