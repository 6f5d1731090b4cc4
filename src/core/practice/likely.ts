import type { HostLayout } from '../host/host-layout.ts';
import { modifierName } from '../host/produces-exactly.ts';
import type { Code } from '../keymap/codes.ts';
import { bindingOn } from '../keymap/lookup.ts';
import type { ModifierName, Need } from '../keymap/need.ts';
import { chordsOf, layersOfChord, timingOf } from '../keymap/timing.ts';
import type { Action, KeyId, Keymap } from '../keymap/types.ts';
import { compareDeeds } from './compare-deeds.ts';
import type { Deed } from './deed.ts';
import { type Diagnosis, distinctFaults, type Fault } from './fault.ts';
import { type Given, judged, wrongPlaces } from './given.ts';
import type { Way } from './ways.ts';

/** One attempt of which only the results arrived, as from a real board. */
export interface ResultAttempt {
  readonly keymap: Keymap;
  readonly host: HostLayout;
  readonly need: Need;
  readonly way: Way;
  /** All that was given since the need was asked for, in order. */
  readonly given: readonly Given[];
  readonly next?: Need | undefined;
  readonly oldKeys?: readonly KeyId[];
}

/**
 * What an attempt probably went wrong by. Each result is led back to the places of the design that give it, and of these
 * the one counts that differs from what was meant by the fewest faults; of equals the first in the document's order.
 */
export function diagnoseResults(attempt: ResultAttempt): Diagnosis {
  const { need, next, given } = attempt;
  const wrong = wrongPlaces(need, given).flatMap((place) => given[place] ?? []);
  const sources = wrong.map((each) => sourcesOf(attempt.keymap, attempt.host, each));
  const chords = likelyChords(attempt, sources);
  const taps = likelyTaps(attempt, sources);
  const explained = new Set([...chords.keys, ...taps.keys]);
  const places = wrong.flatMap((each, at) => {
    if (next !== undefined && judged(next, each) === 'right') return [{ fault: 'came-early' } as const];
    const own = sources[at] ?? [];
    if (own.some(({ keys }) => keys.some((key) => explained.has(key)))) return [];
    return nearest(attempt, own).filter(
      ({ fault }) => taps.keys.length === 0 || (fault !== 'wrong-layer' && fault !== 'modifier-missing'),
    );
  });
  const faults = distinctFaults([...chords.faults, ...taps.faults, ...places]);
  return { sure: false, faults: faults.length > 0 ? faults : [{ fault: 'unknown' }] };
}

/** The places of a design that give this, as deeds: with the layers their place needs and the modifiers left to be held. */
function sourcesOf(keymap: Keymap, host: HostLayout, given: Given): readonly Deed[] {
  const base = keymap.layers[0]?.id ?? '';
  const deeds: Deed[] = [];
  const offer = (action: Action | undefined, deed: Omit<Deed, 'modifiers'>, shift: readonly Code[] = []) => {
    const held = action === undefined ? null : heldBeside(host, action, given);
    if (held !== null) deeds.push({ ...deed, modifiers: [...shift, ...held] });
  };
  for (const { id, places } of keymap.layers)
    for (const [key, { tap, hold, onShift }] of Object.entries(places)) {
      const place = { keys: [key], chord: null, layers: [...new Set([base, id])] };
      offer(tap, { ...place, side: 'tap' });
      offer(onShift, { ...place, side: 'tap' }, ['ShiftLeft']);
      offer(hold, { ...place, side: 'hold' });
    }
  for (const chord of chordsOf(keymap))
    for (const layer of layersOfChord(keymap, chord)) {
      const place = { keys: chord.keys, chord: chord.id, layers: [base, layer] };
      offer(chord.action, { ...place, side: 'tap' });
      offer(chord.onShift, { ...place, side: 'tap' }, ['ShiftLeft']);
      offer(chord.hold, { ...place, side: 'hold' });
    }
  return deeds;
}

const HELD: Readonly<Record<ModifierName, Code>> = {
  Control: 'ControlLeft',
  Shift: 'ShiftLeft',
  Alt: 'AltLeft',
  Meta: 'MetaLeft',
};

/** The modifiers that must be held beside an action for it to give this; null where it never does. */
function heldBeside(host: HostLayout, action: Action, given: Given): readonly Code[] | null {
  const stroke = strokeOf(host, action);
  if (stroke === undefined || stroke.code !== given.code) return null;
  const own = new Set(stroke.with.map(modifierName));
  if ([...own].some((name) => name !== undefined && !given.modifiers.includes(name))) return null;
  return given.modifiers.filter((name) => !own.has(name)).map((name) => HELD[name]);
}

function strokeOf(host: HostLayout, action: Action): { code: Code; with: readonly Code[] } | undefined {
  if (action.do === 'key') return { code: action.code, with: action.with ?? [] };
  return action.do === 'char' ? host.routesOf(action.char)[0]?.at(-1) : undefined;
}

function nearest({ keymap, way, oldKeys }: ResultAttempt, sources: readonly Deed[]): readonly Fault[] {
  let best: readonly Fault[] | null = null;
  for (const source of sources)
    for (const meant of way.typing) {
      const faults = compareDeeds(keymap, meant, source, oldKeys);
      if (best === null || weightOf(faults) < weightOf(best)) best = faults;
    }
  return best ?? [];
}

/** Fewer faults first; of one fault each, a layer or modifier is likelier than a key, and a key with a reason than any other. */
function weightOf(faults: readonly Fault[]): number {
  return faults.reduce(
    (sum, { fault }) => sum + 10 + (fault === 'other-key' ? 5 : fault === 'wrong-layer' ? 0 : 1),
    0,
  );
}

interface Likely {
  readonly faults: readonly Fault[];
  readonly keys: readonly KeyId[];
}

/** Two or more of a meant chord's keys came by themselves; how far apart they were does not arrive. */
function likelyChords({ keymap, way }: ResultAttempt, sources: readonly (readonly Deed[])[]): Likely {
  const meant = chordsOf(keymap).filter(({ id }) => way.deeds.some((deed) => deed.chord === id));
  const missed = meant.flatMap((chord) => {
    const came = chord.keys.filter((key) =>
      sources.some((own) => own.some((deed) => deed.chord === null && deed.keys.includes(key))),
    );
    return came.length < 2 ? [] : [{ chord, missing: chord.keys.filter((key) => !came.includes(key)) }];
  });
  const faults = missed.map(({ chord, missing }): Fault => {
    const { id, windowMs } = chord;
    return missing.length > 0
      ? { fault: 'chord-incomplete', chord: id, missing }
      : { fault: 'chord-missed', chord: id, apartMs: null, windowMs, broken: null };
  });
  return { faults, keys: missed.flatMap(({ chord }) => chord.keys) };
}

/** A key that was to be held gave its tap. */
function likelyTaps({ keymap, way }: ResultAttempt, sources: readonly (readonly Deed[])[]): Likely {
  const holds = way.deeds.filter((deed) => deed.side === 'hold' && deed.chord === null);
  const keys = holds
    .map(({ keys: [key = ''] }) => key)
    .filter((key) =>
      sources.some((own) =>
        own.some((deed) => deed.side === 'tap' && deed.keys.includes(key) && deed.chord === null),
      ),
    );
  const faults = keys.map((key): Fault => {
    const binding = keymap.layers
      .map((layer) => bindingOn(layer, key))
      .find((each) => each?.hold !== undefined);
    const { holdAfterMs } = timingOf(keymap, binding);
    return { fault: 'tap-for-hold', key, heldMs: null, holdAfterMs, rule: null };
  });
  return { faults, keys };
}
