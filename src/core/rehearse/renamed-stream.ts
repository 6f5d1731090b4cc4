import { type KeyRenaming, renamed } from '../board/key-renaming.ts';
import type { Stream } from './stream.ts';

/** A stream after keys of the board were given other ids. */
export function renamedStream(stream: Stream, renaming: KeyRenaming): Stream {
  return {
    ...stream,
    events: stream.events.map((event) => ({ ...event, key: renamed(renaming, event.key) })),
  };
}
