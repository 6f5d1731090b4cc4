import type { Need } from '../keymap/need.ts';
import type { KeyId, Keymap } from '../keymap/types.ts';
import { chordFaults } from './chord-faults.ts';
import { compareDeeds } from './compare-deeds.ts';
import type { Deed } from './deed.ts';
import { type Diagnosis, distinctFaults, type Fault } from './fault.ts';
import { judged, wrongPlaces } from './given.ts';
import type { Stretch } from './live-typing.ts';
import { settleFaults } from './settle-faults.ts';
import type { Way } from './ways.ts';

/** One attempt at a need, seen through the engine. */
export interface PressedAttempt {
  readonly keymap: Keymap;
  readonly need: Need;
  readonly way: Way;
  /** All that happened since the need was asked for. */
  readonly stretch: Stretch;
  /** What is asked for after it, to tell an early key from a wrong one. */
  readonly next?: Need | undefined;
  /** The keys that typed it before the design changed. */
  readonly oldKeys?: readonly KeyId[];
}

/**
 * What an attempt went wrong by, exactly: chords first, then what was settled as the other of tap and hold, then key,
 * layer and modifiers of each wrong press. What follows from a fault named already is left out.
 */
export function diagnosePresses(attempt: PressedAttempt): Diagnosis {
  const { keymap, way, stretch } = attempt;
  const chords = chordFaults(keymap, way, stretch);
  const settled = settleFaults(keymap, way, stretch);
  const explained = new Set([...chords.keys, ...settled.keys]);
  const places = wrongDeeds(attempt).flatMap(({ deed, early }) => {
    if (early) return [{ fault: 'came-early' } as const];
    if (deed.keys.some((key) => explained.has(key))) return [];
    return placeFaults(attempt, deed).filter((fault) => !follows(fault, settled.faults));
  });
  const faults = distinctFaults([...chords.faults, ...settled.faults, ...places]);
  return { sure: true, faults: faults.length > 0 ? faults : [{ fault: 'unknown' }] };
}

/** The deeds that typed something wrong, or nothing at all; early where they typed what comes next. */
function wrongDeeds({ need, next, stretch }: PressedAttempt) {
  const places = wrongPlaces(
    need,
    stretch.given.map(({ given }) => given),
  );
  const typed = places.flatMap((place) => {
    const { given, deed } = stretch.given[place] ?? { deed: null };
    if (given === undefined || deed === null) return [];
    return [{ deed, early: next !== undefined && judged(next, given) === 'right' }];
  });
  const unbound = stretch.deeds.filter(({ bound }) => !bound).map((deed) => ({ deed, early: false }));
  return [...typed, ...unbound];
}

/** Compared with that deed of the way which it differs from by the fewest faults; of equals with the first. */
function placeFaults(
  { keymap, way, oldKeys }: PressedAttempt,
  deed: Deed & { bound?: boolean },
): readonly Fault[] {
  const [first, ...others] = way.typing.map((meant) => compareDeeds(keymap, meant, deed, oldKeys));
  const nearest = others.reduce((best, each) => (each.length < best.length ? each : best), first ?? []);
  const [key = ''] = deed.keys;
  return deed.bound === false ? [...nearest, { fault: 'nothing-there', key }] : nearest;
}

/** A layer or modifier that is missing because its key came as a tap needs no word of its own. */
function follows(fault: Fault, settled: readonly Fault[]): boolean {
  const isOfHold = fault.fault === 'wrong-layer' || fault.fault === 'modifier-missing';
  return isOfHold && settled.some((other) => other.fault === 'tap-for-hold');
}
