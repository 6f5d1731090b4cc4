import type { Compiled, CompiledBinding, CompiledChord, Subject } from './compiled.ts';
import { Explainer } from './explain.ts';
import type { Sink } from './types.ts';

/** Hands on what was decided about keys and chords, and no words. */
export class Decisions extends Explainer {
  override readonly inWords = false;
  private readonly keys: number;
  private readonly chords: number;
  private readonly decided: NonNullable<Sink['decided']>;

  constructor(compiled: Compiled, decided: NonNullable<Sink['decided']>) {
    super(compiled, () => undefined);
    this.keys = compiled.keyIds.length;
    this.chords = compiled.chords.length;
    this.decided = decided;
  }

  override fired(chord: CompiledChord, _rule: string, _since: number, _spreadMs: number, t: number): void {
    this.decided('chord', chord.index, t);
  }

  override settled(
    asHold: boolean,
    _rule: string,
    key: Subject,
    _openedAt: number,
    _binding: CompiledBinding,
    _by: Subject | undefined,
    t: number,
  ): void {
    this.ofKey(asHold ? 'hold' : 'tap', key, t);
  }

  override onlyAction(binding: CompiledBinding, subject: Subject, _since: number, t: number): void {
    this.ofKey(binding.tap === null ? 'hold' : 'tap', subject, t);
  }

  override quietTap(
    _binding: CompiledBinding,
    key: Subject,
    _since: number,
    _apartMs: number,
    t: number,
  ): void {
    this.ofKey('tap', key, t);
  }

  override againTap(
    _binding: CompiledBinding,
    key: Subject,
    _since: number,
    _apartMs: number,
    t: number,
  ): void {
    this.ofKey('tap', key, t);
  }

  override noBinding(subject: Subject, _since: number, t: number): void {
    this.ofKey('no-binding', subject, t);
  }

  override opened(): void {}
  override alone(): void {}
  override shifted(): void {}
  override repeat(): void {}
  override noRoute(): void {}
  override word(): void {}
  override layers(): void {}
  override latch(): void {}
  override lock(): void {}

  /** A chord has several numbers for firings that overlap; they are all its own. */
  private ofKey(what: 'tap' | 'hold' | 'no-binding', subject: Subject, t: number): void {
    if (subject < this.keys) this.decided(what, subject, t);
    else if (what !== 'no-binding') this.decided(`chord-${what}`, (subject - this.keys) % this.chords, t);
  }
}
