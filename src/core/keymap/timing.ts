import type { Binding, Chord, HoldBy, Keymap, LayerId } from './types.ts';

/** The five timing fields as they are in force for a binding, ms where they are durations. */
export interface EffectiveTiming {
  readonly holdAfterMs: number;
  readonly holdBy: HoldBy;
  readonly quietBeforeMs: number;
  readonly againWithinMs: number;
  readonly sameHandTaps: boolean;
}

/** What holds where neither the binding nor the keymap says anything. */
export const DEFAULT_TIMING: EffectiveTiming = {
  holdAfterMs: 200,
  holdBy: 'time-only',
  quietBeforeMs: 0,
  againWithinMs: 0,
  sameHandTaps: false,
};

/** The binding's own fields, else the keymap's, else the defaults. */
export function timingOf(keymap: Keymap, binding?: Binding): EffectiveTiming {
  const own = binding ?? {};
  const all = keymap.timing ?? {};
  return {
    holdAfterMs: own.holdAfterMs ?? all.holdAfterMs ?? DEFAULT_TIMING.holdAfterMs,
    holdBy: own.holdBy ?? all.holdBy ?? DEFAULT_TIMING.holdBy,
    quietBeforeMs: own.quietBeforeMs ?? all.quietBeforeMs ?? DEFAULT_TIMING.quietBeforeMs,
    againWithinMs: own.againWithinMs ?? all.againWithinMs ?? DEFAULT_TIMING.againWithinMs,
    sameHandTaps: own.sameHandTaps ?? all.sameHandTaps ?? DEFAULT_TIMING.sameHandTaps,
  };
}

/** The chords of a keymap, none where the field is absent. */
export function chordsOf(keymap: Keymap): readonly Chord[] {
  return keymap.chords ?? [];
}

/** The layers on which a chord is live: those it names, else every one. */
export function layersOfChord(keymap: Keymap, chord: Chord): readonly LayerId[] {
  return chord.layers ?? keymap.layers.map((layer) => layer.id);
}
