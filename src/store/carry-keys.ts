import type { StoreApi } from 'zustand/vanilla';
import type { KeyRenaming } from '../core/board/key-renaming.ts';
import type { Board } from '../core/keymap/types.ts';
import { renamedStream } from '../core/rehearse/renamed-stream.ts';
import { useBench } from './bench.ts';
import type { BenchState } from './bench-state.ts';
import { check } from './check/check.ts';
import { practice } from './practice/practice.ts';
import { overlaysFollow } from './rehearse/kept-overlays.ts';
import { keptStreams } from './rehearse/kept-streams.ts';

/** Keys of a design that were given other ids, and the board as it was. */
interface RenamedKeys {
  readonly designId: string;
  readonly before: Board;
  readonly renaming: KeyRenaming;
}

/** Tells of every change that calls keys of the open design anew, undone and redone ones too. Gives what ends it. */
export function watchRenaming(
  bench: Pick<StoreApi<BenchState>, 'subscribe'>,
  carry: (keys: RenamedKeys) => void,
): () => void {
  return bench.subscribe(({ renaming, designId }, before) => {
    if (renaming === null || renaming.size === 0 || renaming === before.renaming) return;
    if (designId === before.designId) carry({ designId, before: before.keymap.board, renaming });
  });
}

/** Lets what is kept beside a design by the ids of its keys go along with them. Gives what ends it. */
export function carryKeys(): () => void {
  return watchRenaming(useBench, ({ designId, before, renaming }) => {
    void check.getState().renameKeys(designId, renaming);
    void practice.getState().renameKeys(designId, renaming);
    void keptStreams.getState().changeOf(designId, (stream) => renamedStream(stream, renaming));
    void overlaysFollow(before, renaming);
  });
}
