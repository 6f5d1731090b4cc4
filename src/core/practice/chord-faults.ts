import type { KeyEvent } from '../base/key-event.ts';
import { chordById } from '../keymap/lookup.ts';
import { layersOfChord } from '../keymap/timing.ts';
import type { Chord, KeyId, Keymap } from '../keymap/types.ts';
import { highestOn } from './deed.ts';
import type { Fault } from './fault.ts';
import type { Stretch } from './live-typing.ts';
import type { Way } from './ways.ts';

/** Faults, and the keys whose presses they explain. */
export interface Explained {
  readonly faults: readonly Fault[];
  readonly keys: readonly KeyId[];
}

/** Chords that were meant and did not fire, and those that fired and were not meant. */
export function chordFaults(keymap: Keymap, way: Way, stretch: Stretch): Explained {
  const meant = chordsOfDeeds(keymap, way.deeds);
  const fired = chordsOfDeeds(keymap, stretch.deeds);
  const missed = meant
    .filter((chord) => !fired.includes(chord))
    .map((chord) => missedChord(keymap, chord, way, stretch));
  const mistaken = fired
    .filter((chord) => !meant.includes(chord))
    .map((chord) => mistakenChord(chord, stretch.presses));
  const all = [...missed, ...mistaken].filter((each) => each !== null);
  return { faults: all.flatMap(({ faults }) => faults), keys: all.flatMap(({ keys }) => keys) };
}

function chordsOfDeeds(keymap: Keymap, deeds: Way['deeds']): readonly Chord[] {
  const ids = new Set(deeds.flatMap(({ chord }) => (chord === null ? [] : [chord])));
  return [...ids].map((id) => chordById(keymap, id)).filter((chord) => chord !== undefined);
}

/** The last press of each of the chord's keys, in order of time. */
function lastDowns(chord: Chord, presses: readonly KeyEvent[]): readonly KeyEvent[] {
  return chord.keys
    .map((key) => presses.findLast((event) => event.key === key && event.type === 'down'))
    .filter((event) => event !== undefined)
    .sort((one, other) => one.t - other.t);
}

const apartOf = (downs: readonly KeyEvent[]) => (downs.at(-1)?.t ?? 0) - (downs[0]?.t ?? 0);

function missedChord(keymap: Keymap, chord: Chord, way: Way, stretch: Stretch): Explained | null {
  const downs = lastDowns(chord, stretch.presses);
  if (downs.length === 0) return null;
  if (downs.length < chord.keys.length) {
    const missing = chord.keys.filter((key) => downs.every((event) => event.key !== key));
    return { faults: [{ fault: 'chord-incomplete', chord: chord.id, missing }], keys: chord.keys };
  }
  const { windowMs } = chord;
  const apartMs = apartOf(downs);
  const layer = apartMs > windowMs ? null : layerInTheWay(keymap, chord, way, stretch);
  if (layer !== null) return { faults: [layer], keys: chord.keys };
  const broken = apartMs > windowMs ? null : whatBroke(chord, downs, stretch.presses);
  return {
    faults: [{ fault: 'chord-missed', chord: chord.id, apartMs, windowMs, broken }],
    keys: chord.keys,
  };
}

/** The chord's keys were tapped while a layer was on on which it is not live. */
function layerInTheWay(keymap: Keymap, chord: Chord, way: Way, stretch: Stretch): Fault | null {
  const tapped = stretch.deeds.find(({ keys }) => keys.some((key) => chord.keys.includes(key)));
  const meant = way.deeds.find((deed) => deed.chord === chord.id);
  if (tapped === undefined || meant === undefined) return null;
  const on = highestOn(keymap, tapped.layers);
  if (layersOfChord(keymap, chord).includes(on)) return null;
  return { fault: 'wrong-layer', on, needed: highestOn(keymap, meant.layers), rightKey: true };
}

function whatBroke(
  chord: Chord,
  downs: readonly KeyEvent[],
  presses: readonly KeyEvent[],
): 'other-key' | 'too-short' | 'not-quiet' {
  const from = presses.indexOf(downs[0] ?? presses[0] ?? { t: 0, key: '', type: 'down' });
  const to = presses.indexOf(downs.at(-1) ?? { t: 0, key: '', type: 'down' });
  const between = presses.slice(from + 1, Math.max(from + 1, to));
  if (between.some(({ key, type }) => type === 'down' && !chord.keys.includes(key))) return 'other-key';
  if (between.some(({ key, type }) => type === 'up' && chord.keys.includes(key))) return 'too-short';
  return (chord.quietBeforeMs ?? 0) > 0 ? 'not-quiet' : 'too-short';
}

function mistakenChord(chord: Chord, presses: readonly KeyEvent[]): Explained {
  const apartMs = apartOf(lastDowns(chord, presses));
  const { id, windowMs } = chord;
  return { faults: [{ fault: 'chord-by-mistake', chord: id, apartMs, windowMs }], keys: chord.keys };
}
