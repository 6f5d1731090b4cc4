import type { StoreApi } from 'zustand/vanilla';
import type { BenchState } from '../bench-state.ts';
import type { VersionsState } from './make-versions.ts';
import { BETWEEN_MS } from './version.ts';

/**
 * Offers the state before a change to be kept, whenever a design is changed; once one was offered, not again within ten
 * minutes, so that the disk is left alone while somebody works. Gives what ends the watching.
 */
export function watchWork(
  bench: Pick<StoreApi<BenchState>, 'subscribe'>,
  versions: Pick<StoreApi<Pick<VersionsState, 'worked'>>, 'getState'>,
  now: () => number,
): () => void {
  const offered = new Map<string, number>();
  return bench.subscribe((state, before) => {
    const { designId, keymap, readOnly } = state;
    if (keymap === before.keymap || designId !== before.designId || readOnly) return;
    if (now() - (offered.get(designId) ?? Number.NEGATIVE_INFINITY) < BETWEEN_MS) return;
    offered.set(designId, now());
    versions
      .getState()
      .worked(designId, before.keymap)
      .catch(() => offered.delete(designId));
  });
}
