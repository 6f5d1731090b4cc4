import type { Binding, Chord, HoldBy, Keymap, LayerId } from './types.ts';

/** The six timing fields as they are in force for a binding, ms where they are durations. */
export interface EffectiveTiming {
  readonly holdAfterMs: number;
  readonly holdBy: HoldBy;
  readonly quietBeforeMs: number;
  readonly againWithinMs: number;
  readonly sameHandTaps: boolean;
  readonly tapIfAlone: boolean;
}

/** What holds where neither the binding nor the keymap says anything. */
export const DEFAULT_TIMING: EffectiveTiming = {
  holdAfterMs: 200,
  holdBy: 'time-only',
  quietBeforeMs: 0,
  againWithinMs: 0,
  sameHandTaps: false,
  tapIfAlone: false,
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
    tapIfAlone: own.tapIfAlone ?? all.tapIfAlone ?? DEFAULT_TIMING.tapIfAlone,
  };
}

/**
 * What settles a firing between the chord's two actions: the chord's own fields, else the keymap's, else the defaults.
 * A firing has no hand (S4), and its quiet before is asked for when it begins (G1), so those two are off.
 */
export function timingOfChord(keymap: Keymap, chord: Chord): EffectiveTiming {
  const { holdAfterMs, holdBy, againWithinMs, tapIfAlone } = chord;
  const own = { holdAfterMs, holdBy, againWithinMs, tapIfAlone };
  const given = Object.fromEntries(Object.entries(own).filter(([, value]) => value !== undefined));
  return { ...timingOf(keymap, { tap: chord.action, ...given }), quietBeforeMs: 0, sameHandTaps: false };
}

/** The chords of a keymap, none where the field is absent. */
export function chordsOf(keymap: Keymap): readonly Chord[] {
  return keymap.chords ?? [];
}

/** The layers on which a chord is live: those it names, else every one. */
export function layersOfChord(keymap: Keymap, chord: Chord): readonly LayerId[] {
  return chord.layers ?? keymap.layers.map((layer) => layer.id);
}
