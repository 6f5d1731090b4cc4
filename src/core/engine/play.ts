import type { KeyEvent } from '../base/key-event.ts';
import { fail, ok, type Result } from '../base/result.ts';
import type { HostLayout } from '../host/host-layout.ts';
import type { Keymap } from '../keymap/types.ts';
import { compileKeymap } from './compile.ts';
import type { Compiled } from './compiled.ts';
import { createEngine } from './engine.ts';
import { StreamCheck } from './stream-check.ts';
import type { OutputEvent, RefusedStream, TraceEntry } from './types.ts';

/** What a whole stream comes to, timers run out. */
export interface Played {
  readonly output: OutputEvent[];
  readonly trace: TraceEntry[];
}

function refusalOf(compiled: Compiled, events: readonly KeyEvent[]): RefusedStream | undefined {
  const check = new StreamCheck(compiled);
  for (const [index, event] of events.entries()) {
    const key = check.keyOf(event);
    if (key < 0) return { index, reason: check.reason(event) };
    check.accept(key, event);
  }
  return undefined;
}

/** Like `play`, for one keymap and many streams. */
export function playCompiled(compiled: Compiled, events: readonly KeyEvent[]): Result<Played, RefusedStream> {
  const refused = refusalOf(compiled, events);
  if (refused !== undefined) return fail(refused);
  const output: OutputEvent[] = [];
  const trace: TraceEntry[] = [];
  const engine = createEngine(compiled, {
    output: (t, type, code, lifting) => output.push(lifting ? { t, type, code, lifting } : { t, type, code }),
    trace: (entry) => trace.push(entry),
  });
  for (const event of events) engine.feed(event);
  engine.finish();
  return ok({ output, trace });
}

/** Plays a whole stream from rest and lets the timers run out. A stream with one bad event is refused as a whole (rule I1). */
export function play(
  keymap: Keymap,
  events: readonly KeyEvent[],
  host: HostLayout,
): Result<Played, RefusedStream> {
  return playCompiled(compileKeymap(keymap, host), events);
}
