import type { KeyEvent } from '../../core/base/key-event.ts';
import { compileKeymap } from '../../core/engine/compile.ts';
import { bindingUnder, type Compiled } from '../../core/engine/compiled.ts';
import { createEngine } from '../../core/engine/engine.ts';
import type { HostLayout } from '../../core/host/host-layout.ts';
import { usHost } from '../../core/host/us.ts';
import { benchKeymap } from './bench-keymap.ts';
import type { BenchRow } from './bench-row.ts';
import { randomStream } from './engine-stream.ts';

const STREAMS = 100;
const EVENTS_EACH = 10_000;
const ROUNDS = 9;

/** A hundred streams, one after the other in time: 10^6 events in one or 10^4 in each, over the same memory. */
function streams(compiled: Compiled): KeyEvent[][] {
  const list: KeyEvent[][] = [];
  let start = 0;
  for (let seed = 1; seed <= STREAMS; seed++) {
    const events = randomStream(compiled.keyIds, EVENTS_EACH, seed, start);
    start = (events.at(-1)?.t ?? start) + 1000;
    list.push(events);
  }
  return list;
}

/** What was emitted is counted, so that no work can be left out as useless. */
let emitted = 0;
const sink = {
  output: (): void => {
    emitted++;
  },
};

function playInOne(compiled: Compiled, list: readonly (readonly KeyEvent[])[]): void {
  const engine = createEngine(compiled, sink);
  for (const events of list) for (const event of events) engine.feed(event);
  engine.finish();
}

function playEach(compiled: Compiled, list: readonly (readonly KeyEvent[])[]): void {
  for (const events of list) playInOne(compiled, [events]);
}

/** The least that anything could do with an event: find its binding on the base layer. */
function lookUpOnly(compiled: Compiled, list: readonly (readonly KeyEvent[])[]): void {
  for (const events of list)
    for (const event of events) {
      const key = compiled.keyNumbers.get(event.key) ?? -1;
      if (bindingUnder(compiled, 1, key)?.tap) emitted++;
    }
}

function nsPerEvent(run: () => void): number {
  const begin = performance.now();
  run();
  return ((performance.now() - begin) * 1e6) / (STREAMS * EVENTS_EACH);
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}

/** Times of rounds in which every run takes its turn, so that a slow moment of the machine hits all alike; ns per event. */
function rounds(runs: readonly (() => void)[]): readonly (readonly number[])[] {
  for (const run of runs) run();
  const times = runs.map((): number[] => []);
  for (let round = 0; round < ROUNDS; round++)
    for (const [index, run] of runs.entries()) times[index]?.push(nsPerEvent(run));
  return times;
}

/** The engine on 10^6 valid random events, trace off, beside a bare loop over the same events. Takes some seconds. */
export function benchEngine(host: HostLayout = usHost): BenchRow[] {
  const compiled = compileKeymap(benchKeymap(), host);
  const list = streams(compiled);
  const times = rounds([
    () => lookUpOnly(compiled, list),
    () => playEach(compiled, list),
    () => playInOne(compiled, list),
  ]);
  const [bare = 0, each = 0, whole = 0] = times.map(median);
  const quickest = Math.min(...(times[2] ?? []));
  const unit = 'ns/event';
  const versus = 'bare loop';
  const growth = `${(whole / each).toFixed(3)} times the cost at 10^4 (aim: at most 1.1)`;
  return [
    { name: 'bare loop: look up the binding', median: bare, unit },
    { name: 'engine, 10^4 events', median: each, unit, ratio: each / bare, versus },
    {
      name: 'engine, 10^6 events',
      median: whole,
      unit,
      ratio: whole / bare,
      versus,
      note: `aim: 250; quickest round ${quickest.toFixed(0)}; ${growth}; ${emitted} events emitted, trace off`,
    },
  ];
}
