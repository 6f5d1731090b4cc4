import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { KeyEvent } from '../../../src/core/base/key-event.ts';
import { compileKeymap } from '../../../src/core/engine/compile.ts';
import { createEngine } from '../../../src/core/engine/engine.ts';
import { playCompiled } from '../../../src/core/engine/play.ts';
import type { Engine, OutputEvent, TraceEntry } from '../../../src/core/engine/types.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { inQuarters, playableArbitrary } from '../arbitraries/stream-arbitrary.ts';
import { both, design, key } from './design.ts';
import { eventsIn, written } from './notation.ts';
import { tinyHost } from './tiny-host.ts';

const cases = playableArbitrary({ chars: ['a', 'A', 'é', 'ñ', 'ß'] });
const RUNS = { numRuns: 1500 };

function batch(keymap: Keymap, events: readonly KeyEvent[]) {
  const played = playCompiled(compileKeymap(keymap, tinyHost), events);
  if (!played.ok) throw new Error(played.problem.reason);
  return played.value;
}

function recorder(keymap: Keymap): { engine: Engine; output: OutputEvent[]; trace: TraceEntry[] } {
  const output: OutputEvent[] = [];
  const trace: TraceEntry[] = [];
  const engine = createEngine(compileKeymap(keymap, tinyHost), {
    output: (t, type, code) => output.push({ t, type, code }),
    trace: (entry) => trace.push(entry),
  });
  return { engine, output, trace };
}

test('one event at a time, with the clock moved on in between, is the same as all at once', () => {
  // Each event may be preceded by up to three advances to somewhere between the event before it and it.
  const advances = fc.array(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 3 }), {
    minLength: 1,
  });
  const law = fc.property(cases, advances, ({ keymap, events }, parts) => {
    const { engine, output, trace } = recorder(keymap);
    let from = events[0]?.t ?? 0;
    for (const [index, event] of events.entries()) {
      const shares = parts[index % parts.length] ?? [];
      for (const share of shares.toSorted((a, b) => a - b))
        engine.advanceTo(Math.min(event.t, from + share * (event.t - from)));
      expect(engine.feed(event)).toBeUndefined();
      from = event.t;
    }
    engine.finish();
    expect({ output, trace }).toEqual(batch(keymap, events));
  });
  fc.assert(law, RUNS);
});

test('advancing far ahead is the same as finishing', () => {
  const law = fc.property(cases, ({ keymap, events }) => {
    const { engine, output, trace } = recorder(keymap);
    for (const event of events) engine.feed(event);
    engine.advanceTo((events.at(-1)?.t ?? 0) + 100_000);
    expect({ output, trace }).toEqual(batch(keymap, events));
  });
  fc.assert(law, RUNS);
});

test('without a trace the output is the same', () => {
  const law = fc.property(cases, ({ keymap, events }) => {
    const output: OutputEvent[] = [];
    const engine = createEngine(compileKeymap(keymap, tinyHost), {
      output: (t, type, code) => output.push({ t, type, code }),
    });
    for (const event of events) engine.feed(event);
    engine.finish();
    expect(output).toEqual(batch(keymap, events).output);
  });
  fc.assert(law, RUNS);
});

test('a shift of all times by a constant changes only times, by that constant', () => {
  const quarters = playableArbitrary({ chars: ['a', 'é', 'ß'] }, 40, inQuarters);
  const shift = fc.integer({ min: -4_000_000, max: 4_000_000 }).map((count) => count / 4);
  const law = fc.property(quarters, shift, ({ keymap, events }, by) => {
    const moved = events.map((event) => ({ ...event, t: event.t + by }));
    const there = batch(keymap, moved);
    const here = batch(keymap, events);
    expect(there.output).toEqual(here.output.map((event) => ({ ...event, t: event.t + by })));
    expect(there.trace.map(({ t, what, rule }) => ({ t: t - by, what, rule }))).toEqual(
      here.trace.map(({ t, what, rule }) => ({ t, what, rule })),
    );
  });
  fc.assert(law, RUNS);
});

test('refused events in between change nothing', () => {
  const law = fc.property(cases, fc.array(fc.nat(3), { minLength: 1 }), ({ keymap, events }, kinds) => {
    const { engine, output, trace } = recorder(keymap);
    for (const [index, event] of events.entries()) {
      expect(engine.feed(event)).toBeUndefined();
      const bad = badAfter(event, kinds[index % kinds.length] ?? 0);
      expect(engine.feed(bad)).toEqual(expect.any(String));
    }
    engine.finish();
    expect({ output, trace }).toEqual(batch(keymap, events));
  });
  fc.assert(law, { numRuns: 500 });
});

function badAfter(event: KeyEvent, kind: number): KeyEvent {
  if (kind === 0) return event;
  if (kind === 1) return { ...event, t: event.t - 1 };
  return kind === 2 ? { ...event, t: NaN } : { ...event, key: 'nowhere' };
}

const homeRow = design({ base: { F: both(key('F'), key('ShiftLeft')), J: key('J') } });

test('I4 advancing to T leaves a timer that is due at T to an event at T', () => {
  const { engine, output } = recorder(homeRow);
  for (const event of eventsIn('F↓0')) engine.feed(event);
  engine.advanceTo(200);
  expect(written(output)).toBe('');
  for (const event of eventsIn('F↑200')) engine.feed(event);
  expect(written(output)).toBe('F↓200 F↑200');
});

test('I4 advancing past T handles it', () => {
  const { engine, output } = recorder(homeRow);
  for (const event of eventsIn('F↓0')) engine.feed(event);
  engine.advanceTo(200.25);
  expect(written(output)).toBe('ShiftLeft↓200');
});

test('an event before the time that the clock was moved on to is refused', () => {
  const { engine } = recorder(homeRow);
  engine.advanceTo(100);
  expect(eventsIn('J↓99.75').map((event) => engine.feed(event))).toEqual([
    'The time 99.75 lies before 100; times must not decrease.',
  ]);
  expect(eventsIn('J↓100').map((event) => engine.feed(event))).toEqual([undefined]);
});

test('after finishing it plays on, not before the last timer that ran out', () => {
  const { engine, output } = recorder(homeRow);
  for (const event of eventsIn('F↓0')) engine.feed(event);
  engine.finish();
  expect(eventsIn('F↑199 F↑200').map((event) => engine.feed(event) === undefined)).toEqual([false, true]);
  expect(written(output)).toBe('ShiftLeft↓200 ShiftLeft↑200');
});
