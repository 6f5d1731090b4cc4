import { LIMITS } from '../../core/keymap/limits.ts';
import { chordsOf } from '../../core/keymap/timing.ts';
import type { Chord, KeyId, Keymap, LayerId } from '../../core/keymap/types.ts';

/** How many keys a chord may have. */
export const CHORD_KEYS = { least: 2, most: 5 } as const;

/** The window that a new chord starts with, ms: common practice, no source. */
const START_WINDOW_MS = 50;

/** A chord of the selected keys, live on the layer in front, to be finished on its card; it gives nothing yet. */
export function newChordDraft(keys: readonly KeyId[], layer: LayerId): Omit<Chord, 'id'> {
  return { keys, windowMs: START_WINDOW_MS, layers: [layer], action: { do: 'nothing' } };
}

/** Why no chord can be made of these keys, in a sentence; null where it can. */
export function whyNoChord(keymap: Keymap, keys: readonly KeyId[]): string | null {
  if (keys.length < CHORD_KEYS.least) return 'A chord needs two keys at least.';
  if (keys.length > CHORD_KEYS.most) return 'A chord has five keys at most.';
  if (chordsOf(keymap).length >= LIMITS.chords) return `A design has ${LIMITS.chords} chords at most.`;
  return null;
}
