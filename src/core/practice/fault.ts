import type { ModifierName } from '../keymap/need.ts';
import type { ChordId, KeyId, LayerId } from '../keymap/types.ts';

/**
 * What went wrong in one attempt. A number that only the engine can know is null where a real board sent nothing but
 * results; ms throughout.
 */
export type Fault =
  | {
      readonly fault: 'chord-missed';
      readonly chord: ChordId;
      /** From its first to its last key down; within the window, something else broke it. */
      readonly apartMs: number | null;
      readonly windowMs: number;
      /** Why it did not fire though it was quick enough. */
      readonly broken: 'other-key' | 'too-short' | 'not-quiet' | null;
    }
  | { readonly fault: 'chord-incomplete'; readonly chord: ChordId; readonly missing: readonly KeyId[] }
  | {
      readonly fault: 'chord-by-mistake';
      readonly chord: ChordId;
      readonly apartMs: number | null;
      readonly windowMs: number;
    }
  | {
      readonly fault: 'tap-for-hold';
      readonly key: KeyId;
      readonly heldMs: number | null;
      readonly holdAfterMs: number;
      /** The timing rule that made it a tap, null where that cannot be known. */
      readonly rule: string | null;
    }
  | {
      readonly fault: 'hold-for-tap';
      readonly key: KeyId;
      readonly heldMs: number | null;
      readonly holdAfterMs: number;
      readonly rule: string | null;
    }
  | {
      readonly fault: 'wrong-layer';
      readonly on: LayerId;
      readonly needed: LayerId;
      readonly rightKey: boolean;
    }
  | { readonly fault: 'modifier-missing'; readonly modifier: ModifierName }
  | { readonly fault: 'modifier-extra'; readonly modifier: ModifierName }
  | { readonly fault: 'came-early' }
  | {
      readonly fault: 'old-place' | 'mirrored-hand' | 'neighbour' | 'other-key';
      readonly key: KeyId;
      readonly meant: KeyId;
    }
  | { readonly fault: 'nothing-there'; readonly key: KeyId }
  | { readonly fault: 'unknown' };

/** What an attempt went wrong by; `sure` where the engine saw the presses, else it is only likely. */
export interface Diagnosis {
  readonly sure: boolean;
  /** The one that explains most comes first; none is there twice. */
  readonly faults: readonly Fault[];
}

/** The same faults, each once, the first of each staying. */
export function distinctFaults(faults: readonly Fault[]): readonly Fault[] {
  const seen = new Set<string>();
  return faults.filter((fault) => {
    const text = JSON.stringify(fault);
    const isNew = !seen.has(text);
    seen.add(text);
    return isNew;
  });
}
