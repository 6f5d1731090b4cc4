import { useState } from 'react';
import { useBench } from '../../store/bench.ts';
import { useHost } from '../../store/hosts.ts';
import { useDesigns } from '../../store/keeping/use-designs.ts';
import { Button } from '../widgets/button.tsx';
import styles from './banner.module.css';

/** What stands in the way of keeping the open design, with the ways out of it. */
export function Banner() {
  const heldElsewhere = useDesigns((state) => state.heldElsewhere);
  const keeps = useDesigns((state) => state.keeps);
  return (
    <>
      {heldElsewhere && <HeldElsewhere />}
      {!keeps && (
        <p className={styles.banner} role="status">
          This browser does not let the page keep designs, so they are gone when the page is closed. Export
          what you want to keep.
        </p>
      )}
      <HostMissing />
    </>
  );
}

function HostMissing() {
  const keymap = useBench((bench) => bench.keymap);
  const { state } = useHost(keymap);
  const [first] = keymap.hosts;
  if (state !== 'missing' || first === undefined) return null;
  return (
    <p className={styles.banner} role="status">
      The host layout “{[first.layout, first.variant].join(' ').trim()}” could not be loaded. Until it is,
      needs and findings reckon with “us”.
    </p>
  );
}

function HeldElsewhere() {
  const takeOver = useDesigns((state) => state.takeOver);
  const openCopy = useDesigns((state) => state.openCopy);
  const [busy, setBusy] = useState(false);
  const during = async (work: () => Promise<void>) => {
    setBusy(true);
    await work();
    setBusy(false);
  };
  return (
    <section className={styles.banner} aria-label="Open in another tab">
      <p role="status">
        <strong>This design is open in another tab.</strong> It can be looked at here; changes are made there,
        so that neither tab overwrites the other.
      </p>
      <Button disabled={busy} onClick={() => void during(openCopy)}>
        Open a copy here
      </Button>
      <Button disabled={busy} onClick={() => void during(takeOver)}>
        Take over here
      </Button>
    </section>
  );
}
