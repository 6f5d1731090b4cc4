import type { Code } from '../keymap/codes.ts';
import { CodeCounter } from './code-counter.ts';
import { BACK, type Compiled, type CompiledAction, LIFT, type Subject, subjectCount } from './compiled.ts';
import type { Explainer } from './explain.ts';
import { Latches } from './latches.ts';
import { HELD, LayerState, LOCKED } from './layer-state.ts';
import type { Sink } from './types.ts';

/** Stage 3: what actions do (rules A1 to A10, L1 to L5). */
export class Act {
  readonly layers: LayerState;
  private readonly codes: CodeCounter;
  private readonly latches: Latches;
  private readonly explain: Explainer | null;
  /** Per subject, the action that it pressed and has not released (rule S13). */
  private readonly pressed: (CompiledAction | null)[];
  private readonly lockedCodes: Uint8Array;
  private readonly lockedLayers: Uint8Array;
  private readonly level3: Code | null;
  /** What typed last, as it was pressed (rule A9). */
  private last: CompiledAction | null = null;
  /** Rule A10. */
  private wordIsOn = false;

  constructor(compiled: Compiled, sink: Sink, explain: Explainer | null) {
    const subjects = subjectCount(compiled);
    this.layers = new LayerState(compiled.onWhile, explain);
    this.codes = new CodeCounter(compiled.codes, sink);
    this.latches = new Latches(subjects, this.layers, this.codes, explain);
    this.explain = explain;
    this.pressed = Array(subjects).fill(null);
    this.lockedCodes = new Uint8Array(compiled.codes.length);
    this.lockedLayers = new Uint8Array(compiled.layerIds.length);
    this.level3 = compiled.level3;
  }

  press(subject: Subject, tap: CompiledAction, now: number): void {
    const action = tap.shifted === null ? tap : this.underShift(subject, tap, tap.shifted, now);
    this.pressed[subject] = action;
    switch (action.kind) {
      case 'emit':
      case 'lifted':
        this.emit(subject, action, now);
        break;
      case 'layer-held':
        this.layers.keepOn(action.target, HELD, now);
        break;
      case 'layer-latch':
        this.latches.press(true, action.target, subject, now);
        break;
      case 'modifier-latch':
        this.latches.press(false, action.target, subject, now);
        break;
      case 'layer-lock':
        this.lockLayer(action.target, subject, now);
        break;
      case 'modifier-lock':
        this.lockCode(action.target, subject, now);
        break;
      case 'repeat':
        this.repeat(subject, now);
        break;
      case 'word-shift':
        this.turnWord(!this.wordIsOn, subject, 'pressed again', now);
        break;
      case 'silent':
    }
  }

  /** A8: step (1) of L2 comes first, so that a Shift that was latched for another key is none for this one. */
  private underShift(
    subject: Subject,
    tap: CompiledAction,
    shifted: CompiledAction,
    now: number,
  ): CompiledAction {
    if (!this.latches.none) this.latches.beforeTyping(now);
    if (!this.codes.shiftIsOn) return tap;
    if (this.explain !== null) this.explain.shifted(subject, now);
    return shifted;
  }

  /** A9: presses what typed last once more; it is released with this subject. */
  private repeat(subject: Subject, now: number): void {
    if (this.explain !== null) this.explain.repeat(subject, this.last !== null, now);
    if (this.last === null) return;
    this.pressed[subject] = this.last;
    this.emit(subject, this.last, now);
  }

  /** S13: releases what the subject pressed; nothing where it pressed nothing. */
  release(subject: Subject, now: number): void {
    const action = this.pressed[subject];
    if (action === null || action === undefined) return;
    this.pressed[subject] = null;
    if (action.kind === 'layer-held') this.layers.letGo(action.target, HELD, now);
    for (const code of action.onRelease) this.codes.release(code, now);
    if (this.latches.none) return;
    if (action.types) this.latches.afterRelease(subject, now);
    else this.latches.release(subject, now);
  }

  private emit(subject: Subject, action: CompiledAction, now: number): void {
    if (this.explain !== null && action.without.length > 0) this.explain.noRoute(action, subject, now);
    const usesLatches = action.types && !this.latches.none;
    if (usesLatches) this.latches.beforeTyping(now);
    if (action.types && action.onPress.length > 0) this.last = action;
    if (this.wordIsOn && action.types) this.emitInWord(subject, action, now);
    else this.send(action, now);
    if (usesLatches) this.latches.afterTyping(subject, now);
  }

  private send({ kind, onPress }: CompiledAction, now: number): void {
    if (kind === 'lifted') {
      this.sendLifted(onPress, now);
      return;
    }
    for (const step of onPress) {
      if (step >= 0) this.codes.press(step, now);
      else this.codes.release(~step, now);
    }
  }

  private sendLifted(steps: readonly number[], now: number): void {
    for (const step of steps) {
      if (step === LIFT) this.codes.lift(now);
      else if (step === BACK) this.codes.comeBack(now);
      else if (step >= 0) this.codes.pressLifted(step, now);
      else this.codes.release(~step, now);
    }
  }

  /** A10: goes on with the word, in capitals where there are some, or ends it. */
  private emitInWord(subject: Subject, action: CompiledAction, now: number): void {
    const form = this.codes.anyOther(this.level3) ? 'ends' : action.inWord;
    if (form === 'ends') this.turnWord(false, subject, 'what came belongs to no word', now);
    if (typeof form === 'string') {
      this.send(action, now);
      return;
    }
    this.pressed[subject] = form;
    this.send(form, now);
  }

  private turnWord(on: boolean, subject: Subject, whyOff: string, now: number): void {
    this.wordIsOn = on;
    if (this.explain !== null) this.explain.word(on, subject, whyOff, now);
  }

  /** A5: a lock belongs to its layer; each press toggles it. */
  private lockLayer(layer: number, subject: Subject, now: number): void {
    const on = this.lockedLayers[layer] === 0;
    this.lockedLayers[layer] = on ? 1 : 0;
    if (this.explain !== null) this.explain.lock(true, layer, subject, on, now);
    if (on) this.layers.keepOn(layer, LOCKED, now);
    else this.layers.letGo(layer, LOCKED, now);
  }

  private lockCode(code: number, subject: Subject, now: number): void {
    const on = this.lockedCodes[code] === 0;
    this.lockedCodes[code] = on ? 1 : 0;
    if (this.explain !== null) this.explain.lock(false, code, subject, on, now);
    if (on) this.codes.press(code, now);
    else this.codes.release(code, now);
  }
}
