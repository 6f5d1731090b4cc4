import type { KeyEvent } from '../base/key-event.ts';
import { fail, ok, type Result } from '../base/result.ts';
import { compileKeymap } from '../engine/compile.ts';
import { createEngine } from '../engine/engine.ts';
import type { Engine, RefusedStream, TraceEntry } from '../engine/types.ts';
import type { HostLayout } from '../host/host-layout.ts';
import { createTypedReader, type TypedReader } from '../host/typed.ts';
import type { Code } from '../keymap/codes.ts';
import { chordById } from '../keymap/lookup.ts';
import type { KeyId, Keymap } from '../keymap/types.ts';
import type { Decision, Item, Output, Press, PressResult, Run } from './run.ts';

const RESULTS: Partial<Record<TraceEntry['what'], PressResult>> = {
  tap: 'tap',
  hold: 'hold',
  'no-binding': 'nothing',
};

/** Plays presses through a design as they come, and keeps what each of them came to. */
export class Recorder implements Run {
  readonly keymap: Keymap;
  readonly host: HostLayout;
  readonly events: KeyEvent[] = [];
  readonly presses: Press[] = [];
  readonly decisions: Decision[] = [];
  readonly outputs: Output[] = [];
  readonly items: Item[] = [];
  endMs = 0;
  longestMs = 0;
  private readonly engine: Engine;
  private readonly reader: TypedReader;
  /** Per key, its latest press. */
  private readonly latest = new Map<KeyId, number>();
  private cause = -1;
  private readonly causeOf = new Map<Code, number>();

  constructor(keymap: Keymap, host: HostLayout) {
    this.keymap = keymap;
    this.host = host;
    this.reader = createTypedReader(host);
    this.engine = createEngine(compileKeymap(keymap, host), {
      output: (t, type, code, lifting) => this.output(t, type, code, lifting),
      trace: (entry) => this.trace(entry),
    });
  }

  /** Takes one event; a sentence where it cannot be played, and then nothing has changed. */
  feed(event: KeyEvent): string | undefined {
    const at = this.presses.length;
    if (event.type === 'down') this.begin(event);
    const refused = this.engine.feed(event);
    if (refused !== undefined) {
      if (event.type === 'down') this.undo(at, event.key);
      return refused;
    }
    this.events.push(event);
    if (event.type === 'up') this.end(event);
    this.endMs = Math.max(this.endMs, event.t);
    return undefined;
  }

  /** Lets timers run out that are due before t, ms. */
  advanceTo(t: number): void {
    this.engine.advanceTo(t);
  }

  /** Lets all timers run out. */
  finish(): void {
    this.engine.finish();
  }

  private begin({ key, t }: KeyEvent): void {
    const press: Press = { key, down: t, up: null, result: 'undecided', decidedAt: null, chord: null };
    this.before = this.latest.get(key);
    this.latest.set(key, this.presses.push(press) - 1);
  }

  private before: number | undefined;

  /** A refused down was never there. */
  private undo(length: number, key: KeyId): void {
    this.presses.length = length;
    if (this.before === undefined) this.latest.delete(key);
    else this.latest.set(key, this.before);
  }

  private end({ key, t }: KeyEvent): void {
    const press = this.presses[this.latest.get(key) ?? -1];
    if (press === undefined) return;
    press.up = t;
    this.longestMs = Math.max(this.longestMs, t - press.down);
  }

  private trace(entry: TraceEntry): void {
    const presses = this.pressesOf(entry);
    const at = this.decisions.push({ ...entry, presses }) - 1;
    this.endMs = Math.max(this.endMs, entry.t);
    const { since, until } = entry.data ?? {};
    if (since !== undefined) this.longestMs = Math.max(this.longestMs, (until ?? entry.t) - since);
    if (entry.what === 'tap' || entry.what === 'hold') this.cause = at;
    const result = entry.what === 'chord' ? 'chord' : RESULTS[entry.what];
    if (result === undefined || (entry.what !== 'chord' && entry.key === undefined)) return;
    for (const index of presses) {
      const press = this.presses[index];
      if (press === undefined) continue;
      press.result = result;
      press.decidedAt = entry.t;
      press.chord = entry.what === 'chord' ? (entry.chord ?? null) : null;
    }
  }

  /** The presses that an entry is about: those of its key, its chord's keys or the keys that waited. */
  private pressesOf({ what, key, chord, data }: TraceEntry): readonly number[] {
    const since = data?.since;
    if (since === undefined) return this.latestOf(key === undefined ? [] : [key]);
    if (what === 'no-chord') return this.latestOf(data?.keys ?? []);
    if (chord !== undefined) {
      const keys = chordById(this.keymap, chord)?.keys ?? [];
      return this.latestOf(keys).filter((at) => (this.presses[at]?.down ?? 0) >= since);
    }
    return key === undefined ? [] : this.pressSince(key, what === 'waiting' ? undefined : since);
  }

  private latestOf(keys: readonly KeyId[]): readonly number[] {
    return keys.flatMap((key) => this.latest.get(key) ?? []).sort((one, other) => one - other);
  }

  /**
   * A key may have been pressed again by the time that its press is decided, even at the same time: presses of a key are
   * decided in their order.
   */
  private pressSince(key: KeyId, since: number | undefined): readonly number[] {
    const last = this.latest.get(key);
    if (last === undefined || since === undefined) return last === undefined ? [] : [last];
    let found = last;
    for (let at = last; at >= 0; at--) {
      const press = this.presses[at];
      if (press === undefined || press.down < since) break;
      if (press.key === key && press.down === since && press.decidedAt === null) found = at;
    }
    return [found];
  }

  private output(t: number, type: Output['type'], code: Code, lifting: true | undefined): void {
    if (type === 'press') this.causeOf.set(code, this.cause);
    const event = lifting === undefined ? { t, type, code } : { t, type, code, lifting };
    this.outputs.push({ ...event, cause: type === 'press' ? this.cause : -1 });
    this.endMs = Math.max(this.endMs, t);
    this.reader.feed(event);
    const produced = this.reader.produced();
    for (let at = this.items.length; at < produced.length; at++) {
      const item = produced[at];
      if (item !== undefined)
        this.items.push({ t, produced: item, cause: this.causeOf.get(item.code) ?? -1 });
    }
  }
}

/** Plays a whole stream, timers run out; one that cannot be played is refused as a whole (rule I1). */
export function rehearse(
  keymap: Keymap,
  host: HostLayout,
  events: readonly KeyEvent[],
): Result<Run, RefusedStream> {
  const recorder = new Recorder(keymap, host);
  for (const [index, event] of events.entries()) {
    const reason = recorder.feed(event);
    if (reason !== undefined) return fail({ index, reason });
  }
  recorder.finish();
  return ok(recorder);
}
