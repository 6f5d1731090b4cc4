import fc from 'fast-check';
import type { ChordChange, Edit, NoteChange, TimingChange } from '../../../src/core/keymap/edit.ts';
import type {
  Binding,
  Chord,
  DiaryNote,
  Keymap,
  Layer,
  Place,
  ShiftedAction,
} from '../../../src/core/keymap/types.ts';
import { ALL_ACTION_KINDS, actionArbitrary, CHARS } from './keymap-actions.ts';
import { boardArbitrary, durationArbitrary, timingArbitrary } from './keymap-arbitrary.ts';

/** Names that mostly exist, and one that does not. */
function oneOf(names: readonly string[], stranger: string): fc.Arbitrary<string> {
  return fc.oneof(
    { weight: 19, arbitrary: fc.constantFrom(...names, names[0] ?? stranger) },
    fc.constant(stranger),
  );
}

const fieldsAway: fc.Arbitrary<TimingChange> = fc.record(
  { holdAfterMs: fc.constant(null), holdBy: fc.constant(null), sameHandTaps: fc.constant(null) },
  { requiredKeys: [] },
);

const timingChange: fc.Arbitrary<TimingChange> = fc
  .tuple(timingArbitrary, fieldsAway)
  .map(([set, away]) => ({ ...set, ...away }));

function partsOf(keymap: Keymap) {
  const layers = keymap.layers.map(({ id }) => id);
  const key = oneOf(
    keymap.board.keys.map(({ id }) => id),
    'stranger',
  );
  const layer = oneOf(layers, 'nowhere');
  const place: fc.Arbitrary<Place> = fc.record({ layer, key });
  // Layer actions may name the base, a layer that is not there, or one that is about to be added.
  const action = actionArbitrary({
    kinds: ALL_ACTION_KINDS,
    layers: [...layers, ...layers, 'nowhere', 'added'],
    chars: [...CHARS, 'e\u0301', 'ab'],
  });
  const onShift: fc.Arbitrary<ShiftedAction> = fc.constantFrom<ShiftedAction[]>(
    { do: 'nothing' },
    { do: 'char', char: ';' },
    { do: 'key', code: 'Delete' },
    { do: 'key', code: 'ShiftLeft' },
  );
  const binding: fc.Arbitrary<Binding> = fc
    .tuple(fc.record({ tap: action, onShift, hold: action }, { requiredKeys: [] }), timingArbitrary)
    .map(([sides, timing]) => ({ ...sides, ...timing }));
  return { key, layer, place, action, onShift, binding };
}

type Parts = ReturnType<typeof partsOf>;

function bindingEdits({ place, action, onShift, binding, layer, key }: Parts): fc.Arbitrary<Edit>[] {
  const side = fc.constantFrom('tap' as const, 'hold' as const);
  const taps = fc.dictionary(key, action, { maxKeys: 4 });
  return [
    fc.record({ edit: fc.constant('bind' as const), place, side, action }),
    fc.record({
      edit: fc.constant('set-on-shift' as const),
      place,
      action: fc.option<ShiftedAction, null>(onShift, { nil: null }),
    }),
    fc.record({ edit: fc.constant('unbind' as const), place, side }, { requiredKeys: ['edit', 'place'] }),
    fc.record({ edit: fc.constant('set-binding' as const), place, binding }),
    fc.record({ edit: fc.constant('move-binding' as const), from: place, to: place }),
    fc.record({ edit: fc.constant('swap-bindings' as const), one: place, other: place }),
    fc.record({ edit: fc.constant('set-binding-timing' as const), place, timing: timingChange }),
    fc.record({ edit: fc.constant('set-timing' as const), timing: timingChange }),
    fc.record({ edit: fc.constant('fill-layer' as const), layer, taps }),
  ];
}

