import type { Compiled, CompiledChord, Subject } from './compiled.ts';
import { chordOf, highestLayer } from './compiled.ts';
import type { Explainer } from './explain.ts';
import type { LayerState } from './layer-state.ts';
import type { Settle } from './settle.ts';

/** No firing holds the key. */
const FREE = -1;

/** Stage 1: keys that are pressed together become a chord (rules G1 to G8). */
export class Gather {
  /** When the gather timer is due, ms; Infinity while nothing waits. */
  due = Infinity;
  private readonly compiled: Compiled;
  private readonly layers: LayerState;
  private readonly settle: Settle;
  private readonly explain: Explainer | null;
  /** What waits, in order: subject × 2, plus 1 for an up. Room for a down and an up of every key. */
  private readonly what: Int32Array;
  private readonly times: Float64Array;
  private count = 0;
  private readonly waits: Uint8Array;
  private downs = 0;
  private t0 = 0;
  /** The first `possibleCount` of these; the list itself never shrinks, so that it is not made anew for each press. */
  private readonly possible: CompiledChord[] = [];
  private possibleCount = 0;
  private whole: CompiledChord | null = null;
  private lastDown = -Infinity;
  /** Per key, the firing it belongs to until its own up (rule G8). */
  private readonly firingOf: Int32Array;
  /** Per chord, how many keys of its firing are still down (rule G5). */
  private readonly stillDown: Uint8Array;
  /** Per chord, whose turn it is of its two numbers; see `Subject`. */
  private readonly turn: Uint8Array;

  constructor(compiled: Compiled, layers: LayerState, settle: Settle, explain: Explainer | null) {
    this.compiled = compiled;
    this.layers = layers;
    this.settle = settle;
    this.explain = explain;
    this.what = new Int32Array(2 * compiled.keyIds.length);
    this.times = new Float64Array(2 * compiled.keyIds.length);
    this.waits = new Uint8Array(compiled.keyIds.length);
    this.firingOf = new Int32Array(compiled.keyIds.length).fill(FREE);
    this.stillDown = new Uint8Array(compiled.chords.length);
    this.turn = new Uint8Array(compiled.chords.length);
  }

  /** G1, G2. now: the time at which what follows from it is emitted, ms. */
  down(key: number, t: number, now: number): void {
    if (this.downs > 0 && this.narrow(key, t)) this.wait(key, t, 'G2', now);
    else {
      if (this.downs > 0) this.flush('G2', now, key);
      if (this.begin(key, t)) this.wait(key, t, 'G1', now);
      else {
        this.settle.pass(key, false, t);
        this.settle.work(now);
      }
    }
    this.lastDown = t;
  }

  /** G4, G5. */
  up(key: number, t: number, now: number): void {
    if (this.waits[key] === 1) this.flush('G4', now, key);
    const firing = this.firingOf[key] ?? FREE;
    if (firing === FREE) {
      this.passUp(key, t, now);
      return;
    }
    this.firingOf[key] = FREE;
    const chord = chordOf(this.compiled, firing);
    if (chord === undefined) return;
    const left = (this.stillDown[chord.index] ?? 0) - 1;
    this.stillDown[chord.index] = left;
    if (left === chord.downAtRelease) this.passUp(firing, t, now);
  }

  /** G6. */
  timer(now: number): void {
    this.flush('G6', now);
  }

  /** Chords that can begin with a key: on the highest layer that is on, after enough quiet. */
  private begin(key: number, t: number): boolean {
    const { chordsAt, keyIds } = this.compiled;
    const chords = chordsAt[highestLayer(this.layers.on) * keyIds.length + key];
    if (chords === undefined || chords.length === 0) return false;
    let count = 0;
    for (const chord of chords)
      if (chord.quietBeforeMs === 0 || t >= this.lastDown + chord.quietBeforeMs)
        this.possible[count++] = chord;
    this.possibleCount = count;
    this.t0 = t;
    return count > 0;
  }

