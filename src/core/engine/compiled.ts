import type { Code } from '../keymap/codes.ts';
import type { ChordId, HoldBy, KeyId, LayerId } from '../keymap/types.ts';

/** A code by its place in `CODES`. */
export type CodeNumber = number;

/**
 * What stage 2 and 3 speak about: a key by its place on the board, or a firing as the number of keys plus the place of
 * its chord. A chord's next firing needs all of its keys to have come up, so the firing before it is over by then, with
 * one exception: where the last key's up waits behind the first downs of the next firing, that one's down is passed on
 * before it (rule G8). So the firings of a chord that is released at its last key take turns with a second number,
 * which is greater by the number of chords.
 */
export type Subject = number;

export type ActionKind =
  | 'emit'
  | 'layer-held'
  | 'layer-latch'
  | 'layer-lock'
  | 'modifier-latch'
  | 'modifier-lock'
  | 'lifted'
  | 'repeat'
  | 'word-shift'
  | 'silent';

/** An action with everything looked up that does not depend on the moment. */
export interface CompiledAction {
  readonly kind: ActionKind;
  /** Whether it types in the sense of rule L2. */
  readonly types: boolean;
  /** At the press, in order: a code number c is pressed, ~c is released; LIFT and BACK in a lifted action. */
  readonly onPress: readonly number[];
  /** At the release, in order: code numbers to release. */
  readonly onRelease: readonly CodeNumber[];
  /** The layer's place, or the modifier's code number; -1 for other kinds. */
  readonly target: number;
  /** Characters that the host layout cannot type, for the trace. */
  readonly without: readonly string[];
  /** What is pressed in its place while Shift is on (rule A8); null where it is pressed as ever. */
  readonly shifted: CompiledAction | null;
  /** What comes of it while Shift for one word is on (rule A10). */
  readonly inWord: WordForm;
}

/** `ends`: it ends the word. `stays`: it goes on with it as it is. Otherwise: as it is pressed in the word, with capitals. */
export type WordForm = 'ends' | 'stays' | CompiledAction;

/** In `onPress` of a lifted action: every Shift that is down is lifted (rule A8). No code has such a number. */
export const LIFT = 1 << 20;
/** In `onPress` of a lifted action: what is lifted comes back (rule A8). */
export const BACK = LIFT + 1;

/** A binding with its timing as it is in force; durations in ms. */
export interface CompiledBinding {
  readonly tap: CompiledAction | null;
  readonly hold: CompiledAction | null;
  readonly holdAfterMs: number;
  readonly holdBy: HoldBy;
  readonly quietBeforeMs: number;
  readonly againWithinMs: number;
  readonly sameHandTaps: boolean;
  readonly tapIfAlone: boolean;
}

export interface CompiledChord {
  readonly id: ChordId;
  /** Its place in the document. */
  readonly index: number;
  readonly size: number;
  readonly windowMs: number;
  readonly quietBeforeMs: number;
  /** How many of its keys are still down when its firing comes up (rule G5). */
  readonly downAtRelease: number;
  /** Per key, 1 where the key belongs to the chord. */
  readonly has: Uint8Array;
  readonly binding: CompiledBinding;
}

/** A keymap and a host layout as numbers, ready to play. Sets of layers are 32-bit masks, bit 0 the base layer. */
export interface Compiled {
  readonly keyIds: readonly KeyId[];
  readonly layerIds: readonly LayerId[];
  readonly keyNumbers: ReadonlyMap<string, number>;
  /** Per key: 0 thumb, 1 left hand, 2 right hand. */
  readonly handOf: Uint8Array;
  /** Per key, the layers that hold a binding for it. */
  readonly boundOn: Int32Array;
  /** By layer × number of keys + key. */
  readonly bindingAt: readonly (CompiledBinding | null)[];
  readonly chords: readonly CompiledChord[];
  /** By layer × number of keys + key: the chords with that key that are live on that layer, in document order. */
  readonly chordsAt: readonly (readonly CompiledChord[])[];
  /** Per layer, the layers that switch it on while all of them are on; 0 for none. */
  readonly onWhile: Int32Array;
  readonly codes: readonly Code[];
  /** The host's modifier for level 3, null where it has none. */
  readonly level3: Code | null;
}

/** The highest layer of a set that is not empty. */
export function highestLayer(layers: number): number {
  return 31 - Math.clz32(layers);
}

/** How many subjects there can be. */
export function subjectCount({ keyIds, chords }: Compiled): number {
  return keyIds.length + 2 * chords.length;
}

/** The chord of a firing; undefined for a key. */
export function chordOf({ keyIds, chords }: Compiled, subject: Subject): CompiledChord | undefined {
  const at = subject - keyIds.length;
  return chords[at < chords.length ? at : at - chords.length];
}

/** The binding that rule S12 finds for a subject while a set of layers is on. */
export function bindingUnder(compiled: Compiled, layers: number, subject: Subject): CompiledBinding | null {
  const keys = compiled.keyIds.length;
  if (subject >= keys) return chordOf(compiled, subject)?.binding ?? null;
  const bound = (compiled.boundOn[subject] ?? 0) & layers;
  if (bound === 0) return null;
  return compiled.bindingAt[highestLayer(bound) * keys + subject] ?? null;
}
