import { useStore } from 'zustand';
import { useBench } from '../bench.ts';
import { indexedDbOrMemory } from '../keeping/key-value.ts';
import { makeVersions, type VersionsState } from './make-versions.ts';
import { watchWork } from './watch-work.ts';

const { values } = indexedDbOrMemory({ database: 'handful versions', store: 'versions' });

/** The page's own versions of designs; they are kept by themselves while the open design is worked on. */
export const versions = makeVersions({
  values,
  now: () => Date.now(),
  newId: () => crypto.randomUUID(),
});

watchWork(useBench, versions, () => Date.now());

/** Reads from the versions, drawn again when what is read changes. */
export function useVersions<Part>(select: (state: VersionsState) => Part): Part {
  return useStore(versions, select);
}
