import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { compileKeymap } from '../../../src/core/engine/compile.ts';
import { createEngine } from '../../../src/core/engine/engine.ts';
import type { TraceEntry } from '../../../src/core/engine/types.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { keymapArbitrary } from '../arbitraries/keymap-arbitrary.ts';
import { streamArbitrary } from '../arbitraries/stream-arbitrary.ts';

const WHAT: ReadonlySet<string> = new Set(['chord', 'tap', 'hold', 'no-binding']);

const played = keymapArbitrary().chain((keymap) => fc.tuple(fc.constant(keymap), streamArbitrary(keymap)));

describe('decisions without words', () => {
  test.prop([played], { numRuns: 300 })('are those of the trace', ([keymap, events]) => {
    const compiled = compileKeymap(keymap, usHost);
    const decided: string[] = [];
    const traced: TraceEntry[] = [];
    const plain = createEngine(compiled, {
      output: () => undefined,
      decided: (what, subject, t) =>
        decided.push(
          `${t} ${what} ${what.startsWith('chord') ? compiled.chords[subject]?.id : compiled.keyIds[subject]}`,
        ),
    });
    const worded = createEngine(compiled, { output: () => undefined, trace: (entry) => traced.push(entry) });
    for (const event of events) {
      plain.feed(event);
      worded.feed(event);
    }
    plain.finish();
    worded.finish();
    const expected = traced
      .filter(({ what }) => WHAT.has(what))
      .map(({ t, what, key, chord }) => {
        const ofFiring = key === undefined && what !== 'chord';
        return `${t} ${ofFiring ? `chord-${what}` : what} ${key ?? chord}`;
      });
    expect(decided).toEqual(expected);
  });
});
