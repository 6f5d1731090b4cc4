import type { Correction, Host } from '../../../../core/keymap/types.ts';

type Hosts = readonly Host[];

/** A further computer at the end, of the same system as the first, on `us` until it is told otherwise. */
export function withAnother(hosts: Hosts): Hosts {
  return [...hosts, { system: hosts[0]?.system ?? 'linux', layout: 'us', variant: '' }];
}

/** Takes a computer away; the last one stays. */
export function without(hosts: Hosts, at: number): Hosts {
  return hosts.length < 2 ? hosts : hosts.filter((_, index) => index !== at);
}

/** Moves a computer to another place in the order; characters are typed for the first. */
export function movedTo(hosts: Hosts, from: number, to: number): Hosts {
  const host = hosts[from];
  return host === undefined ? hosts : hosts.toSpliced(from, 1).toSpliced(to, 0, host);
}

/** Another system, which reads the same layout. */
export function withSystem(hosts: Hosts, at: number, system: Host['system']): Hosts {
  return hosts.map((host, index) => (index === at ? { ...host, system } : host));
}

/** Another layout. Corrections were made to the table of the one before, so they go with it. */
export function withLayout(hosts: Hosts, at: number, to: Pick<Host, 'layout' | 'variant'>): Hosts {
  const { layout, variant } = to;
  return hosts.map((host, index) => (index === at ? { system: host.system, layout, variant } : host));
}

/** Corrects a key at a level, in place of an earlier correction of the same. */
export function corrected(hosts: Hosts, at: number, correction: Correction): Hosts {
  return withCorrections(hosts, at, (before) => [
    ...before.filter((one) => !isSamePlace(one, correction)),
    correction,
  ]);
}

/** Lets a key be read as the table says again. */
export function uncorrected(hosts: Hosts, at: number, correction: Correction): Hosts {
  return withCorrections(hosts, at, (before) => before.filter((one) => !isSamePlace(one, correction)));
}

function isSamePlace(one: Correction, other: Correction): boolean {
  return one.code === other.code && one.level === other.level;
}

function withCorrections(
  hosts: Hosts,
  at: number,
  change: (before: readonly Correction[]) => readonly Correction[],
): Hosts {
  return hosts.map((host, index) => {
    if (index !== at) return host;
    const { corrections: before = [], ...bare } = host;
    const corrections = change(before);
    return corrections.length === 0 ? bare : { ...bare, corrections };
  });
}

/** Whether two hosts read the keys alike, whatever their systems are called. */
export function readAlike(one: Host, other: Host): boolean {
  return (
    one.layout === other.layout &&
    one.variant === other.variant &&
    JSON.stringify(one.corrections ?? []) === JSON.stringify(other.corrections ?? [])
  );
}
