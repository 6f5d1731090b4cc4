import type {
  Action,
  Binding,
  Board,
  Chord,
  DiaryNote,
  Host,
  Keymap,
  Layer,
  MadeFrom,
  Needs,
} from './types.ts';

/** What is to be printed; an object as a Map, which keeps the order even of names like "1". */
type Tree = string | number | boolean | null | readonly Tree[] | ReadonlyMap<string, Tree>;

type Field = readonly [name: string, value: Tree | undefined];

/** As long as a line may grow before what is on it is put on lines of its own. */
const LINE_LENGTH = 140;

const SCHEMA = 'neutral-keymap.schema.json';

/**
 * Writes a keymap as JSON for people and for comparing: the fields in a fixed order, the bindings in the order of
 * the board's keys, small things on one line, a line break at the end. `$schema` names the published schema.
 * Reading it gives an equal keymap again (with that `$schema`).
 */
export function writeKeymap(keymap: Keymap): string {
  return `${print(documentTree(keymap), '', 0)}\n`;
}

function tree(...fields: readonly Field[]): ReadonlyMap<string, Tree> {
  const present = fields.flatMap(([name, value]): [string, Tree][] =>
    value === undefined ? [] : [[name, value]],
  );
  return new Map(present);
}

/** The named fields of a plain object, in that order. */
function pick<Name extends string>(
  from: { readonly [Key in Name]?: Tree | undefined },
  ...names: readonly Name[]
): Field[] {
  return names.map((name) => [name, from[name]]);
}

function documentTree(keymap: Keymap): Tree {
  const order = keymap.board.keys.map(({ id }) => id);
  return tree(
    ['$schema', SCHEMA],
    ...pick(keymap, 'format', 'version', 'name', 'notes'),
    ['board', boardTree(keymap.board)],
    ['hosts', keymap.hosts.map(hostTree)],
    ['timing', keymap.timing && tree(...timingFields(keymap.timing))],
    ['needs', keymap.needs && needsTree(keymap.needs)],
    ['layers', keymap.layers.map((layer) => layerTree(layer, order))],
    ['chords', keymap.chords?.map(chordTree)],
    ['diary', keymap.diary?.map(noteTree)],
  );
}

function boardTree(board: Board): Tree {
  const keys = board.keys.map((key) =>
    tree(...pick(key, 'id', 'x', 'y', 'rotation', 'width', 'height', 'hand', 'finger', 'home')),
  );
  return tree(
    ['name', board.name],
    ['madeFrom', board.madeFrom && madeFromTree(board.madeFrom)],
    ['keys', keys],
  );
}

function madeFromTree(from: MadeFrom): Tree {
  const { left } = from;
  return tree(
    ['columns', columnsTree(from)],
    ...pick(from, 'pitchXMm', 'pitchYMm', 'capGapMm'),
    ['thumb', thumbTree(from)],
    ...pick(from, 'gapMm', 'turnDeg'),
    [
      'left',
      left &&
        tree(['columns', columnsTree(left)], ['thumb', thumbTree(left)], ...pick(left, 'turnDeg', 'downMm')),
    ],
  );
}

function columnsTree({ columns }: Pick<MadeFrom, 'columns'>): Tree {
  return columns.map((column) => tree(...pick(column, 'finger', 'keys', 'homeRow', 'staggerMm', 'splayDeg')));
}

function thumbTree({ thumb }: Pick<MadeFrom, 'thumb'>): Tree {
  return tree(...pick(thumb, 'keys', 'radiusMm', 'inwardsMm', 'downMm', 'turnDeg', 'stepDeg'));
}

function hostTree(host: Host): Tree {
  const corrections = host.corrections?.map((one) => tree(...pick(one, 'code', 'level', 'gives')));
  return tree(...pick(host, 'system', 'layout', 'variant'), ['corrections', corrections]);
}

