import type { CodeCounter } from './code-counter.ts';
import type { Subject } from './compiled.ts';
import type { Explainer } from './explain.ts';
import { LATCHED, type LayerState } from './layer-state.ts';

/** In place of a subject: no action has used the latch; or, asked for, whichever used it. */
const NOBODY = -1;

interface Latch {
  readonly isLayer: boolean;
  /** The layer, or the modifier's code number. */
  readonly target: number;
  /** Whose press turned it on. */
  readonly key: Subject;
  keyUp: boolean;
  /** Whose press used it; NOBODY while it is unused. */
  usedBy: Subject;
}

/** Rules L1 to L5. The latches that are on, in the order of coming on; of each target at most one is unused. */
export class Latches {
  private readonly on: Latch[] = [];
  /** Per subject, the latch that its present press turned on. */
  private readonly startedBy: (Latch | null)[];
  private readonly layers: LayerState;
  private readonly codes: CodeCounter;
  private readonly explain: Explainer | null;

  constructor(subjects: number, layers: LayerState, codes: CodeCounter, explain: Explainer | null) {
    this.startedBy = Array(subjects).fill(null);
    this.layers = layers;
    this.codes = codes;
    this.explain = explain;
  }

  get none(): boolean {
    return this.on.length === 0;
  }

  /** L1: turns an unused latch of the target off, or else a new one on. Once off, it cannot be used, so no release does anything. */
  press(isLayer: boolean, target: number, key: Subject, now: number): void {
    const at = this.on.findIndex(
      (latch) => latch.usedBy === NOBODY && latch.isLayer === isLayer && latch.target === target,
    );
    const unused = this.on[at];
    if (unused === undefined) this.start(isLayer, target, key, now);
    else this.turnOff(at, unused, 'L1', now);
  }

  private start(isLayer: boolean, target: number, key: Subject, now: number): void {
    const latch: Latch = { isLayer, target, key, keyUp: false, usedBy: NOBODY };
    this.on.push(latch);
    this.startedBy[key] = latch;
    if (this.explain !== null) this.explain.latch(isLayer, target, key, true, 'L1', now);
    if (isLayer) this.layers.keepOn(target, LATCHED, now);
    else this.codes.press(target, now);
  }

  /** L3: at the release of its key a used latch goes off, an unused one stays on. */
  release(key: Subject, now: number): void {
    const latch = this.startedBy[key];
    if (latch === null || latch === undefined) return;
    this.startedBy[key] = null;
    latch.keyUp = true;
    if (latch.usedBy !== NOBODY) this.turnOff(this.on.indexOf(latch), latch, 'L3', now);
  }

  /** L2, step 1: modifier latches that an earlier action used go off, unless their key is down. */
  beforeTyping(now: number): void {
    this.sweep(false, NOBODY, 'L2', now);
  }

  /** L2, steps 3 and 4: the unused ones become used; layer latches whose key is up go off. */
  afterTyping(by: Subject, now: number): void {
    for (const latch of this.on) if (latch.usedBy === NOBODY) latch.usedBy = by;
    this.sweep(true, NOBODY, 'L2', now);
  }

  /**
   * L4: the modifier latches that an action used after their key's release go off after it. Those that it used while their
   * key was down are still held by it, or went off with it (L3), so it is enough that the key is up.
   */
  afterRelease(by: Subject, now: number): void {
    this.sweep(false, by, 'L4', now);
  }

  /** Turns off used latches of one sort whose key is up, the last to come on first (rule L5). */
  private sweep(isLayer: boolean, by: Subject, rule: string, now: number): void {
    for (let at = this.on.length - 1; at >= 0; at--) {
      const latch = this.on[at];
      if (latch === undefined || latch.isLayer !== isLayer || latch.usedBy === NOBODY || !latch.keyUp)
        continue;
      if (by === NOBODY || latch.usedBy === by) this.turnOff(at, latch, rule, now);
    }
  }

  private turnOff(at: number, latch: Latch, rule: string, now: number): void {
    this.on.splice(at, 1);
    if (this.explain !== null) this.explain.latch(latch.isLayer, latch.target, latch.key, false, rule, now);
    if (latch.isLayer) this.layers.letGo(latch.target, LATCHED, now);
    else this.codes.release(latch.target, now);
  }
}
