import { useState } from 'react';
import { useBench } from '../../store/bench.ts';
import { useHost } from '../../store/hosts.ts';
import type { OpenBranch } from '../../store/keeping/designs-state.ts';
import { useDesigns } from '../../store/keeping/use-designs.ts';
import { Button } from '../widgets/button.tsx';
import styles from './banner.module.css';
import { VersionBanner } from './offline/version-banner.tsx';
import { TogetherDialog } from './together/together-dialog.tsx';

/** What stands in the way of keeping the open design, with the ways out of it. */
export function Banner() {
  const heldElsewhere = useDesigns((state) => state.heldElsewhere);
  const keeps = useDesigns((state) => state.keeps);
  const branch = useDesigns((state) => state.branch);
  return (
    <>
      {heldElsewhere && <HeldElsewhere />}
      {branch !== null && <CopyOfAnother branch={branch} />}
      {!keeps && (
        <p className={styles.banner} role="status">
          This browser does not let the page keep designs, so they are gone when the page is closed. Export
          what you want to keep.
        </p>
      )}
      <HostMissing />
      <VersionBanner />
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
        so that neither tab overwrites the other. A copy can be changed here and brought together with it
        later.
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

function CopyOfAnother({ branch }: { readonly branch: OpenBranch }) {
  const keepApart = useDesigns((state) => state.keepApart);
  const [isOpen, setOpen] = useState(false);
  return (
    <section className={styles.banner} aria-label="A copy">
      <p role="status">
        {branch.wasOvertaken ? (
          <>
            <strong>“{branch.ofName}” was changed in another tab</strong> while there were changes here that
            had not been saved. They are kept in this copy; neither has overwritten the other.
          </>
        ) : (
          <>
            <strong>This is a copy of “{branch.ofName}”</strong>, made because another tab has that one. What
            you change here stays in the copy.
          </>
        )}
      </p>
      <Button onClick={() => setOpen(true)}>Bring both together…</Button>
      <Button onClick={() => void keepApart()}>Keep them as two designs</Button>
      {isOpen && <TogetherDialog branch={branch} onClose={() => setOpen(false)} />}
    </section>
  );
}
