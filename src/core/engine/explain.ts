import { isModifier } from '../keymap/codes.ts';
import {
  type Compiled,
  type CompiledAction,
  type CompiledBinding,
  type CompiledChord,
  chordOf,
  type Subject,
} from './compiled.ts';
import type { LayerCause } from './layer-state.ts';
import type { TraceData, TraceEntry } from './types.ts';
import {
  againReason,
  chordReason,
  holdReason,
  noChordReason,
  offReason,
  quietReason,
  tapReason,
} from './why.ts';

/** Turns what the three stages decide into lines of the trace. Exists only where a trace is wanted. */
export class Explainer {
  /** Whether reasons are wanted, and not decisions alone. */
  readonly inWords: boolean = true;
  private readonly compiled: Compiled;
  private readonly say: (entry: TraceEntry) => void;

  constructor(compiled: Compiled, say: (entry: TraceEntry) => void) {
    this.compiled = compiled;
    this.say = say;
  }

  waiting(key: Subject, rule: string, possible: readonly CompiledChord[], t: number, data: TraceData): void {
    const names = possible.map((chord) => `${chord.id} (${chord.windowMs} ms)`).join(', ');
    const chords = possible.map(({ id }) => id);
    this.say({
      t,
      what: 'waiting',
      rule,
      ...this.who(key),
      why: `may become ${names}`,
      data: { ...data, chords },
    });
  }

  /** since: the chord's first physical down, ms. */
  fired(chord: CompiledChord, rule: string, since: number, spreadMs: number, t: number): void {
    const why = chordReason(rule, chord, spreadMs);
    this.say({ t, what: 'chord', rule, chord: chord.id, why, data: { since, apartMs: spreadMs } });
  }

  /** Keys waited in vain. by: the key that ended it, none for the timer. */
  notFired(
    rule: string,
    by: Subject | undefined,
    t: number,
    data: TraceData & { readonly since: number; readonly keys: readonly string[] },
  ): void {
    const why = noChordReason(rule, data.keys, t - data.since);
    const whole = by === undefined ? data : { ...data, by: this.nameOf(by) };
    this.say({ t, what: 'no-chord', rule, why, data: whole });
  }

  opened(binding: CompiledBinding, key: Subject, due: number, t: number): void {
    const why = `tap or hold: hold after ${binding.holdAfterMs} ms, at ${due}`;
    const data = { since: due - binding.holdAfterMs, until: due };
    this.say({ t, what: 'open', rule: 'S9', ...this.who(key), why, data });
  }

  /** openedAt: the open key's physical down, ms; by: whose item settled it, none for the timer. */
  settled(
    asHold: boolean,
    rule: string,
    key: Subject,
    openedAt: number,
    binding: CompiledBinding,
    by: Subject | undefined,
    t: number,
  ): void {
    const other = by === undefined ? '' : this.nameOf(by);
    const why = asHold
      ? holdReason(rule, binding, other)
      : tapReason(rule, this.nameOf(key), other, openedAt, binding);
    const data = by === undefined ? { since: openedAt } : { since: openedAt, by: other };
    this.say({ t, what: asHold ? 'hold' : 'tap', rule, ...this.who(key), why, data });
  }

  /** since, here and below: the physical down, ms. */
  onlyAction(binding: CompiledBinding, subject: Subject, since: number, t: number): void {
    const what = binding.tap === null ? 'hold' : 'tap';
    const why = `it has only a ${what} action`;
    this.say({ t, what, rule: 'S9', ...this.who(subject), why, data: { since } });
  }

  quietTap(binding: CompiledBinding, key: Subject, since: number, apartMs: number, t: number): void {
    const why = quietReason(apartMs, binding);
    this.say({ t, what: 'tap', rule: 'S10', ...this.who(key), why, data: { since, apartMs } });
  }

  againTap(binding: CompiledBinding, key: Subject, since: number, apartMs: number, t: number): void {
    const why = againReason(apartMs, binding);
    this.say({ t, what: 'tap', rule: 'S11', ...this.who(key), why, data: { since, apartMs } });
  }

