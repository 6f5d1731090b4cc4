import type { Code } from '../keymap/codes.ts';
import type { CodeNumber } from './compiled.ts';
import type { Sink } from './types.ts';

/** Rule A7: a code that several actions press is pressed at the first and released at the last release. */
export class CodeCounter {
  private readonly codes: readonly Code[];
  private readonly sink: Sink;
  private readonly counts: Int32Array;

  constructor(codes: readonly Code[], sink: Sink) {
    this.codes = codes;
    this.sink = sink;
    this.counts = new Int32Array(codes.length);
  }

  press(code: CodeNumber, now: number): void {
    const count = this.counts[code] ?? 0;
    this.counts[code] = count + 1;
    if (count === 0) this.emit(now, 'press', code);
  }

  release(code: CodeNumber, now: number): void {
    const count = this.counts[code] ?? 0;
    this.counts[code] = count - 1;
    if (count === 1) this.emit(now, 'release', code);
  }

  private emit(now: number, type: 'press' | 'release', number: CodeNumber): void {
    const code = this.codes[number];
    if (code !== undefined) this.sink.output(now, type, code);
  }
}
