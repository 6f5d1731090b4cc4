import { chordsOf } from '../core/keymap/timing.ts';
import type { ChordId, KeyId, Keymap, LayerId } from '../core/keymap/types.ts';
import type { BenchState, Carried, Lit, OpenCard } from './bench-state.ts';

/** What is looked at, apart from the keymap itself. */
export type View = Pick<
  BenchState,
  'frontLayer' | 'focusedKey' | 'selectedKeys' | 'openCard' | 'carried' | 'lit'
>;

interface Present {
  readonly keys: ReadonlySet<KeyId>;
  readonly layers: ReadonlySet<LayerId>;
  readonly chords: ReadonlySet<ChordId>;
}

/**
 * The view with all that is gone from the keymap dropped. A front layer that is gone gives way to the one that
 * took its place in the stack, else to the one below.
 */
export function pruneView(view: View, before: Keymap, after: Keymap): View {
  const present: Present = {
    keys: new Set(after.board.keys.map((key) => key.id)),
    layers: new Set(after.layers.map((layer) => layer.id)),
    chords: new Set(chordsOf(after).map((chord) => chord.id)),
  };
  const { focusedKey, selectedKeys } = view;
  return {
    frontLayer: frontOf(view.frontLayer, before, after),
    focusedKey: focusedKey !== null && present.keys.has(focusedKey) ? focusedKey : null,
    selectedKeys: kept(selectedKeys, present.keys),
    openCard: cardOf(view.openCard, present),
    carried: carriedOf(view.carried, after, present),
    lit: litOf(view.lit, present),
  };
}

/** The very same list where all of it is still there, so that nothing that shows it is drawn again. */
function kept<Id>(ids: readonly Id[], there: ReadonlySet<Id>): readonly Id[] {
  return ids.every((id) => there.has(id)) ? ids : ids.filter((id) => there.has(id));
}

function frontOf(front: LayerId, before: Keymap, after: Keymap): LayerId {
  if (after.layers.some((layer) => layer.id === front)) return front;
  const was = Math.max(
    0,
    before.layers.findIndex((layer) => layer.id === front),
  );
  return (after.layers[was] ?? after.layers.at(-1))?.id ?? front;
}

function cardOf(card: OpenCard | null, present: Present): OpenCard | null {
  if (card === null) return null;
  if (card.card === 'key') return present.keys.has(card.key) ? card : null;
  if (card.card === 'chord') return present.chords.has(card.chord) ? card : null;
  const { draft } = card;
  if (!draft.keys.every((key) => present.keys.has(key))) return null;
  if (draft.layers === undefined || draft.layers.every((layer) => present.layers.has(layer))) return card;
  const { layers, ...everywhere } = draft;
  const left = kept(layers, present.layers);
  return { card: 'new-chord', draft: left.length === 0 ? everywhere : { ...everywhere, layers: left } };
}

function carriedOf(carried: Carried | null, keymap: Keymap, present: Present): Carried | null {
  if (carried === null) return null;
  if (carried.carry === 'action') {
    const gone = carried.action.do === 'layer' && !present.layers.has(carried.action.layer);
    return gone ? null : carried;
  }
  const layer = keymap.layers.find((candidate) => candidate.id === carried.from.layer);
  return layer !== undefined && Object.hasOwn(layer.places, carried.from.key) ? carried : null;
}

function litOf(lit: Lit | null, present: Present): Lit | null {
  if (lit === null) return null;
  const pruned: Lit = {
    why: lit.why,
    keys: kept(lit.keys, present.keys),
    chords: kept(lit.chords, present.chords),
    layers: kept(lit.layers, present.layers),
    order: lit.order.filter((step) => present.keys.has(step.key)),
  };
  const empty = [pruned.keys, pruned.chords, pruned.layers, pruned.order].every((list) => list.length === 0);
  return empty ? null : pruned;
}
