import type { HostLayout } from '../host/host-layout.ts';
import { actionsOf } from '../keymap/actions-of.ts';
import { CODES } from '../keymap/codes.ts';
import { chordsOf, layersOfChord, timingOf, timingOfChord } from '../keymap/timing.ts';
import type { Action, Binding, BoardKey, Chord, Keymap, LayerId, ShiftedAction } from '../keymap/types.ts';
import { ActionCompiler } from './compile-action.ts';
import type { Compiled, CompiledAction, CompiledBinding, CompiledChord } from './compiled.ts';

/** Compiles an action and what comes in its place under Shift. */
type Lookup = (action: Action, onShift?: ShiftedAction) => CompiledAction;

const NO_CHORDS: readonly CompiledChord[] = [];

function numbersOf(ids: readonly string[]): Map<string, number> {
  return new Map(ids.map((id, index) => [id, index]));
}

function handNumber(key: BoardKey): number {
  if (key.finger === 'thumb') return 0;
  return key.hand === 'left' ? 1 : 2;
}

function compileBinding(keymap: Keymap, binding: Binding, lookup: Lookup): CompiledBinding {
  return {
    tap: binding.tap === undefined ? null : lookup(binding.tap, binding.onShift),
    hold: binding.hold === undefined ? null : lookup(binding.hold),
    ...timingOf(keymap, binding),
  };
}

function bindingsOf(keymap: Keymap, keys: ReadonlyMap<string, number>, lookup: Lookup) {
  const bindingAt: (CompiledBinding | null)[] = Array(keymap.layers.length * keys.size).fill(null);
  const boundOn = new Int32Array(keys.size);
  for (const [layer, { places }] of keymap.layers.entries())
    for (const [id, binding] of Object.entries(places)) {
      const key = keys.get(id);
      if (key === undefined) continue;
      bindingAt[layer * keys.size + key] = compileBinding(keymap, binding, lookup);
      boundOn[key] = (boundOn[key] ?? 0) | (1 << layer);
    }
  return { bindingAt, boundOn };
}

/** A chord that names a key which is not there can never be whole; it keeps its place and is live nowhere. */
function compileChord(
  keymap: Keymap,
  chord: Chord,
  index: number,
  keys: ReadonlyMap<string, number>,
  lookup: Lookup,
): CompiledChord {
  const has = new Uint8Array(keys.size);
  for (const id of chord.keys) has[keys.get(id) ?? keys.size] = 1;
  const size = new Set(chord.keys).size;
  const { action, onShift, hold } = chord;
  return {
    id: chord.id,
    index,
    size,
    downAtRelease: chord.release === 'last-up' ? 0 : size - 1,
    windowMs: chord.windowMs,
    quietBeforeMs: chord.quietBeforeMs ?? 0,
    has,
    binding: {
      tap: lookup(action, onShift),
      hold: hold === undefined ? null : lookup(hold),
      ...timingOfChord(keymap, chord),
    },
  };
}

function chordTable(
  keymap: Keymap,
  keys: ReadonlyMap<string, number>,
  layers: ReadonlyMap<LayerId, number>,
  chords: readonly CompiledChord[],
): readonly (readonly CompiledChord[])[] {
  const lists = new Map<number, CompiledChord[]>();
  for (const [index, chord] of chordsOf(keymap).entries()) {
    const compiled = chords[index];
    if (compiled === undefined || chord.keys.some((id) => !keys.has(id))) continue;
    for (const layerId of layersOfChord(keymap, chord))
      for (const keyId of new Set(chord.keys)) {
        const place = (layers.get(layerId) ?? keymap.layers.length) * keys.size + (keys.get(keyId) ?? 0);
        const list = lists.get(place);
        if (list === undefined) lists.set(place, [compiled]);
        else list.push(compiled);
      }
  }
  return Array.from(
    { length: keymap.layers.length * keys.size },
    (_, place) => lists.get(place) ?? NO_CHORDS,
  );
}

/** A layer that waits for one that does not exist waits for itself: that never switches it on. */
function onWhileOf(keymap: Keymap, layers: ReadonlyMap<LayerId, number>): Int32Array {
  return Int32Array.from(keymap.layers, (layer, own) =>
    (layer.onWhile ?? []).reduce((mask, id) => mask | (1 << (layers.get(id) ?? own)), 0),
  );
}

/** Only then is it worth knowing what an action means to a word. */
function holdsWordShift(keymap: Keymap): boolean {
  return actionsOf(keymap).some(({ action }) => action.do === 'word-shift');
}

/** Turns a keymap into numbers for the engine; characters are typed by the host layout's first route. Costs about a pass over the document. */
export function compileKeymap(keymap: Keymap, host: HostLayout): Compiled {
  const keyIds = keymap.board.keys.map((key) => key.id);
  const layerIds = keymap.layers.map((layer) => layer.id);
  const keys = numbersOf(keyIds);
  const layers = numbersOf(layerIds);
  const actions = new ActionCompiler(layers, host, holdsWordShift(keymap));
  const lookup: Lookup = (action, onShift) => actions.compile(action, onShift);
  const chords = chordsOf(keymap).map((chord, index) => compileChord(keymap, chord, index, keys, lookup));
  return {
    keyIds,
    layerIds,
    keyNumbers: keys,
    handOf: Uint8Array.from(keymap.board.keys, handNumber),
    ...bindingsOf(keymap, keys, lookup),
    chords,
    chordsAt: chordTable(keymap, keys, layers, chords),
    onWhile: onWhileOf(keymap, layers),
    codes: CODES,
    level3: host.level3,
  };
}
