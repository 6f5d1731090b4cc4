import type { ChordId, KeyId, LayerId } from '../keymap/types.ts';
import type { HeldState } from './computer-state.ts';
import type { MovedKeys } from './moved-keys.ts';

/** A character that came otherwise than the design's host layout has it. */
export interface OtherCharacter {
  readonly code: string;
  readonly expected: string;
  readonly came: string;
}

/**
 * What is likely wrong with a board. Of a real board a browser sees results alone: layer keys, how far apart the keys of a
 * chord came, and what a hold hides are inferred from them.
 */
export type BoardFault =
  | MovedKeys
  | {
      readonly fault: 'layer-not-reached';
      readonly layer: LayerId;
      readonly by: KeyId;
      readonly steps: readonly string[];
    }
  | {
      readonly fault: 'other-host';
      readonly characters: readonly OtherCharacter[];
      readonly steps: readonly string[];
    }
  /** `apartMs`: between the first and the last of the results that came instead. */
  | {
      readonly fault: 'chord-missed';
      readonly chord: ChordId;
      readonly step: string;
      readonly apartMs: number;
      readonly windowMs: number;
    }
  | { readonly fault: 'tap-for-hold' | 'hold-for-tap'; readonly step: string; readonly key: KeyId }
  | {
      readonly fault: 'chatters';
      readonly key: KeyId;
      readonly code: string;
      readonly gapMs: number;
      readonly step: string;
    }
  | { readonly fault: 'stuck'; readonly key: KeyId; readonly code: string; readonly step: string }
  /** The computer held modifiers to be down that nothing in the check had pressed. */
  | {
      readonly fault: 'modifier-down';
      readonly states: readonly HeldState[];
      readonly steps: readonly string[];
    }
  /** Nothing came of any of its presses. */
  | { readonly fault: 'dead-key'; readonly key: KeyId; readonly steps: readonly string[] }
  | { readonly fault: 'nothing-came'; readonly step: string }
  | { readonly fault: 'something-else'; readonly step: string };
