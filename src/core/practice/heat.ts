import type { KeyId } from '../keymap/types.ts';
import { quantileOf } from './estimates.ts';
import type { NeedProgress } from './progress.ts';
import type { Ways } from './ways.ts';

/** How it goes at one key: all needs that it types, taken together. */
export interface KeyHeat {
  readonly tries: number;
  readonly errorShare: number;
  /** Null where nothing was timed. */
  readonly medianMs: number | null;
}

/** How it goes key by key; a key that types nothing that was practised has no entry. Each key of a chord counts. */
export function heatOf(progress: ReadonlyMap<string, NeedProgress>, ways: Ways): ReadonlyMap<KeyId, KeyHeat> {
  const pooled = new Map<KeyId, { tries: boolean[]; timesMs: number[] }>();
  for (const [need, { tries, timesMs }] of progress) {
    if (tries.length === 0) continue;
    for (const key of ways.of(need)?.known.keys ?? []) {
      const pool = pooled.get(key) ?? { tries: [], timesMs: [] };
      pool.tries.push(...tries);
      pool.timesMs.push(...timesMs);
      pooled.set(key, pool);
    }
  }
  return new Map(
    [...pooled].map(([key, { tries, timesMs }]) => [
      key,
      {
        tries: tries.length,
        errorShare: tries.filter((right) => !right).length / tries.length,
        medianMs: quantileOf(timesMs, 0.5)?.value ?? null,
      },
    ]),
  );
}