function layerEdits(keymap: Keymap, { layer, key, binding }: Parts): fc.Arbitrary<Edit>[] {
  const lowest = keymap.layers.slice(0, 2).map(({ id }) => id);
  const onWhile = fc.oneof(fc.constant(lowest), fc.array(layer, { maxLength: 3 }));
  const added: fc.Arbitrary<Layer> = fc.record(
    {
      id: fc.oneof({ weight: 4, arbitrary: fc.constant('added') }, layer),
      name: fc.oneof({ weight: 9, arbitrary: fc.constant('Added') }, fc.constant('')),
      places: fc.dictionary(key, binding, { maxKeys: 2 }),
      onWhile,
    },
    { requiredKeys: ['id', 'name', 'places'] },
  );
  return [
    fc.record({ edit: fc.constant('add-layer' as const), layer: added }),
    fc.record({ edit: fc.constant('rename-layer' as const), layer, name: fc.constantFrom('New', 'a\nb') }),
    fc.record({ edit: fc.constant('delete-layer' as const), layer }),
    fc.record({ edit: fc.constant('move-layer' as const), layer, to: fc.integer({ min: -1, max: 4 }) }),
    fc.record({
      edit: fc.constant('duplicate-layer' as const),
      layer,
      id: fc.oneof({ weight: 4, arbitrary: fc.constant('added') }, layer),
      name: fc.constantFrom('Copy', ''),
    }),
    fc.record({
      edit: fc.constant('set-on-while' as const),
      layer,
      onWhile: fc.option(onWhile, { nil: null, freq: 2 }),
    }),
  ];
}

function chordEdits(keymap: Keymap, { key, layer, action, onShift }: Parts): fc.Arbitrary<Edit>[] {
  const id = oneOf(keymap.chords?.map((chord) => chord.id) ?? [], 'c9');
  const fields = {
    keys: fc.oneof(
      { weight: 5, arbitrary: fc.uniqueArray(key, { minLength: 2, maxLength: 4 }) },
      { weight: 1, arbitrary: fc.array(key, { minLength: 1, maxLength: 6 }) },
    ),
    windowMs: fc.oneof({ weight: 9, arbitrary: durationArbitrary }, fc.constant(-1)),
    action,
  };
  const layers = fc.uniqueArray(layer, { maxLength: 2 });
  const chord: fc.Arbitrary<Chord> = fc.record(
    { id: fc.oneof(fc.constant('new'), id), ...fields, layers },
    { requiredKeys: ['id', 'keys', 'windowMs', 'action'] },
  );
  const to: fc.Arbitrary<ChordChange> = fc.record(
    {
      ...fields,
      name: fc.option(fc.constant('Named')),
      layers: fc.option(layers),
      quietBeforeMs: fc.option(durationArbitrary),
      release: fc.option(fc.constantFrom('first-up' as const, 'last-up' as const)),
      onShift: fc.option(onShift),
      hold: fc.option(action),
      holdAfterMs: fc.option(durationArbitrary),
      holdBy: fc.option(fc.constant('tap-inside' as const)),
      tapIfAlone: fc.option(fc.boolean()),
    },
    { requiredKeys: [] },
  );
  return [
    fc.record({ edit: fc.constant('add-chord' as const), chord }),
    fc.record({ edit: fc.constant('change-chord' as const), chord: id, to }),
    fc.record({ edit: fc.constant('delete-chord' as const), chord: id }),
  ];
}

