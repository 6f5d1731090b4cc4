import { chordsOf, layersOfChord, timingOf, timingOfChord } from '../keymap/timing.ts';
import type { Chord, ChordId, KeyId, Keymap, LayerId } from '../keymap/types.ts';
import { chordHoldShare } from './chord-holds.ts';
import { type Cause, type ChordToWatch, chordMisfires } from './chord-misfires.ts';
import { chordMissShare } from './chord-misses.ts';
import { type Waiting, waitOf } from './delay.ts';
import { type HoldTiming, holdMisfires, holdMissShare } from './hold-misfires.ts';
import type { Person } from './person.ts';
import type { PressRuns } from './press-runs.ts';
import { type Situation, situationOf } from './situation.ts';

/** How often a chord comes unasked, and how often it is asked and does not come. */
export interface ChordAccidents {
  readonly id: ChordId;
  /** Null for a chord of five keys: only a simulation can say. */
  readonly misfiresPer1000Words: number | null;
  readonly missesPer1000Uses: number;
  /** Of those that come, how many come as the chord's hold though its tap was meant; null without a hold. */
  readonly holdsPer1000Uses: number | null;
  /** The runs of presses that do it, the worst first; an empty run stands for slips. */
  readonly causes: readonly Cause[];
}

/** The same for a hold/tap key: a tap that came as a hold, a hold that came as a tap. */
export interface HoldAccidents {
  readonly key: KeyId;
  readonly layer: LayerId;
  readonly misfiresPer1000Words: number;
  readonly missesPer1000Uses: number;
  readonly causes: readonly Cause[];
}

/** How long a key that takes part in a chord or has a hold waits before its tap appears. */
export interface DelayOfKey extends Waiting {
  readonly key: KeyId;
  readonly layer: LayerId;
  /** Presses of it in 1,000 words. */
  readonly per1000Words: number;
}

/** All accidents of a design, in the document's order. */
export interface Accidents {
  readonly chords: readonly ChordAccidents[];
  readonly holds: readonly HoldAccidents[];
  readonly delay: readonly DelayOfKey[];
}

const MOST_CAUSES = 12;

/**
 * The closed form: accidents out of the counts of the text on this design. `runs` may come from an earlier state of
 * the design as long as its routes and bindings are the same: timing and windows are read from `keymap`.
 */
export function estimateAccidents(keymap: Keymap, runs: PressRuns, person: Person): Accidents {
  const situation = situationOf(runs, person);
  const watched = watchedChords(keymap, runs);
  return {
    chords: chordsOf(keymap).map((chord, at) => chordAccidents(situation, keymap, chord, watched, at)),
    holds: holdPlaces(keymap).map((place) => holdAccidents(situation, place)),
    delay: delays(situation, keymap, watched),
  };
}

/** The chords of a design by numbers, in the document's order. */
export function watchedChords(keymap: Keymap, runs: PressRuns): readonly ChordToWatch[] {
  return chordsOf(keymap).map((chord) => watchedChord(keymap, runs, chord));
}

/** A chord by numbers; it need not be in the design. */
export function watchedChord(keymap: Keymap, { compiled }: PressRuns, chord: Chord): ChordToWatch {
  return {
    keys: chord.keys.map((key) => compiled.keyNumbers.get(key) ?? -1),
    windowMs: chord.windowMs,
    quietBeforeMs: chord.quietBeforeMs ?? 0,
    layers: layersOfChord(keymap, chord).reduce((mask, id) => mask | (1 << compiled.layerIds.indexOf(id)), 0),
  };
}

function chordAccidents(
  situation: Situation,
  keymap: Keymap,
  whole: Chord,
  watched: readonly ChordToWatch[],
  at: number,
): ChordAccidents {
  const { id, hold, release } = whole;
  const chord = watched[at];
  if (chord === undefined)
    return { id, misfiresPer1000Words: 0, missesPer1000Uses: 1000, holdsPer1000Uses: null, causes: [] };
  const others = watched.filter((_, index) => index !== at);
  const causes = chordMisfires(situation, chord, others);
  return {
    id,
    misfiresPer1000Words: causes === null ? null : total(causes),
    missesPer1000Uses: 1000 * chordMissShare(situation, chord, watched),
    holdsPer1000Uses:
      hold === undefined
        ? null
        : 1000 *
          chordHoldShare(situation, {
            ...chord,
            lastUp: release === 'last-up',
            timing: timingOfChord(keymap, whole),
          }),
    causes: worst(causes ?? []),
  };
}

/** A hold/tap key on a layer, with the timing to look at: its own, or one that is being tried. */
export interface HoldPlace {
  readonly key: KeyId;
  readonly layer: LayerId;
  readonly layerNumber: number;
  readonly timing: HoldTiming;
}

/** The hold/tap keys of a design with the timing in force, in the document's order. */
export function holdPlaces(keymap: Keymap): readonly HoldPlace[] {
  return keymap.layers.flatMap((layer, layerNumber) =>
    Object.entries(layer.places).flatMap(([key, binding]) =>
      binding.tap === undefined || binding.hold === undefined
        ? []
        : { key, layer: layer.id, layerNumber, timing: timingOf(keymap, binding) },
    ),
  );
}

/** The accidents of one hold/tap key; they hang on its own timing alone. */
export function holdAccidents(
  situation: Situation,
  { key, layer, layerNumber, timing }: HoldPlace,
): HoldAccidents {
  const { runs } = situation;
  const number = runs.compiled.keyNumbers.get(key) ?? -1;
  const causes = runs.presses.flatMap((press, at) =>
    press.keys[0] === number && press.place === layerNumber && press.both !== null && !press.asHold
      ? holdMisfires(situation, at, timing)
      : [],
  );
  return {
    key,
    layer,
    misfiresPer1000Words: total(causes),
    missesPer1000Uses: 1000 * holdMissShare(situation, number, timing),
    causes: worst(causes),
  };
}

function delays(
  situation: Situation,
  keymap: Keymap,
  watched: readonly ChordToWatch[],
): readonly DelayOfKey[] {
  return situation.runs.presses.flatMap((_, at) => delayOfPress(situation, keymap, watched, at) ?? []);
}

/** How long one press of the text waits on a design with these chords; null where it does not, or is no tap. */
export function delayOfPress(
  situation: Situation,
  keymap: Keymap,
  watched: readonly ChordToWatch[],
  at: number,
): DelayOfKey | null {
  const { runs, kinds } = situation;
  const press = runs.presses[at];
  if (press === undefined || press.chord >= 0 || press.asHold || press.held) return null;
  const key = runs.compiled.keyIds[press.keys[0] ?? -1];
  const layer = keymap.layers[press.place];
  const binding = key === undefined ? undefined : layer?.places[key];
  if (key === undefined || layer === undefined || binding === undefined) return null;
  const waiting = waitOf(situation, at, watched, press.both === null ? null : timingOf(keymap, binding));
  return waiting === null ? null : { key, layer: layer.id, per1000Words: kinds.per1000[at] ?? 0, ...waiting };
}

function total(causes: readonly Cause[]): number {
  return causes.reduce((sum, { per1000Words }) => sum + per1000Words, 0);
}

/** The worst first; of equals in the order of the text's presses. */
function worst(causes: readonly Cause[]): readonly Cause[] {
  return causes.toSorted((one, other) => other.per1000Words - one.per1000Words).slice(0, MOST_CAUSES);
}
