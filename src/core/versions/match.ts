import { chordsOf } from '../keymap/timing.ts';
import type { Chord, Keymap, Layer } from '../keymap/types.ts';

/** Two states of one thing; null where it is not there. Never null on both sides. */
export interface Pair<Thing> {
  readonly before: Thing | null;
  readonly after: Thing | null;
}

/**
 * The layers of two designs side by side, those of the later one in its order and then those that are gone. The same
 * are those of one id, the two base layers, and of those left over those of one name.
 */
export function matchedLayers(before: Keymap, after: Keymap): readonly Pair<Layer>[] {
  return matched(before.layers, after.layers, [
    (one, other) => one.id === other.id,
    (one, other) => one === before.layers[0] && other === after.layers[0],
    (one, other) => one.name === other.name,
  ]);
}

/** The chords side by side: those of one id, and of those left over those of the same keys. */
export function matchedChords(before: Keymap, after: Keymap): readonly Pair<Chord>[] {
  return matched(chordsOf(before), chordsOf(after), [
    (one, other) => one.id === other.id,
    (one, other) => keysOf(one) === keysOf(other),
  ]);
}

function keysOf({ keys }: Chord): string {
  return keys.toSorted().join(' ');
}

type Same<Thing> = (one: Thing, other: Thing) => boolean;

/** Pairs by the first rule that joins two things that are both still free. */
function matched<Thing>(
  before: readonly Thing[],
  after: readonly Thing[],
  rules: readonly Same<Thing>[],
): readonly Pair<Thing>[] {
  const partner = new Map<Thing, Thing>();
  const free = new Set(before);
  for (const same of rules) {
    for (const other of after) {
      if (partner.has(other)) continue;
      const one = [...free].find((each) => same(each, other));
      if (one === undefined) continue;
      partner.set(other, one);
      free.delete(one);
    }
  }
  return [
    ...after.map((other) => ({ before: partner.get(other) ?? null, after: other })),
    ...[...free].map((one) => ({ before: one, after: null })),
  ];
}
