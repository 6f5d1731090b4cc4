import { parseArgs } from 'node:util';
import type { KeyEvent } from '../../core/base/key-event.ts';
import { fail, type Result } from '../../core/base/result.ts';
import { type Played, play } from '../../core/engine/play.ts';
import type { RefusedStream } from '../../core/engine/types.ts';
import type { HostLayout } from '../../core/host/host-layout.ts';
import { typedText } from '../../core/host/typed.ts';
import type { Keymap } from '../../core/keymap/types.ts';
import { openDesign } from '../open-design.ts';
import { answered, type Outcome, refused } from '../outcome.ts';
import { plainTable, shown } from '../plain-table.ts';
import { readJson } from '../read-text.ts';

/** A million events and more fit in. */
const EVENT_FILE_BYTES = 256 * 1024 * 1024;

/** `play FILE EVENTS.json… [--json] [--host LAYOUT]`: what streams of presses come to on a design. */
export function playCommand(args: readonly string[]): Outcome {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { json: { type: 'boolean', default: false }, host: { type: 'string' } },
  });
  const [file, ...eventFiles] = positionals;
  if (file === undefined || eventFiles.length === 0) {
    return refused('play wants a design and one or more files of events.');
  }
  const design = openDesign(file, values.host);
  if (!design.ok) return refused(design.problem);
  const { keymap, host } = design.value;
  const words = values.json ? playedJson : playedTable;
  const outputs: string[] = [];
  const problems: string[] = [];
  for (const eventFile of eventFiles) {
    const played = playFile(keymap, host, eventFile);
    if (played.ok) outputs.push(words(eventFile, played.value, host));
    else problems.push(played.problem);
  }
  const output = outputs.join(values.json ? '\n' : '\n\n');
  return problems.length === 0 ? answered(output) : { output, problem: problems.join('\n'), exitCode: 2 };
}

function playFile(keymap: Keymap, host: HostLayout, file: string): Result<Played, string> {
  const json = readJson(file, EVENT_FILE_BYTES);
  if (!json.ok) return json;
  const list = eventList(json.value);
  if (list === undefined) return fail(`${file}: expected a list of events { "t", "key", "type" }.`);
  const played = playList(keymap, host, list);
  if (played.ok) return played;
  return fail(`${file}: event ${played.problem.index} is refused: ${played.problem.reason}`);
}

function eventList(json: unknown): readonly unknown[] | undefined {
  if (Array.isArray(json)) return json;
  const inside = json !== null && typeof json === 'object' && 'events' in json ? json.events : undefined;
  return Array.isArray(inside) ? inside : undefined;
}

function isEvent(value: unknown): value is KeyEvent {
  if (value === null || typeof value !== 'object') return false;
  if (!('t' in value && 'key' in value && 'type' in value)) return false;
  return (
    typeof value.t === 'number' &&
    typeof value.key === 'string' &&
    (value.type === 'down' || value.type === 'up')
  );
}

/** An entry that is no event is refused like an event that does not fit (rule I1): the first fault counts. */
function playList(keymap: Keymap, host: HostLayout, list: readonly unknown[]): Result<Played, RefusedStream> {
  const events: KeyEvent[] = [];
  for (const entry of list) {
    if (!isEvent(entry)) break;
    events.push(entry);
  }
  const played = play(keymap, events, host);
  if (!played.ok || events.length === list.length) return played;
  const found = JSON.stringify(list[events.length])?.slice(0, 120);
  return fail({
    index: events.length,
    reason: `found ${found}, expected { "t": number, "key": text, "type": "down" or "up" }.`,
  });
}

function playedJson(_file: string, { output, trace }: Played, host: HostLayout): string {
  return JSON.stringify({ output, text: typedText(output, host), trace });
}

function playedTable(file: string, { output, trace }: Played, host: HostLayout): string {
  const rows = [
    ...trace.map(({ t, what, rule, why }) => ({ t, cells: [what, rule, why], order: 0 })),
    ...output.map(({ t, type, code }) => ({ t, cells: [type, '', code], order: 1 })),
  ].sort((one, other) => one.t - other.t || one.order - other.order);
  const table = plainTable([
    ['ms', 'what', 'rule', 'which or why'],
    ...rows.map(({ t, cells }) => [String(t), ...cells]),
  ]);
  return `${shown(file)}: ${JSON.stringify(typedText(output, host))}\n${table}`;
}
