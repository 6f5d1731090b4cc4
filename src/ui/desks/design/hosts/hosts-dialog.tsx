import { useEffect, useState } from 'react';
import { LIMITS } from '../../../../core/keymap/limits.ts';
import type { Host } from '../../../../core/keymap/types.ts';
import { useBench } from '../../../../store/bench.ts';
import { loadOfferedHosts, type OfferedHost } from '../../../../store/hosts.ts';
import { Button } from '../../../widgets/button.tsx';
import { Dialog } from '../../../widgets/dialog.tsx';
import { BothHosts } from './both-hosts.tsx';
import { ChangesSince, useChangesSince } from './changes-since.tsx';
import { HostCard } from './host-card.tsx';
import { withAnother } from './host-edits.ts';
import { changesSummary } from './host-words.ts';
import styles from './hosts.module.css';

const NO_HOST: Host = { system: 'linux', layout: 'us', variant: '' };

/** The computers that a design is used on: their order, systems and layouts, single keys, and what all that changes. */
export function HostsDialog({ onClose }: { readonly onClose: () => void }) {
  const hosts = useBench((bench) => bench.keymap.hosts);
  const edit = useBench((bench) => bench.edit);
  const notify = useBench((bench) => bench.notify);
  const [offered, setOffered] = useState<readonly OfferedHost[]>([]);
  const [before] = useState(hosts[0] ?? NO_HOST);
  const since = useChangesSince(before, hosts[0] ?? NO_HOST);
  useEffect(() => {
    void loadOfferedHosts().then(setOffered);
  }, []);
  const setHosts = (next: readonly Host[]) => edit({ edit: 'set-hosts', hosts: next });
  const close = () => {
    const summary = since === null ? null : changesSummary(since.changes);
    if (summary !== null) notify({ tone: 'done', text: `On the new computer: ${summary}.`, canUndo: false });
    onClose();
  };
  return (
    <Dialog
      title="Computers"
      width="wide"
      onClose={close}
      footer={
        <Button tone="accent" onClick={close}>
          Done
        </Button>
      }
    >
      <p className={styles.lead}>
        Characters are typed for the first computer. On the others the board sends the same keys, and the
        computer makes of them what its layout says.
      </p>
      <ol className={styles.hosts}>
        {hosts.map((host, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a computer has no identity but its place in the order
          <HostCard key={at} hosts={hosts} at={at} host={host} offered={offered} onChange={setHosts} />
        ))}
      </ol>
      {hosts.length < LIMITS.hosts && (
        <Button className={styles.add} onClick={() => setHosts(withAnother(hosts))}>
          Add a computer
        </Button>
      )}
      <ChangesSince since={since} before={before} now={hosts[0] ?? NO_HOST} />
      {hosts.length > 1 && <BothHosts hosts={hosts} />}
    </Dialog>
  );
}