function diaryEdits(keymap: Keymap, { key, layer }: Parts): fc.Arbitrary<Edit>[] {
  const id = oneOf(keymap.diary?.map((note) => note.id) ?? [], 'n9');
  const text = fc.constantFrom('too far', 'b\nc', 'comes too early');
  const about = {
    keys: fc.oneof(
      { weight: 9, arbitrary: fc.uniqueArray(key, { minLength: 1, maxLength: 3 }) },
      fc.array(key),
    ),
    layer,
    chord: oneOf(keymap.chords?.map((chord) => chord.id) ?? [], 'c9'),
  };
  const note: fc.Arbitrary<DiaryNote> = fc.record(
    {
      id: fc.oneof(fc.constant('new'), id),
      text,
      ...about,
      writtenAt: fc.constantFrom('2026-05-04T18:30:00Z', '2026-05-04T18:30:00Z', 'yesterday'),
      state: fc.constant('9f86d081'),
      tickedOff: fc.boolean(),
    },
    { requiredKeys: ['id', 'text', 'writtenAt', 'state', 'tickedOff'] },
  );
  const to: fc.Arbitrary<NoteChange> = fc.record(
    { text, keys: fc.option(about.keys), layer: fc.option(layer), chord: fc.option(about.chord) },
    { requiredKeys: [] },
  );
  return [
    fc.record({ edit: fc.constant('add-diary-note' as const), note }),
    fc.record({ edit: fc.constant('change-diary-note' as const), note: id, to }),
    fc.record({ edit: fc.constant('tick-diary-note' as const), note: id, tickedOff: fc.boolean() }),
    fc.record({ edit: fc.constant('delete-diary-note' as const), note: id }),
  ];
}

/** Another board; keys stay by their ids, or become others: each of the board's one of the new ones, or now and then a stranger. */
function setBoard(keymap: Keymap): fc.Arbitrary<Edit> {
  const from = keymap.board.keys.map(({ id }) => id);
  return boardArbitrary(1, 8).chain((board) => {
    const ids = board.keys.map(({ id }) => id);
    const became = fc
      .tuple(fc.shuffledSubarray(from), fc.shuffledSubarray(ids), fc.nat(9))
      .map(([some, others, odd]) => {
        const pairs = some.slice(0, others.length).map((id, at): [string, string] => [id, others[at] ?? id]);
        return Object.fromEntries(odd === 0 ? [...pairs, ['stranger', ids[0] ?? '']] : pairs);
      });
    return fc.record(
      { edit: fc.constant('set-board' as const), board: fc.constant(board), became },
      { requiredKeys: ['edit', 'board'] },
    );
  });
}

function designEdits(keymap: Keymap, { key }: Parts): fc.Arbitrary<Edit>[] {
  const need = fc.constantFrom('a', 'key:Enter', 'key:Nothing');
  const needs = fc.record({
    lists: fc.constant(['ascii']),
    own: fc.array(need, { maxLength: 2 }),
    waived: fc.array(fc.record({ need, why: fc.constant('never') }), { maxLength: 1 }),
  });
  const host = fc.record({
    system: fc.constant('linux' as const),
    layout: fc.constantFrom('us', 'no such name!'),
    variant: fc.constant(''),
  });
  return [
    fc.record({
      edit: fc.constant('rename-design' as const),
      name: fc.constantFrom('New', '', 'n'.repeat(81)),
    }),
    fc.record({ edit: fc.constant('set-notes' as const), notes: fc.constantFrom('', 'some') }),
    fc.record({ edit: fc.constant('set-hosts' as const), hosts: fc.array(host, { maxLength: 2 }) }),
    fc.record({ edit: fc.constant('set-needs' as const), needs }),
    setBoard(keymap),
    fc.record({ edit: fc.constant('delete-key' as const), key }),
    fc.record({
      edit: fc.constant('replace-design' as const),
      title: fc.constant('Restore'),
      keymap: fc.constantFrom(keymap, { ...keymap, name: 'Restored' }, { ...keymap, layers: [] }),
    }),
  ];
}

/**
 * Random edits of a keymap: every kind, most of them possible, some that name what does not exist or break a rule
 * of the format.
 */
export function editArbitrary(keymap: Keymap): fc.Arbitrary<Edit> {
  const parts = partsOf(keymap);
  const single = fc.oneof(
    ...bindingEdits(parts),
    ...layerEdits(keymap, parts),
    ...chordEdits(keymap, parts),
    ...designEdits(keymap, parts),
    ...diaryEdits(keymap, parts),
  );
  const several: fc.Arbitrary<Edit> = fc.record({
    edit: fc.constant('several' as const),
    title: fc.constant('Some things'),
    edits: fc.array(single, { minLength: 2, maxLength: 3 }),
  });
  return fc.oneof({ weight: 9, arbitrary: single }, { weight: 1, arbitrary: several });
}
