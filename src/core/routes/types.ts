import type { KeyEvent } from '../base/key-event.ts';
import type { Need } from '../keymap/need.ts';
import type { ChordId, KeyId, Side } from '../keymap/types.ts';

/**
 * What a route costs; compared field by field in this order.
 * strokes: non-modifier presses that the computer receives (for a need that is a modifier: 1).
 * presses: physical key presses, each key of a chord counted.
 * holds: keys and chords that stay down while something else is pressed, or until a hold takes effect.
 * waitMs: ms that must pass for thresholds, windows and quiet times before the next move can come.
 */
export interface Cost {
  readonly strokes: number;
  readonly presses: number;
  readonly holds: number;
  readonly waitMs: number;
}

/** One move of a route, in the order in which it is made. */
export type Step =
  | {
      readonly move: 'press' | 'hold';
      readonly keys: readonly KeyId[];
      readonly chord?: ChordId;
      readonly side: Side;
      /** What comes is what stands for the tap while Shift is on. */
      readonly shifted?: true;
    }
  | { readonly move: 'release'; readonly keys: readonly KeyId[]; readonly chord?: ChordId };

/** How a need is typed on a design: starts at rest, ends at rest, and produces exactly the need. */
export interface Route {
  readonly need: Need;
  readonly cost: Cost;
  /** A finger must hold one key and press another at once. */
  readonly clumsy: boolean;
  readonly steps: readonly Step[];
  /** Presses that the engine turns into exactly the need. */
  readonly events: readonly KeyEvent[];
}

/** A need and its cheapest route, null where no route exists. */
export interface NeedRoute {
  readonly need: Need;
  readonly route: Route | null;
}
