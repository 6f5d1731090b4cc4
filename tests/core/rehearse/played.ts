import { usHost } from '../../../src/core/host/us.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { namesOf } from '../../../src/core/rehearse/key-words.ts';
import { rehearse } from '../../../src/core/rehearse/recorder.ts';
import type { Run } from '../../../src/core/rehearse/run.ts';
import { both, chord, design, key } from '../engine/design.ts';
import { eventsIn } from '../engine/notation.ts';

/** Letters on their own keys; F is Shift when held; D, R and T make a chord of three, R and T one of two. */
export const sample: Keymap = design({
  base: {
    ...Object.fromEntries([...'ASDGQWERTHJKLYUIOPN'].map((id) => [id, key(id)])),
    F: both(key('F'), key('ShiftLeft'), { holdBy: 'time-only', holdAfterMs: 200 }),
    '1': key('Space'),
    '2': { do: 'layer', layer: 'digits', mode: 'while-held' },
    '3': key('Backspace'),
  },
  layers: { digits: { J: key('1'), K: key('2') } },
  chords: [
    { ...chord('RT', 45, key('Tab')), name: 'Tab' },
    { ...chord('JKL', 45, key('Escape')), name: 'Escape' },
  ],
});

/** A stream in the notation of the timing rules, played; fails loudly where it is refused. */
export function played(stream: string, keymap: Keymap = sample): Run {
  const run = rehearse(keymap, usHost, eventsIn(stream));
  if (!run.ok) throw new Error(`event ${run.problem.index}: ${run.problem.reason}`);
  return run.value;
}

/** The names of a run's design. */
export const namesIn = (run: Run) => namesOf(run.keymap, run.host);
