import type { HostLayout } from '../../core/host/host-layout.ts';
import { type KnownHost, loadHost, loadOfferedHosts } from '../hosts.ts';

/** A layout that the computer may be on. */
export interface Candidate {
  readonly title: string;
  readonly host: HostLayout;
}

/** The layouts that come with the page; one that cannot be had is left out. */
export async function loadCandidates(): Promise<readonly Candidate[]> {
  const offered = await loadOfferedHosts();
  const loaded = await Promise.all(
    offered.map(async ({ layout, variant, title }) => ({
      title,
      host: await loadHost({ layout, variant }),
      isIt: (host: HostLayout) => host.layout === layout && host.variant === variant,
    })),
  );
  return loaded.filter(({ host, isIt }) => isIt(host));
}

/** With the layout of the design itself, which may have corrections of its own. */
export function withDesign(candidates: readonly Candidate[], known: KnownHost): readonly Candidate[] {
  if (candidates.some(({ host }) => host === known.host)) return candidates;
  return [{ title: `${known.table.title}, as corrected in the design`, host: known.host }, ...candidates];
}
