import { CodeCounter } from './code-counter.ts';
import type { Compiled, CompiledAction, Subject } from './compiled.ts';
import type { Explainer } from './explain.ts';
import { Latches } from './latches.ts';
import { HELD, LayerState, LOCKED } from './layer-state.ts';
import type { Sink } from './types.ts';

/** Stage 3: what actions do (rules A1 to A7, L1 to L5). */
export class Act {
  readonly layers: LayerState;
  private readonly codes: CodeCounter;
  private readonly latches: Latches;
  private readonly explain: Explainer | null;
  /** Per subject, the action that it pressed and has not released (rule S13). */
  private readonly pressed: (CompiledAction | null)[];
  private readonly lockedCodes: Uint8Array;
  private readonly lockedLayers: Uint8Array;

  constructor(compiled: Compiled, sink: Sink, explain: Explainer | null) {
    const subjects = compiled.keyIds.length + compiled.chords.length;
    this.layers = new LayerState(compiled.onWhile, explain);
    this.codes = new CodeCounter(compiled.codes, sink);
    this.latches = new Latches(subjects, this.layers, this.codes, explain);
    this.explain = explain;
    this.pressed = Array(subjects).fill(null);
    this.lockedCodes = new Uint8Array(compiled.codes.length);
    this.lockedLayers = new Uint8Array(compiled.layerIds.length);
  }

  press(subject: Subject, action: CompiledAction, now: number): void {
    this.pressed[subject] = action;
    switch (action.kind) {
      case 'emit':
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
      case 'silent':
    }
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
    for (const step of action.onPress) {
      if (step >= 0) this.codes.press(step, now);
      else this.codes.release(~step, now);
    }
    if (usesLatches) this.latches.afterTyping(subject, now);
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