function timingFields(from: NonNullable<Keymap['timing']>): Field[] {
  return pick(from, 'holdAfterMs', 'holdBy', 'quietBeforeMs', 'againWithinMs', 'sameHandTaps', 'tapIfAlone');
}

function needsTree(needs: Needs): Tree {
  const waived = needs.waived.map((one) => tree(...pick(one, 'need', 'why')));
  return tree(...pick(needs, 'lists', 'own'), ['waived', waived]);
}

/** Bindings in the order of the board; those of keys that it does not have (in a keymap made in memory) after them. */
function layerTree(layer: Layer, order: readonly string[]): Tree {
  const known = order.filter((key) => Object.hasOwn(layer.places, key));
  const names = new Set([...known, ...Object.keys(layer.places)]);
  const places = [...names].map((key): Field => {
    const binding = layer.places[key];
    return [key, binding && bindingTree(binding)];
  });
  return tree(...pick(layer, 'id', 'name', 'onWhile'), ['places', tree(...places)]);
}

function bindingTree(binding: Binding): Tree {
  const { tap, onShift, hold } = binding;
  return tree(
    ['tap', tap && actionTree(tap)],
    ['onShift', onShift && actionTree(onShift)],
    ['hold', hold && actionTree(hold)],
    ...timingFields(binding),
  );
}

function chordTree(chord: Chord): Tree {
  const { action, onShift, hold } = chord;
  return tree(
    ...pick(chord, 'id', 'name', 'keys', 'windowMs', 'layers', 'quietBeforeMs', 'release'),
    ['action', actionTree(action)],
    ['onShift', onShift && actionTree(onShift)],
    ['hold', hold && actionTree(hold)],
    ...pick(chord, 'holdAfterMs', 'holdBy', 'againWithinMs', 'tapIfAlone'),
  );
}

function noteTree(note: DiaryNote): Tree {
  return tree(...pick(note, 'id', 'text', 'keys', 'layer', 'chord', 'writtenAt', 'state', 'tickedOff'));
}

function actionTree(action: Action): Tree {
  switch (action.do) {
    case 'key':
      return tree(...pick(action, 'do', 'code', 'with'));
    case 'char':
      return tree(...pick(action, 'do', 'char'));
    case 'text':
      return tree(...pick(action, 'do', 'text'));
    case 'layer':
      return tree(...pick(action, 'do', 'layer', 'mode'));
    case 'modifier':
      return tree(...pick(action, 'do', 'code', 'mode'));
    case 'nothing':
    case 'repeat':
    case 'word-shift':
      return tree(...pick(action, 'do'));
    case 'board':
      return tree(...pick(action, 'do', 'label'));
  }
}

/** `room`: what already stands on the line and after it. */
function print(value: Tree, indent: string, room: number): string {
  const line = onOneLine(value);
  if (indent.length + room + line.length <= LINE_LENGTH || !isBranch(value)) return line;
  const inner = `${indent}  `;
  if (value instanceof Map) {
    const fields = [...value].map(([name, field]) => {
      const label = `${JSON.stringify(name)}: `;
      return `${inner}${label}${print(field, inner, label.length + 1)}`;
    });
    return `{\n${fields.join(',\n')}\n${indent}}`;
  }
  const items = [...value.values()].map((item) => `${inner}${print(item, inner, 1)}`);
  return `[\n${items.join(',\n')}\n${indent}]`;
}

function isBranch(value: Tree): value is readonly Tree[] | ReadonlyMap<string, Tree> {
  return typeof value === 'object' && value !== null;
}

function onOneLine(value: Tree): string {
  if (!isBranch(value)) return JSON.stringify(value);
  if (value instanceof Map) {
    const fields = [...value].map(([name, field]) => `${JSON.stringify(name)}: ${onOneLine(field)}`);
    return fields.length === 0 ? '{}' : `{ ${fields.join(', ')} }`;
  }
  return `[${[...value.values()].map(onOneLine).join(', ')}]`;
}
