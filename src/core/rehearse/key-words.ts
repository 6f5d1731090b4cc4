import { keyName } from '../board/key-name.ts';
import { codeName } from '../host/code-names.ts';
import type { HostLayout } from '../host/host-layout.ts';
import { legendOf } from '../host/legend.ts';
import type { Produced } from '../host/typed.ts';
import { bindingAt, chordById, layerById } from '../keymap/lookup.ts';
import type { ChordId, KeyId, Keymap, LayerId } from '../keymap/types.ts';

/** What keys, chords and layers of a design are called in the sentences of this desk. */
export interface Names {
  /** A key by what it types on the base layer, else by where it is: "T", "left inner thumb". */
  key(key: KeyId): string;
  chord(chord: ChordId): string;
  layer(layer: LayerId): string;
}

/** The names of a design, each worked out once. */
export function namesOf(keymap: Keymap, host: HostLayout): Names {
  const known = new Map<KeyId, string>();
  const base = keymap.layers[0]?.id ?? '';
  const keyWord = (key: KeyId) => {
    const tap = bindingAt(keymap, { layer: base, key })?.tap;
    const legend = tap === undefined || tap.do === 'layer' ? '' : legendOf(tap, { keymap, host });
    if (legend === '') return keyName(keymap.board, key);
    // A letter is called as it stands on the cap of a keyboard.
    return /^\p{Ll}$/u.test(legend) ? legend.toLocaleUpperCase('en') : legend;
  };
  return {
    key(key) {
      const word = known.get(key) ?? keyWord(key);
      known.set(key, word);
      return word;
    },
    chord: (chord) => chordById(keymap, chord)?.name ?? chord,
    layer: (layer) => layerById(keymap, layer)?.name ?? layer,
  };
}

/** Words joined as a sentence has them: "A, B and C". */
export function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

/** A duration as it stands in sentences: "31 ms", to a tenth where it has one. */
export function ms(value: number): string {
  return `${(Math.round(value * 10) / 10).toLocaleString('en')} ms`;
}

/** What came out, in a word: the character itself, "Control left + Backspace" for a key. */
export function producedWord(produced: Produced): string {
  if (produced.kind === 'char') return produced.char;
  if (produced.kind === 'modifier') return codeName(produced.code);
  return [...produced.modifiers, produced.code].map(codeName).join(' + ');
}
