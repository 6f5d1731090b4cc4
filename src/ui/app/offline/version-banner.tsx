import { useState } from 'react';
import { designs } from '../../../store/keeping/use-designs.ts';
import { Button } from '../../widgets/button.tsx';
import styles from '../banner.module.css';
import { usePageVersion } from './page-version.ts';

/** Says when a newer version of the page is ready; it is taken up when the person wants it. */
export function VersionBanner() {
  const { newer, isOutdated } = usePageVersion();
  const [isLater, setLater] = useState(false);
  if (isOutdated) {
    const reopen = () =>
      void designs
        .getState()
        .flush()
        .then(() => location.reload());
    return (
      <section className={styles.news} aria-label="Newer version">
        <p role="status">
          Another tab has taken up a newer version of Handful. This one goes on with the old one; every change
          is saved.
        </p>
        <Button onClick={reopen}>Open it anew</Button>
      </section>
    );
  }
  if (newer === null || isLater) return null;
  return (
    <section className={styles.news} aria-label="Newer version">
      <p role="status">A newer version of Handful is ready. Designs and settings stay as they are.</p>
      <Button onClick={() => setLater(true)}>Later</Button>
      <Button tone="accent" onClick={newer.use}>
        Use it now
      </Button>
    </section>
  );
}
