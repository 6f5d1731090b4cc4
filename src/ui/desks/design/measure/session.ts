import type { RunCounts } from '../../../../core/needs/counts-runs.ts';
import { clockStepMs, NO_SHARES, observed, pairSharesOf } from '../../../../core/typist/fit-observe.ts';
import type { Measured, MeasuredChord } from '../../../../core/typist/measured.ts';
import { TypingRecorder } from './typing-recorder.ts';

/** What has been recorded since the dialog was opened; nothing of it is kept before it is taken. */
export class Session {
  readonly recorder = new TypingRecorder();
  readonly chords: MeasuredChord[] = [];
  /** When keys of chords went down, to see how fine the clock is. */
  readonly chordTimes: number[] = [];

  get isEmpty(): boolean {
    return this.recorder.count === 0 && this.chords.length === 0;
  }

  /** What was measured, keys and order left behind. `counts` are those of a text of the typist's: what is practised. */
  measured(counts: RunCounts | null): Measured {
    const shareOf = counts === null ? NO_SHARES : pairSharesOf(counts);
    return { ...observed(this.recorder.keys, shareOf), chords: [...this.chords] };
  }

  /** See `clockStepMs`. */
  get clockStepMs(): number {
    const typed = this.recorder.keys.flatMap(({ downMs, upMs }) => [
      downMs,
      ...(upMs === null ? [] : [upMs]),
    ]);
    return clockStepMs([...typed, ...this.chordTimes]);
  }

  /** How much there is, in words. */
  get words(): string {
    const { count } = this.recorder;
    return `${count} ${count === 1 ? 'keystroke' : 'keystrokes'} and ${this.chords.length} ${this.chords.length === 1 ? 'chord' : 'chords'}`;
  }
}
