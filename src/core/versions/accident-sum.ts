import type { Accidents } from '../typist/accidents.ts';

/** Accidents of a whole design with one text and one typist. */
export interface AccidentSum {
  /** Chords and holds that come unasked in 1,000 words; chords of five keys are left out, since only a simulation can say. */
  readonly misfiresPer1000Words: number;
  /** Misses of the chord or hold that fails most often when it is meant, in 1,000 uses; 0 without any. */
  readonly worstMissesPer1000Uses: number;
  /** Letters wait so long on average, weighed by how often they are pressed, ms; 0 where none waits. */
  readonly meanDelayMs: number;
}

/** Sums the closed form up, so that two designs can be held side by side. */
export function accidentSum({ chords, holds, delay }: Accidents): AccidentSum {
  const misfires = [...chords, ...holds].map(({ misfiresPer1000Words }) => misfiresPer1000Words ?? 0);
  const misses = [...chords, ...holds].map(({ missesPer1000Uses }) => missesPer1000Uses);
  const pressed = delay.reduce((sum, { per1000Words }) => sum + per1000Words, 0);
  const waited = delay.reduce((sum, { per1000Words, meanMs }) => sum + per1000Words * meanMs, 0);
  return {
    misfiresPer1000Words: misfires.reduce((sum, each) => sum + each, 0),
    worstMissesPer1000Uses: Math.max(0, ...misses),
    meanDelayMs: pressed === 0 ? 0 : waited / pressed,
  };
}