  /** Keeps those possible chords that one more key fits. None: `possible` stays as it is, and a flush follows. */
  private narrow(key: number, t: number): boolean {
    let kept = 0;
    for (let at = 0; at < this.possibleCount; at++) {
      const chord = this.possible[at];
      if (chord?.has[key] === 1 && t <= this.t0 + chord.windowMs) this.possible[kept++] = chord;
    }
    if (kept > 0) this.possibleCount = kept;
    return kept > 0;
  }

  /** The key waits; then G3. All possible chords contain all waiting downs, so sizes tell them apart. */
  private wait(key: number, t: number, rule: string, now: number): void {
    this.put(key << 1, t);
    this.waits[key] = 1;
    this.downs++;
    this.whole = null;
    let longest = -1;
    for (let at = 0; at < this.possibleCount; at++) {
      const chord = this.possible[at];
      if (chord === undefined) continue;
      if (chord.size > this.downs) longest = Math.max(longest, chord.windowMs);
      else if (this.whole === null) this.whole = chord;
    }
    this.due = this.t0 + longest;
    if (this.explain?.inWords === true) this.explainWait(this.explain, key, rule, now);
    if (longest < 0) this.flush('G3', now);
  }

  private passUp(subject: Subject, t: number, now: number): void {
    if (this.downs > 0) {
      this.put((subject << 1) | 1, t);
      return;
    }
    this.settle.pass(subject, true, t);
    this.settle.work(now);
  }

  private put(item: number, t: number): void {
    this.what[this.count] = item;
    this.times[this.count++] = t;
  }

  /** G7, G8: a firing, where a chord is whole, takes the place of the waiting downs. */
  private flush(rule: string, now: number, by?: number): void {
    const { whole, what, times } = this;
    const firing = whole === null ? FREE : this.fire(whole, rule, now);
    if (whole === null && this.explain?.inWords === true) this.explainFlush(this.explain, rule, now, by);
    for (let at = 0; at < this.count; at++) {
      const item = what[at] ?? 0;
      const isUp = (item & 1) === 1;
      if (!isUp) this.waits[item >> 1] = 0;
      if (isUp || firing === FREE) this.settle.pass(item >> 1, isUp, times[at] ?? 0);
      else this.firingOf[item >> 1] = firing;
    }
    this.count = 0;
    this.downs = 0;
    this.whole = null;
    this.due = Infinity;
    this.settle.work(now);
  }

  private fire(chord: CompiledChord, rule: string, now: number): Subject {
    if (this.explain !== null)
      this.explain.fired(chord, rule, this.t0, this.lastWaitingDown() - this.t0, now);
    this.stillDown[chord.index] = chord.size;
    const turn = this.turn[chord.index] ?? 0;
    if (chord.downAtRelease === 0) this.turn[chord.index] = 1 - turn;
    const firing = this.compiled.keyIds.length + chord.index + turn * this.compiled.chords.length;
    this.settle.pass(firing, false, this.t0);
    return firing;
  }

  private explainWait(explain: Explainer, key: number, rule: string, now: number): void {
    const data = { since: this.t0, until: Math.max(this.due, this.t0), keys: this.waitingKeys() };
    explain.waiting(key, rule, this.possible.slice(0, this.possibleCount), now, data);
  }

  private explainFlush(explain: Explainer, rule: string, now: number, by: number | undefined): void {
    const chords = this.possible.slice(0, this.possibleCount).map(({ id }) => id);
    const data = { since: this.t0, keys: this.waitingKeys(), chords };
    explain.notFired(rule, by, now, data);
  }

  private waitingKeys(): readonly string[] {
    const downs = [...this.what.subarray(0, this.count)].filter((item) => (item & 1) === 0);
    return downs.map((item) => this.compiled.keyIds[item >> 1] ?? '');
  }

  private lastWaitingDown(): number {
    const at = this.what.subarray(0, this.count).findLastIndex((item) => (item & 1) === 0);
    return this.times[at] ?? this.t0;
  }
}
