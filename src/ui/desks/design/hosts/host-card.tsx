import type { Host } from '../../../../core/keymap/types.ts';
import { type OfferedHost, useHostLayout } from '../../../../store/hosts.ts';
import { Button } from '../../../widgets/button.tsx';
import { Select } from '../../../widgets/select.tsx';
import { Corrections } from './corrections.tsx';
import { movedTo, withLayout, without, withSystem } from './host-edits.ts';
import { cautionFor, SYSTEM_NAMES } from './host-words.ts';
import styles from './hosts.module.css';

const SYSTEMS = (['linux', 'windows', 'macos'] as const).map((system) => ({
  value: system,
  label: SYSTEM_NAMES[system],
}));

interface HostCardProps {
  readonly hosts: readonly Host[];
  readonly at: number;
  readonly host: Host;
  readonly offered: readonly OfferedHost[];
  readonly onChange: (hosts: readonly Host[]) => void;
}

/** One computer of a design: its system, its layout, its place in the order, its single keys. */
export function HostCard({ hosts, at, host, offered, onChange }: HostCardProps) {
  const { state } = useHostLayout(host);
  return (
    <li className={styles.host} aria-label={`Computer ${at + 1}`}>
      <div className={styles.hostHead}>
        <h3>{at === 0 ? '1. Characters are typed for this one' : `${at + 1}. Used on this one too`}</h3>
        {at > 1 && (
          <Button tone="quiet" onClick={() => onChange(movedTo(hosts, at, at - 1))}>
            Move up
          </Button>
        )}
        {at > 0 && (
          <Button tone="quiet" onClick={() => onChange(movedTo(hosts, at, 0))}>
            Make first
          </Button>
        )}
        {hosts.length > 1 && (
          <Button tone="quiet" onClick={() => onChange(without(hosts, at))}>
            Remove
          </Button>
        )}
      </div>
      <div className={styles.choosers}>
        <Select
          label="System"
          value={host.system}
          options={SYSTEMS}
          onChange={(system) => onChange(withSystem(hosts, at, system))}
        />
        <Select
          label="Host layout"
          value={keyOf(host)}
          options={layoutOptions(host, offered)}
          onChange={(key) => {
            const to = offered.find((one) => keyOf(one) === key);
            if (to !== undefined) onChange(withLayout(hosts, at, to));
          }}
        />
      </div>
      {state === 'missing' ? (
        <p className={styles.missing}>There is no table of this layout here, so “us” stands in for it.</p>
      ) : (
        <p className={styles.caution}>{cautionFor(host)}</p>
      )}
      {state === 'ready' && <Corrections hosts={hosts} at={at} host={host} onChange={onChange} />}
    </li>
  );
}

type LayoutName = Pick<Host, 'layout' | 'variant'>;

function keyOf({ layout, variant }: LayoutName): string {
  return variant === '' ? layout : `${layout} ${variant}`;
}

/** The layouts that can be chosen; the present one among them even where it is not on offer. */
function layoutOptions(host: LayoutName, offered: readonly OfferedHost[]) {
  const options = offered.map((one) => ({ value: keyOf(one), label: `${one.title} (${keyOf(one)})` }));
  const key = keyOf(host);
  return options.some(({ value }) => value === key) ? options : [{ value: key, label: key }, ...options];
}
