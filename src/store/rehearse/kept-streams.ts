import { useEffect } from 'react';
import { useStore } from 'zustand';
import { checkStream } from '../../core/rehearse/read-stream.ts';
import type { Stream } from '../../core/rehearse/stream.ts';
import { indexedDbOrMemory } from '../keeping/key-value.ts';
import { type KeptThings, makeKeptThings, type ReadKept } from './kept-things.ts';

const { values } = indexedDbOrMemory({ database: 'handful streams', store: 'streams' });

const readKept: ReadKept<Stream> = (stored) => {
  if (typeof stored !== 'object' || stored === null) return null;
  const read = checkStream({ format: 'key-stream', version: 1, ...stored });
  return read.ok ? read.value : null;
};

export const keptStreams = makeKeptThings<Stream>(
  values,
  readKept,
  () => Date.now(),
  () => crypto.randomUUID(),
);

/** The streams that are kept with the browser. */
export function useKeptStreams(): KeptThings<Stream> {
  useEffect(() => void keptStreams.getState().start(), []);
  return useStore(keptStreams);
}
