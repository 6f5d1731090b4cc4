import { keyName } from '../board/key-name.ts';
import { layerWords } from '../keymap/action-words.ts';
import type { Binding, Chord, Host, Keymap } from '../keymap/types.ts';
import { briefly, type Told } from './change-words.ts';
import { chordKeysWords } from './chord-words.ts';
import type { Conflict } from './merge.ts';
import type { Part, PartValues } from './parts.ts';

/** A conflict in words: where it is, and what each of the two made of it. */
export interface ConflictWords {
  readonly where: string;
  readonly mine: string;
  readonly theirs: string;
}

/** "left index home, Symbols": "(" here, "{" there. `mine` and `theirs` are the designs that were brought together. */
export function conflictWords(
  conflict: Conflict,
  { mine, theirs }: { readonly mine: Told; readonly theirs: Told },
): ConflictWords {
  return {
    where: whereOf(conflict, mine.keymap, theirs.keymap),
    mine: sideWords(conflict.kind, conflict.mine, mine),
    theirs: sideWords(conflict.kind, conflict.theirs, theirs),
  };
}

function whereOf({ kind, id, mine: here, theirs: there }: Conflict, mine: Keymap, theirs: Keymap): string {
  switch (kind) {
    case 'name':
      return 'the name of the design';
    case 'layer order':
      return 'the order of the layers';
    case 'notes':
      return 'the notes';
    case 'board':
      return 'the board, all its keys together';
    case 'hosts':
      return 'the computers, all of them together';
    case 'timing':
      return 'the timing of the whole design';
    case 'place': {
      const [layer = '', key = ''] = id.split(' ');
      const keymap = mine.layers.some((each) => each.id === layer) ? mine : theirs;
      return `${keyName(keymap.board, key)}, ${layerWords(keymap, layer)}`;
    }
    case 'layer':
      return `layer ${layerWords(mine.layers.some((each) => each.id === id) ? mine : theirs, id)}`;
    case 'chord': {
      const [keymap, part] = here === null ? [theirs, there] : [mine, here];
      return part?.kind === 'chord' ? `chord ${chordKeysWords(keymap, part.value)}` : 'a chord';
    }
    case 'note':
      return 'a note of the diary';
    case 'need list':
    case 'own need':
    case 'waived need':
      return `${kind} ${id}`;
  }
}

/** How much of a long text is shown. */
const SIGNS = 80;

function sideWords(kind: Conflict['kind'], part: Part | null, told: Told): string {
  if (part !== null) return partWords(part, told);
  return kind === 'timing' ? 'the usual' : 'taken away';
}

function partWords(part: Part, told: Told): string {
  switch (part.kind) {
    case 'name':
      return `“${part.value}”`;
    case 'notes':
      return part.value === '' ? 'none' : `“${shortened(part.value)}”`;
    case 'board':
      return `“${part.value.name}” with ${part.value.keys.length} keys`;
    case 'hosts':
      return part.value.map(hostWords).join(', ');
    case 'timing':
      return fieldWords(part.value);
    case 'need list':
    case 'own need':
      return 'asked for';
    case 'waived need':
      return `let off: ${part.value}`;
    case 'layer':
      return layerPartWords(part.value, told.keymap);
    case 'place':
      return bindingNow(part.value, told);
    case 'chord':
      return chordNow(part.value, told);
    case 'note':
      return `“${shortened(part.value.text)}”`;
    case 'layer order':
      return part.value.map((id) => layerWords(told.keymap, id)).join(', ');
  }
}

function shortened(text: string): string {
  const signs = [...text.replace(/\s+/g, ' ')];
  return signs.length > SIGNS ? `${signs.slice(0, SIGNS).join('')}…` : signs.join('');
}

function hostWords({ system, layout, variant, corrections = [] }: Host): string {
  const name = [system, layout, variant].join(' ').trim();
  return corrections.length === 0 ? name : `${name} with ${corrections.length} corrections`;
}

function layerPartWords({ name, onWhile }: PartValues['layer'], keymap: Keymap): string {
  if (onWhile === undefined) return `kept, called ${name}`;
  return `kept, called ${name}, on while ${onWhile.map((id) => layerWords(keymap, id)).join(' and ')} are on`;
}

/** Timing fields by their own names: "hold after 180 ms, quiet before 100 ms". */
function fieldWords(fields: Partial<Binding>): string {
  const ms = (name: string, value: number | undefined) =>
    value === undefined ? [] : [`${name} ${value} ms`];
  const yes = (name: string, value: boolean | undefined) =>
    value === undefined ? [] : [`${name} ${value ? 'on' : 'off'}`];
  const words = [
    ...ms('hold after', fields.holdAfterMs),
    ...(fields.holdBy === undefined ? [] : [`hold by ${fields.holdBy.replace('-', ' ')}`]),
    ...ms('quiet before', fields.quietBeforeMs),
    ...ms('again within', fields.againWithinMs),
    ...yes('same hand taps', fields.sameHandTaps),
    ...yes('tap if alone', fields.tapIfAlone),
  ];
  return words.join(', ');
}

function bindingNow({ tap, onShift, hold, ...timing }: Binding, told: Told): string {
  const parts = [
    ...(tap ? [briefly(tap, told)] : []),
    ...(onShift ? [`under Shift ${briefly(onShift, told)}`] : []),
    ...(hold ? [`hold ${briefly(hold, told)}`] : []),
    ...(Object.keys(timing).length === 0 ? [] : [fieldWords(timing)]),
  ];
  return parts.join(', ');
}

function chordNow(chord: Chord, told: Told): string {
  const { action, hold, windowMs, layers } = chord;
  const live = layers?.map((id) => layerWords(told.keymap, id)).join(', ') ?? 'every layer';
  return [
    briefly(action, told),
    ...(hold ? [`hold ${briefly(hold, told)}`] : []),
    chordKeysWords(told.keymap, chord),
    `window ${windowMs} ms`,
    `live on ${live}`,
  ].join(', ');
}
