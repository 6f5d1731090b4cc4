import type { KeyEvent } from '../base/key-event.ts';
import type { Compiled } from '../engine/compiled.ts';
import { createEngine } from '../engine/engine.ts';
import type { Decided, Engine } from '../engine/types.ts';
import type { Intent, Listener } from './hands.ts';

/** Counts of one thing over batches; each batch is a typist. */
export interface Batches {
  /** What came of it, per batch. */
  readonly hits: number[];
  /** How often it could have come, per batch. */
  readonly tries: number[];
}

const WAIT_BINS = 1001;

/** Plays what hands do through the engine and counts where the outcome is not what was meant. */
export class Tally implements Listener {
  readonly chordMisfires = new Map<number, Batches>();
  readonly chordMisses = new Map<number, Batches>();
  /** Chords that were meant as taps, fired, and came as their holds. */
  readonly chordHolds = new Map<number, Batches>();
  /** By layer × number of keys + key. */
  readonly holdMisfires = new Map<number, Batches>();
  readonly holdMisses = new Map<number, Batches>();
  /** Waits of taps by press, in ms, rounded. */
  readonly waits = new Map<number, Float64Array>();
  /** The same summed, ms over presses. */
  readonly waited = new Map<number, Batches>();
  private readonly compiled: Compiled;
  private readonly engine: Engine;
  /** Per key, what its presses that are still to be settled were meant to be, and when they came. */
  private readonly meant: Intent[][];
  private readonly times: number[][];
  /** Per chord, whether its firings that are still to be settled were meant as taps. */
  private readonly firings: boolean[][];
  private batch = 0;

  constructor(compiled: Compiled) {
    this.compiled = compiled;
    this.meant = compiled.keyIds.map(() => []);
    this.times = compiled.keyIds.map(() => []);
    this.firings = compiled.chords.map(() => []);
    this.engine = createEngine(compiled, {
      output: () => undefined,
      decided: (what, subject, t) => this.hear(what, subject, t),
    });
  }

  /** The next typist's counts are kept apart. */
  nextBatch(): void {
    this.batch++;
  }

  event(event: KeyEvent): void {
    this.engine.feed(event);
  }

  finish(): void {
    this.engine.finish();
  }

  intend(key: number, t: number, intent: Intent): void {
    this.meant[key]?.push(intent);
    this.times[key]?.push(t);
  }

  private hear(what: Decided, subject: number, t: number): void {
    if (what === 'chord') this.chordFired(subject);
    else if (what === 'chord-tap' || what === 'chord-hold') this.firingSettled(subject, what);
    else this.keySettled(subject, what, t);
  }

  private chordFired(chord: number): void {
    const { has } = this.compiled.chords[chord] ?? {};
    let isMeant = true;
    let asTap = true;
    for (const [key, meant] of this.meant.entries()) {
      if (has?.[key] !== 1) continue;
      this.times[key]?.shift();
      const intent = meant.shift();
      if (intent?.chord !== chord) isMeant = false;
      if (intent?.asHold === true) asTap = false;
    }
    this.firings[chord]?.push(isMeant && asTap);
    if (!isMeant) count(this.chordMisfires, chord, this.batch, 1, 0);
    else count(this.chordMisses, chord, this.batch, -1, 0);
  }

  private firingSettled(chord: number, what: 'chord-tap' | 'chord-hold'): void {
    const isOfTap = this.firings[chord]?.shift() === true;
    if (isOfTap) count(this.chordHolds, chord, this.batch, what === 'chord-hold' ? 1 : 0, 1);
  }

  private keySettled(key: number, what: Decided, t: number): void {
    const meant = this.meant[key]?.shift();
    const since = this.times[key]?.shift() ?? t;
    if (meant === undefined || meant.chord >= 0 || meant.place < 0) return;
    const place = meant.place * this.compiled.keyIds.length + key;
    if (meant.asHold) count(this.holdMisses, place, this.batch, what === 'hold' ? 0 : 1, 1);
    else if (what === 'hold') count(this.holdMisfires, place, this.batch, 1, 0);
    else this.wait(meant.press, t - since);
  }

  /** A chord is being used: a miss until it fires. */
  usesChord(chord: number): void {
    count(this.chordMisses, chord, this.batch, 1, 1);
  }

  private wait(press: number, ms: number): void {
    const bins = this.waits.get(press) ?? new Float64Array(WAIT_BINS);
    this.waits.set(press, bins);
    const bin = Math.min(WAIT_BINS - 1, Math.round(ms));
    bins[bin] = (bins[bin] ?? 0) + 1;
    count(this.waited, press, this.batch, ms, 1);
  }
}

function count(counts: Map<number, Batches>, at: number, batch: number, hits: number, tries: number): void {
  const own = counts.get(at) ?? { hits: [], tries: [] };
  counts.set(at, own);
  own.hits[batch] = (own.hits[batch] ?? 0) + hits;
  own.tries[batch] = (own.tries[batch] ?? 0) + tries;
}
