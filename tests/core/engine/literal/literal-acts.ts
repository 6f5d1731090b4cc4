import type { OutputEvent } from '../../../../src/core/engine/types.ts';
import type { HostLayout, HostOutput, Stroke } from '../../../../src/core/host/host-layout.ts';
import { type Code, isModifier, MODIFIERS } from '../../../../src/core/keymap/codes.ts';
import type { Action, Keymap, ShiftedAction } from '../../../../src/core/keymap/types.ts';

interface Latch {
  readonly target: string;
  readonly code: Code | null;
  keyIsUp: boolean;
  /** The press that used it, and whether its own key was up by then. */
  usedBy: object | null;
  usedAfterKeyUp: boolean;
}

/** An action as it is pressed: lifted or as ever (A8). */
interface Manner {
  readonly action: Action;
  readonly lifted: boolean;
}

interface Press {
  readonly action: Action;
  /** Codes to release, in order. */
  codes: Code[];
  latch: Latch | null;
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Stage 3 of the timing rules, to the letter. */
export class LiteralActs {
  readonly output: OutputEvent[] = [];
  private readonly counts = new Map<Code, number>();
  private readonly lifted = new Set<Code>();
  private last: Manner | null = null;
  private wordIsOn = false;
  private readonly presses = new Map<unknown, Press>();
  private readonly held: string[] = [];
  private readonly locked = new Set<string>();
  /** In the order of coming on. */
  private latches: Latch[] = [];
  private readonly keymap: Keymap;
  private readonly host: HostLayout;
  private readonly clock: () => number;

  constructor(keymap: Keymap, host: HostLayout, clock: () => number) {
    this.keymap = keymap;
    this.host = host;
    this.clock = clock;
  }

  isOn(layer: string): boolean {
    const at = this.keymap.layers.findIndex((one) => one.id === layer);
    const onWhile = this.keymap.layers[at]?.onWhile;
    return (
      at === 0 ||
      this.held.includes(layer) ||
      this.locked.has(`layer ${layer}`) ||
      this.latches.some((latch) => latch.target === `layer ${layer}`) ||
      (onWhile?.every((lower) => this.isOn(lower)) ?? false)
    );
  }

  highestLayer(): string {
    return this.keymap.layers.findLast((layer) => this.isOn(layer.id))?.id ?? '';
  }

  /** lifted: it belongs to a lifted stroke, so that what is lifted stays so (A8). */
  private pressCode(code: Code, lifted = false): void {
    if (!lifted) this.comeBack();
    const count = this.counts.get(code) ?? 0;
    this.counts.set(code, count + 1);
    if (count === 0) this.output.push({ t: this.clock(), type: 'press', code });
  }

  private releaseCode(code: Code): void {
    const count = this.counts.get(code) ?? 0;
    this.counts.set(code, count - 1);
    if (count !== 1) return;
    if (this.lifted.delete(code)) return;
    this.output.push({ t: this.clock(), type: 'release', code });
  }

  private isCounted(code: Code): boolean {
    return (this.counts.get(code) ?? 0) > 0;
  }

  /** A8 */
  private lift(): void {
    for (const code of ['ShiftLeft', 'ShiftRight'] as const) {
      if (!this.isCounted(code) || this.lifted.has(code)) continue;
      this.lifted.add(code);
      this.output.push({ t: this.clock(), type: 'release', code, lifting: true });
    }
  }

  /** A8 */
  private comeBack(): void {
    for (const code of ['ShiftLeft', 'ShiftRight'] as const)
      if (this.lifted.delete(code)) this.output.push({ t: this.clock(), type: 'press', code, lifting: true });
  }

  private types(action: Action): boolean {
    return action.do === 'char' || action.do === 'text' || (action.do === 'key' && !isModifier(action.code));
  }

  private turnOff(latches: Latch[]): void {
    for (const latch of latches.toReversed()) {
      this.latches = this.latches.filter((other) => other !== latch);
      if (latch.code !== null) this.releaseCode(latch.code);
    }
  }

  press(source: unknown, tap: Action, onShift: ShiftedAction | undefined): void {
    let manner: Manner = { action: tap, lifted: false };
    if (onShift !== undefined) {
      this.stepOne();
      if (this.isCounted('ShiftLeft') || this.isCounted('ShiftRight'))
        manner = { action: onShift, lifted: true };
    }
    if (manner.action.do === 'repeat') {
      if (this.last === null) return;
      manner = this.last; // A9
    }
    const press: Press = { action: manner.action, codes: [], latch: null };
    this.presses.set(source, press);
    if (!this.types(manner.action)) {
      this.perform(press, manner);
      return;
    }
    this.stepOne(); // L2 (1)
    if (this.hasStroke(manner.action)) this.last = manner;
    this.perform(press, manner); // (2)
    for (const latch of this.latches) {
      if (latch.usedBy !== null) continue;
      latch.usedBy = press; // (3)
      latch.usedAfterKeyUp = latch.keyIsUp;
    }
    this.turnOff(this.latches.filter((l) => l.code === null && l.usedBy !== null && l.keyIsUp)); // (4)
  }

  private stepOne(): void {
    this.turnOff(this.latches.filter((l) => l.code !== null && l.usedBy !== null && l.keyIsUp));
  }

  private hasStroke(action: Action): boolean {
    return this.allStrokes(action).length > 0;
  }

