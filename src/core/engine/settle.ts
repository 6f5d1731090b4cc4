import type { Act } from './act.ts';
import { bindingUnder, type Compiled, type CompiledBinding, type Subject, subjectCount } from './compiled.ts';
import type { Explainer } from './explain.ts';
import { ItemLine } from './item-line.ts';

/** Stage 2: which of a binding's two actions a press means (rules S1 to S14). */
export class Settle {
  /** When the open key's timer is due (rule S8), ms; Infinity while nothing is open. */
  due = Infinity;
  private readonly compiled: Compiled;
  private readonly act: Act;
  private readonly explain: Explainer | null;
  private readonly line = new ItemLine();
  private open: CompiledBinding | null = null;
  private openKey: Subject = 0;
  private openedAt = 0;
  /** Something was pressed since the open key went down. */
  private pressedInside = false;
  /** The open key is past its time, alone (rule S14). */
  private isAlone = false;
  /** Counts the keys that became open; marks whose down is in the present queue. */
  private opening = 0;
  private readonly queuedIn: Float64Array;
  private lastDown = -Infinity;
  /** Per subject, 1 while it is down as a tap of a binding with both. */
  private readonly tapsOfBoth: Uint8Array;
  /** Per subject, the `r` of rule S11. */
  private readonly tapReleased: Float64Array;

  constructor(compiled: Compiled, act: Act, explain: Explainer | null) {
    const subjects = subjectCount(compiled);
    this.compiled = compiled;
    this.act = act;
    this.explain = explain;
    this.queuedIn = new Float64Array(subjects);
    this.tapsOfBoth = new Uint8Array(subjects);
    this.tapReleased = new Float64Array(subjects).fill(-Infinity);
  }

  /** Puts an item at the end of the work list; `work` follows when the batch is complete. t: physical, ms. */
  pass(subject: Subject, isUp: boolean, t: number): void {
    this.line.push(subject, isUp, t, this.lastDown);
    if (!isUp) this.lastDown = t;
  }

  /** S1: works the list off, the open key's timer before each item that is later than it. */
  work(now: number): void {
    const { line } = this;
    for (;;) {
      if (this.due < (line.done ? now : line.t)) this.timer(now);
      else if (line.done) return;
      else if (this.open === null || this.passesAlone()) this.take(now);
      else this.queue(this.open, now);
    }
  }

  /** S8, S14: the open key's timer runs out. `work` follows. */
  timer(now: number): void {
    if (this.open?.tapIfAlone === true && !this.pressedInside) {
      this.due = Infinity;
      this.isAlone = true;
      this.line.requeue();
      if (this.explain !== null) this.explain.alone(this.openKey, now);
    } else this.settle(true, 'S8', now);
  }

  /** S14: the ups of other keys go past a key that is alone; nothing is in its queue then. */
  private passesAlone(): boolean {
    return this.isAlone && this.line.isUp && this.line.subject !== this.openKey;
  }

  /** S3 to S7, S14: an item comes while a key is open. */
  private queue(open: CompiledBinding, now: number): void {
    const { subject, isUp } = this.line;
    this.line.enqueue();
    if (isUp) {
      if (subject === this.openKey) this.settle(false, 'S3', now, subject);
      else if (open.holdBy === 'tap-inside' && this.queuedIn[subject] === this.opening)
        this.settle(true, 'S6', now, subject);
      return;
    }
    this.queuedIn[subject] = this.opening;
    this.pressedInside = true;
    if (this.isAlone) this.settle(true, 'S14', now, subject);
    else if (open.sameHandTaps && this.sameHand(subject)) this.settle(false, 'S4', now, subject);
    else if (open.holdBy === 'press-inside') this.settle(true, 'S5', now, subject);
  }

  /** Keys of one hand, no thumb keys; a firing has no hand. */
  private sameHand(subject: Subject): boolean {
    const hand = this.compiled.handOf[this.openKey] ?? 0;
    return hand !== 0 && this.compiled.handOf[subject] === hand;
  }

  /** S2: the open key's action is pressed, its queue goes in front of the work list. */
  private settle(asHold: boolean, rule: string, now: number, by?: Subject): void {
    const { open, openKey } = this;
    if (open === null) return;
    if (this.explain !== null) this.explain.settled(asHold, rule, openKey, this.openedAt, open, by, now);
    this.open = null;
    this.due = Infinity;
    this.line.requeue();
    this.pressSide(open, asHold, openKey, now);
  }

  private pressSide(binding: CompiledBinding, asHold: boolean, subject: Subject, now: number): void {
    if (!asHold && binding.hold !== null) this.tapsOfBoth[subject] = 1;
    const action = asHold ? binding.hold : binding.tap;
    if (action !== null) this.act.press(subject, action, now);
  }

  /** S9, S13: an item is taken while nothing is open. */
  private take(now: number): void {
    const { subject, isUp, t, previousDown } = this.line;
    this.line.drop();
    if (!isUp) {
      this.down(subject, t, previousDown, now);
      return;
    }
    if (this.tapsOfBoth[subject] === 1) {
      this.tapsOfBoth[subject] = 0;
      this.tapReleased[this.ofItsChord(subject)] = t;
    }
    this.act.release(subject, now);
  }

  private down(subject: Subject, t: number, previousDown: number, now: number): void {
    const binding = bindingUnder(this.compiled, this.act.layers.on, subject);
    if (binding === null) {
      if (this.explain !== null) this.explain.noBinding(subject, t, now);
    } else if (binding.tap === null || binding.hold === null) {
      if (this.explain !== null) this.explain.onlyAction(binding, subject, t, now);
      this.pressSide(binding, binding.tap === null, subject, now);
    } else if (this.tapsAtOnce(binding, subject, t, previousDown, now)) {
      this.pressSide(binding, false, subject, now);
    } else this.becomeOpen(binding, subject, t, now);
  }

  /** S10, S11: fast typing never becomes a hold. */
  private tapsAtOnce(
    binding: CompiledBinding,
    subject: Subject,
    t: number,
    previousDown: number,
    now: number,
  ): boolean {
    const { quietBeforeMs, againWithinMs } = binding;
    if (quietBeforeMs > 0 && t < previousDown + quietBeforeMs) {
      if (this.explain !== null) this.explain.quietTap(binding, subject, t, t - previousDown, now);
      return true;
    }
    const released = this.tapReleased[this.ofItsChord(subject)] ?? 0;
    if (againWithinMs > 0 && t <= released + againWithinMs) {
      if (this.explain !== null) this.explain.againTap(binding, subject, t, t - released, now);
      return true;
    }
    return false;
  }

  /** One number for all firings of a chord. */
  private ofItsChord(subject: Subject): Subject {
    const { keyIds, chords } = this.compiled;
    return subject < keyIds.length + chords.length ? subject : subject - chords.length;
  }

  private becomeOpen(binding: CompiledBinding, subject: Subject, t: number, now: number): void {
    this.open = binding;
    this.openKey = subject;
    this.openedAt = t;
    this.pressedInside = false;
    this.isAlone = false;
    this.opening++;
    this.due = t + binding.holdAfterMs;
    if (this.explain !== null) this.explain.opened(binding, subject, this.due, now);
  }
}
