import type { HostLayout } from '../host/host-layout.ts';
import { actionsOf, SLOTS, type StandingAction } from '../keymap/actions-of.ts';
import { CODES, type Code, isModifier } from '../keymap/codes.ts';
import { chordsOf } from '../keymap/timing.ts';
import type { Action, Binding, KeyId, Keymap, Layer, Slot } from '../keymap/types.ts';
import { actOf } from '../routes/act.ts';
import { findRoutes } from '../routes/find-routes.ts';
import type { Route } from '../routes/types.ts';

/** A place's name: "base L22 tap", of a chord "c1 tap". */
export function placeName(at: StandingAction['at']): string {
  return 'chord' in at ? `${at.chord} ${at.side}` : `${at.place.layer} ${at.place.key} ${at.side}`;
}

/** Keys that stand where actions stand, by the name of the place. */
type Markers = ReadonlyMap<string, Code>;

/** Stands wherever no way is asked for at the moment. */
const OTHER: Code = 'F24';

const MARKERS = CODES.filter((code) => code !== OTHER && !isModifier(code));

/**
 * The way to each action of a design, by the name of its place; null where there is none. It is the way to a key
 * that stands in its place and nowhere else. Actions that lead no further are sought together, each with a key of its own in
 * its place; one that turns something on may be on the way to the others, and has a search for itself.
 */
export function waysToAll(keymap: Keymap, host: HostLayout): ReadonlyMap<string, Route | null> {
  const standing = actionsOf(keymap);
  const ways = new Map<string, Route | null>();
  const isEnd = ({ action }: StandingAction) => leadsNoFurther(action, host);
  const ends = standing.filter(isEnd).map(({ at }) => placeName(at));
  const others = new Map(ends.map((name) => [name, OTHER]));
  // With all ends out of the way, any key is free to be a marker.
  const seek = (names: readonly string[]) => {
    const markers = new Map(names.map((name, at) => [name, MARKERS[at] ?? OTHER]));
    const marked = withMarkers(keymap, new Map([...others, ...markers]));
    const needs = [...markers.values()].map((code) => ({ kind: 'key' as const, code }));
    const found = findRoutes(marked, host, needs);
    for (const [at, name] of names.entries()) ways.set(name, found[at]?.route ?? null);
  };
  for (let from = 0; from < ends.length; from += MARKERS.length) {
    seek(ends.slice(from, from + MARKERS.length));
  }
  for (const one of standing) if (!isEnd(one)) seek([placeName(one.at)]);
  return ways;
}

/** Whether no way to another action can lead over this one: it sends strokes or nothing, and turns nothing on or off. */
function leadsNoFurther(action: Action, host: HostLayout): boolean {
  if (action.do === 'layer') return false;
  const act = actOf(action, host, new Map());
  // A character that the computer cannot type uses latches up all the same.
  return act.kind === 'none' || (act.kind === 'type' && act.signs.length > 0);
}

function withMarkers(keymap: Keymap, markers: Markers): Keymap {
  const layers = keymap.layers.map((layer) => withMarkersOn(layer, markers));
  const chords = chordsOf(keymap).map((chord) => {
    const { tap, ...others } = markersAt(markers, (side) => ({ chord: chord.id, side }));
    return { ...chord, ...others, ...(tap && { action: tap }) };
  });
  return { ...keymap, layers, chords };
}

function withMarkersOn(layer: Layer, markers: Markers): Layer {
  const places = Object.entries(layer.places).map(([key, binding]): [KeyId, Binding] => {
    const own = markersAt(markers, (side) => ({ place: { layer: layer.id, key }, side }));
    return [key, { ...binding, ...own }];
  });
  return { ...layer, places: Object.fromEntries(places) };
}

function markersAt(
  markers: Markers,
  at: (side: Slot) => StandingAction['at'],
): Partial<Record<Slot, Action & { do: 'key' }>> {
  const marked = SLOTS.flatMap((side) => {
    const code = markers.get(placeName(at(side)));
    return code === undefined ? [] : [[side, { do: 'key' as const, code }]];
  });
  return Object.fromEntries(marked);
}
