import { CODES, type Code } from '../keymap/codes.ts';
import type { CodeNumber } from './compiled.ts';
import type { Sink } from './types.ts';

const SHIFTS: readonly CodeNumber[] = [CODES.indexOf('ShiftLeft'), CODES.indexOf('ShiftRight')];
/** The codes that take part in a chord of keys that is no word: Control, Alt and Meta, level 3 apart. */
const OTHERS = (['ControlLeft', 'ControlRight', 'AltLeft', 'AltRight', 'MetaLeft', 'MetaRight'] as const).map(
  (code) => ({ code, number: CODES.indexOf(code) }),
);

/**
 * Rule A7: a code that several actions press is pressed at the first and released at the last release. Rule A8: a Shift
 * that is lifted goes on counting, but is up until the next code that no lifted stroke presses.
 */
export class CodeCounter {
  private readonly codes: readonly Code[];
  private readonly sink: Sink;
  private readonly counts: Int32Array;
  /** Which of SHIFTS are lifted, as a mask. */
  private lifted = 0;

  constructor(codes: readonly Code[], sink: Sink) {
    this.codes = codes;
    this.sink = sink;
    this.counts = new Int32Array(codes.length);
  }

  press(code: CodeNumber, now: number): void {
    if (this.lifted !== 0) this.comeBack(now);
    this.pressLifted(code, now);
  }

  /** Presses a code of a lifted stroke: what is lifted stays so. */
  pressLifted(code: CodeNumber, now: number): void {
    const count = this.counts[code] ?? 0;
    this.counts[code] = count + 1;
    if (count === 0) this.emit(now, 'press', code);
  }

  release(code: CodeNumber, now: number): void {
    const count = this.counts[code] ?? 0;
    this.counts[code] = count - 1;
    if (count !== 1) return;
    if (this.lifted !== 0 && this.dropLifted(code)) return;
    this.emit(now, 'release', code);
  }

  /** Whether a Shift counts as pressed, lifted or not. */
  get shiftIsOn(): boolean {
    return SHIFTS.some((code) => (this.counts[code] ?? 0) > 0);
  }

  /** Whether Control, Alt or Meta counts as pressed; the key of level 3 does not count. */
  anyOther(level3: Code | null): boolean {
    return OTHERS.some(({ code, number }) => code !== level3 && (this.counts[number] ?? 0) > 0);
  }

  /** A8: every Shift that is down goes up and goes on counting. */
  lift(now: number): void {
    for (const [bit, code] of SHIFTS.entries()) {
      if ((this.counts[code] ?? 0) === 0 || (this.lifted & (1 << bit)) !== 0) continue;
      this.lifted |= 1 << bit;
      this.emit(now, 'release', code, true);
    }
  }

  /** A8: what is lifted is down again. */
  comeBack(now: number): void {
    const { lifted } = this;
    this.lifted = 0;
    for (const [bit, code] of SHIFTS.entries())
      if ((lifted & (1 << bit)) !== 0) this.emit(now, 'press', code, true);
  }

  /** Whether the code is lifted, and so up already; it is no more. */
  private dropLifted(code: CodeNumber): boolean {
    const bit = SHIFTS.indexOf(code);
    if (bit < 0 || (this.lifted & (1 << bit)) === 0) return false;
    this.lifted &= ~(1 << bit);
    return true;
  }

  private emit(now: number, type: 'press' | 'release', number: CodeNumber, lifting = false): void {
    const code = this.codes[number];
    if (code === undefined) return;
    if (lifting) this.sink.output(now, type, code, true);
    else this.sink.output(now, type, code);
  }
}
