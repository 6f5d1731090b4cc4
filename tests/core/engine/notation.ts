import type { KeyEvent } from '../../../src/core/base/key-event.ts';
import { play } from '../../../src/core/engine/play.ts';
import type { OutputEvent, TraceEntry } from '../../../src/core/engine/types.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { tinyHost } from './tiny-host.ts';

/** Reads "F↓0 D↓31.5 F↑80": a key, down or up, ms. */
export function eventsIn(stream: string): KeyEvent[] {
  return stream
    .split(' ')
    .filter((word) => word !== '')
    .map((word) => {
      const [, key, arrow, t] = /^(.+)([↓↑])(.+)$/.exec(word) ?? [];
      if (key === undefined || t === undefined) throw new Error(`cannot read ${word}`);
      return { t: Number(t), key, type: arrow === '↓' ? 'down' : 'up' };
    });
}

/** Writes output the same way; KeyA is A, Digit1 is 1. */
export function written(output: readonly OutputEvent[]): string {
  return output
    .map(({ t, type, code }) => `${code.replace(/^(Key|Digit)/, '')}${type === 'press' ? '↓' : '↑'}${t}`)
    .join(' ');
}

function entryWords(entry: TraceEntry): string {
  const about = entry.layer ?? entry.code ?? entry.char ?? entry.chord ?? entry.key ?? '';
  return `${entry.rule} ${entry.what} ${about}@${entry.t}`;
}

function played(keymap: Keymap, stream: string) {
  const result = play(keymap, eventsIn(stream), tinyHost);
  if (!result.ok) throw new Error(`event ${result.problem.index}: ${result.problem.reason}`);
  return result.value;
}

/** A player of one design: `play("F↓0 F↑80")` gives the output as text. */
export function playerOf(keymap: Keymap): (stream: string) => string {
  return (stream) => written(played(keymap, stream).output);
}

/** A player that gives the trace: "S3 tap F@80", rule, what, about whom, when; only what is asked for. */
export function tracerOf(keymap: Keymap, ...wanted: TraceEntry['what'][]): (stream: string) => string[] {
  return (stream) =>
    played(keymap, stream)
      .trace.filter((entry) => wanted.length === 0 || wanted.includes(entry.what))
      .map(entryWords);
}
