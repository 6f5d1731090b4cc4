import type { Explainer } from './explain.ts';

/** Why a layer is switched, for the trace: the rule and the words. */
export interface LayerCause {
  readonly rule: string;
  readonly on: string;
  readonly off: string;
}

export const HELD: LayerCause = {
  rule: 'A4',
  on: 'a key holds it',
  off: 'the last key that holds it came up',
};
export const LATCHED: LayerCause = { rule: 'L1', on: 'latched', off: 'its latch went off' };
export const LOCKED: LayerCause = { rule: 'A5', on: 'locked', off: 'its lock was taken off' };

/** Which layers are on: the base layer always, others while held, latched, locked or by `onWhile` (rule A4). */
export class LayerState {
  /** The layers that are on, as a mask. */
  on = 1;
  private readonly onWhile: Int32Array;
  private readonly explain: Explainer | null;
  /** Per layer, how many holds, latches and locks keep it on. */
  private readonly counts: Int32Array;

  constructor(onWhile: Int32Array, explain: Explainer | null) {
    this.onWhile = onWhile;
    this.explain = explain;
    this.counts = new Int32Array(onWhile.length);
  }

  keepOn(layer: number, cause: LayerCause, now: number): void {
    const count = this.counts[layer] ?? 0;
    this.counts[layer] = count + 1;
    if (count === 0) this.refresh(cause, now);
  }

  letGo(layer: number, cause: LayerCause, now: number): void {
    const count = this.counts[layer] ?? 0;
    this.counts[layer] = count - 1;
    if (count === 1) this.refresh(cause, now);
  }

  /** `onWhile` names lower layers only, so one pass upwards settles chains of them. */
  private refresh(cause: LayerCause, now: number): void {
    const before = this.on;
    let kept = 1;
    let on = 1;
    for (let layer = 1; layer < this.counts.length; layer++) {
      const needed = this.onWhile[layer] ?? 0;
      if ((this.counts[layer] ?? 0) > 0) kept |= 1 << layer;
      if ((kept & (1 << layer)) !== 0 || (needed !== 0 && (on & needed) === needed)) on |= 1 << layer;
    }
    this.on = on;
    if (this.explain !== null) this.explain.layers(before, on, kept, cause, now);
  }
}