  private allStrokes(action: Action): Stroke[] {
    if (action.do === 'key') return [{ code: action.code, with: action.with ?? [] }];
    if (action.do === 'char') return [...this.strokesOf(action.char)];
    if (action.do !== 'text') return [];
    return [...graphemes.segment(action.text)].flatMap(({ segment }) => [
      ...this.strokesOf(segment.normalize('NFC')),
    ]);
  }

  /** A10: what the host reads at a stroke's own modifiers, Shift added or not; undefined where it has others. */
  private reads(stroke: Stroke, addShift: boolean): HostOutput | undefined {
    const isShift = (code: Code) => code === 'ShiftLeft' || code === 'ShiftRight';
    if (stroke.with.some((code) => !isShift(code) && code !== this.host.level3)) return undefined;
    const shift = addShift || stroke.with.some(isShift);
    const level3 = stroke.with.some((code) => code === this.host.level3);
    return this.host.outputOf(stroke.code, { shift, level3, caps: false });
  }

  private goesOn(strokes: readonly Stroke[]): boolean {
    const others = MODIFIERS.filter((code) => !code.startsWith('Shift') && code !== this.host.level3);
    if (others.some((code) => this.isCounted(code))) return false;
    return strokes.every((stroke) => {
      if (stroke.code === 'Backspace') return stroke.with.length === 0;
      const output = this.reads(stroke, false);
      return (
        output?.kind === 'dead' || (output?.kind === 'char' && !/[^\p{L}\p{M}\p{Nd}_'’-]/u.test(output.char))
      );
    });
  }

  private hasCapital(stroke: Stroke): boolean {
    const [small, large] = [this.reads(stroke, false), this.reads(stroke, true)];
    if (small?.kind !== 'char' || large?.kind !== 'char') return false;
    return /^\p{L}/u.test(small.char) && large.char !== small.char && large.char === small.char.toUpperCase();
  }

  private stroke(stroke: Stroke, lifted = false): Code[] {
    if (lifted) {
      if (stroke.with.includes('ShiftLeft') || stroke.with.includes('ShiftRight')) this.comeBack();
      else this.lift();
    }
    for (const modifier of stroke.with) this.pressCode(modifier, lifted);
    this.pressCode(stroke.code, lifted);
    return [stroke.code, ...stroke.with.toReversed()];
  }

  /** Strokes one after another; `holdsLast`: the last stays down, and what is to be released later comes back. */
  private type(strokes: readonly Stroke[], holdsLast: boolean, lifted: boolean): Code[] {
    const inWord = this.wordIsOn && this.goesOn(strokes);
    if (!inWord) this.wordIsOn = false; // A10
    let held: Code[] = [];
    strokes.forEach((stroke, at) => {
      const capital = inWord && !lifted && this.hasCapital(stroke);
      if (capital) this.pressCode('ShiftLeft');
      const codes = this.stroke(stroke, lifted);
      if (holdsLast && at === strokes.length - 1) held = codes;
      else for (const code of codes) this.releaseCode(code);
      if (capital) this.releaseCode('ShiftLeft');
    });
    return held;
  }

  private strokesOf(char: string): readonly Stroke[] {
    return this.host.routesOf(char)[0] ?? [];
  }

  private perform(press: Press, { action, lifted }: Manner): void {
    switch (action.do) {
      case 'key':
        if (isModifier(action.code))
          press.codes = this.stroke({ code: action.code, with: action.with ?? [] }); // A1
        else press.codes = this.type(this.allStrokes(action), true, lifted);
        return;
      case 'char':
        press.codes = this.type(this.allStrokes(action), true, lifted); // A2
        return;
      case 'text':
        this.type(this.allStrokes(action), false, lifted); // A3
        return;
      case 'word-shift':
        this.wordIsOn = !this.wordIsOn;
        return;
      case 'layer':
        if (action.mode === 'while-held')
          this.held.push(action.layer); // A4
        else if (action.mode === 'lock') this.toggleLock(`layer ${action.layer}`, null);
        else this.pressLatch(press, `layer ${action.layer}`, null);
        return;
      case 'modifier':
        if (action.mode === 'lock') this.toggleLock(`modifier ${action.code}`, action.code);
        else this.pressLatch(press, `modifier ${action.code}`, action.code);
        return;
      default:
        return; // A6
    }
  }

  /** A5 */
  private toggleLock(target: string, code: Code | null): void {
    if (this.locked.delete(target)) {
      if (code !== null) this.releaseCode(code);
    } else {
      this.locked.add(target);
      if (code !== null) this.pressCode(code);
    }
  }

  /** L1 */
  private pressLatch(press: Press, target: string, code: Code | null): void {
    const unused = this.latches.find((latch) => latch.target === target && latch.usedBy === null);
    if (unused !== undefined) {
      this.turnOff([unused]);
      return;
    }
    const latch: Latch = { target, code, keyIsUp: false, usedBy: null, usedAfterKeyUp: false };
    press.latch = latch;
    this.latches.push(latch);
    if (code !== null) this.pressCode(code);
  }

  release(source: unknown): void {
    const press = this.presses.get(source);
    if (press === undefined) return;
    this.presses.delete(source);
    for (const code of press.codes) this.releaseCode(code);
    if (press.action.do === 'layer' && press.action.mode === 'while-held') {
      this.held.splice(this.held.indexOf(press.action.layer), 1);
    }
    const latch = press.latch;
    if (latch !== null && this.latches.includes(latch)) {
      latch.keyIsUp = true;
      if (latch.usedBy !== null) this.turnOff([latch]); // L3
    }
    this.turnOff(
      this.latches.filter((other) => other.code !== null && other.usedAfterKeyUp && other.usedBy === press), // L4
    );
  }
}