  noBinding(subject: Subject, since: number, t: number): void {
    const why = 'no layer that is on has a binding for it';
    this.say({ t, what: 'no-binding', rule: 'S9', ...this.who(subject), why, data: { since } });
  }

  noRoute(action: CompiledAction, subject: Subject, t: number): void {
    for (const char of action.without) {
      const why = `the host layout has no way to type ${char}`;
      this.say({ t, what: 'no-route', rule: 'A2', ...this.who(subject), char, why });
    }
  }

  alone(key: Subject, t: number): void {
    const why = 'past its time with nothing pressed: a hold with the next press, a tap if it comes up first';
    this.say({ t, what: 'alone', rule: 'S14', ...this.who(key), why });
  }

  shifted(subject: Subject, t: number): void {
    this.say({ t, what: 'shifted', rule: 'A8', ...this.who(subject), why: 'Shift is on' });
  }

  repeat(subject: Subject, hasLast: boolean, t: number): void {
    const why = hasLast ? 'what typed last, once more' : 'nothing has been typed yet';
    this.say({ t, what: 'repeat', rule: 'A9', ...this.who(subject), why });
  }

  word(on: boolean, subject: Subject, whyOff: string, t: number): void {
    const why = on ? 'on until something comes that belongs to no word' : whyOff;
    this.say({ t, what: on ? 'word-on' : 'word-off', rule: 'A10', ...this.who(subject), why });
  }

  /** before, on: the sets of layers; kept: those on by holds, latches and locks rather than by `onWhile`. */
  layers(before: number, on: number, kept: number, cause: LayerCause, t: number): void {
    for (const [index, layer] of this.compiled.layerIds.entries()) {
      const bit = 1 << index;
      if (((before ^ on) & bit) === 0) continue;
      const isOn = (on & bit) !== 0;
      const byCause = isOn ? (kept & bit) !== 0 : (this.compiled.onWhile[index] ?? 0) === 0;
      const why = byCause ? (isOn ? cause.on : cause.off) : this.onWhileReason(index, isOn);
      this.say({ t, what: isOn ? 'layer-on' : 'layer-off', rule: byCause ? cause.rule : 'A4', layer, why });
    }
  }

  latch(isLayer: boolean, target: number, key: Subject, isOn: boolean, rule: string, t: number): void {
    const what = isOn ? 'latch-on' : 'latch-off';
    const why = isOn ? 'on until an action that types has used it' : offReason(rule);
    this.say({ t, what, rule, ...this.who(key), ...this.targetOf(isLayer, target), why });
  }

  lock(isLayer: boolean, target: number, key: Subject, isOn: boolean, t: number): void {
    const what = isOn ? 'lock-on' : 'lock-off';
    const why = isOn ? 'on until it is pressed again' : 'pressed again';
    this.say({ t, what, rule: 'A5', ...this.who(key), ...this.targetOf(isLayer, target), why });
  }

  private onWhileReason(layer: number, isOn: boolean): string {
    const needed = this.compiled.onWhile[layer] ?? 0;
    const names = this.compiled.layerIds.filter((_, index) => (needed & (1 << index)) !== 0).join(' and ');
    return isOn ? `${names} are on together` : `${names} are not on together any more`;
  }

  private targetOf(isLayer: boolean, target: number): Pick<TraceEntry, 'layer' | 'code'> {
    const layer = this.compiled.layerIds[target];
    if (isLayer) return layer === undefined ? {} : { layer };
    const code = this.compiled.codes[target];
    return code !== undefined && isModifier(code) ? { code } : {};
  }

  private who(subject: Subject): Pick<TraceEntry, 'key' | 'chord'> {
    const key = this.compiled.keyIds[subject];
    if (key !== undefined) return { key };
    const chord = chordOf(this.compiled, subject);
    return chord === undefined ? {} : { chord: chord.id };
  }

  private nameOf(subject: Subject): string {
    const { key, chord } = this.who(subject);
    return key ?? chord ?? '';
  }
}
