import { useMemo, useState } from 'react';
import { onBothHosts } from '../../../../core/coverage/on-both-hosts.ts';
import type { Need } from '../../../../core/keymap/need.ts';
import type { Host } from '../../../../core/keymap/types.ts';
import { Select } from '../../../widgets/select.tsx';
import { hostTitle } from './host-words.ts';
import styles from './hosts.module.css';
import { NeedGlyphs } from './need-glyphs.tsx';
import { useRoutesMet, useRoutesOn } from './use-routes-on.ts';

/** The first computer beside another one: which needs hold on both, and which fail where. */
export function BothHosts({ hosts }: { readonly hosts: readonly Host[] }) {
  const [chosen, setChosen] = useState(1);
  const at = Math.min(chosen, hosts.length - 1);
  const [first] = hosts;
  const second = hosts[at];
  if (first === undefined || second === undefined) return null;
  return (
    <section className={styles.section} aria-label="Needs on two computers">
      <h3>Needs on two computers</h3>
      {hosts.length > 2 && (
        <Select
          label="Beside the first"
          value={String(at)}
          options={hosts.slice(1).map((host, index) => ({
            value: String(index + 1),
            label: `${index + 2}. ${[host.layout, host.variant].join(' ').trim()}`,
          }))}
          onChange={(value) => setChosen(Number(value))}
        />
      )}
      <SideBySide first={first} second={second} />
    </section>
  );
}

function SideBySide({ first, second }: { readonly first: Host; readonly second: Host }) {
  const one = useRoutesOn(first);
  const other = useRoutesMet(second, first);
  const found = useMemo(
    () =>
      one.onHost === null || other.onHost === null ? null : onBothHosts(one.onHost.needs, other.onHost.needs),
    [one.onHost, other.onHost],
  );
  if (found === null) return <p className={styles.caution}>The table is on its way.</p>;
  const { both, firstOnly, secondOnly, neither } = found;
  const fails = firstOnly.length + secondOnly.length + neither.length;
  return (
    <div className={styles.tableFrame}>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">{hostTitle(first, one.known)}</th>
            <th scope="col">{hostTitle(second, other.known)}</th>
            <th scope="col">Needs</th>
            <th scope="col">Which</th>
          </tr>
        </thead>
        <tbody>
          <Row first second needs={both} which={fails === 0 ? 'all of them' : 'all others'} />
          <Row first needs={firstOnly} />
          <Row second needs={secondOnly} />
          <Row needs={neither} />
        </tbody>
      </table>
    </div>
  );
}

function Row({
  first = false,
  second = false,
  needs,
  which,
}: {
  readonly first?: boolean;
  readonly second?: boolean;
  readonly needs: readonly Need[];
  /** In place of a list that would be too long. */
  readonly which?: string;
}) {
  if (needs.length === 0 && which === undefined) return null;
  const words = (holds: boolean) => (
    <td data-holds={holds}>
      {holds ? '✓' : '×'} <span className={styles.word}>{holds ? 'typed' : 'missing'}</span>
    </td>
  );
  return (
    <tr>
      {words(first)}
      {words(second)}
      <td>{needs.length}</td>
      <td>{which ?? <NeedGlyphs needs={needs} />}</td>
    </tr>
  );
}
