import type { Edit } from '../../keymap/edit.ts';
import type { Action, Keymap } from '../../keymap/types.ts';
import type { Facts } from '../facts.ts';
import type { Finding, Mend } from '../find.ts';
import { placeInWords } from '../free-places.ts';
import { boundPlaces, sidesOf } from '../places.ts';
import { finding, type Rule } from '../rule.ts';
import { listed, sentence } from '../wording.ts';

const id = 'character-without-route';

/** Looks at every character that a binding or chord is to type, alone or in a text. */
export const characterWithoutRoute: Rule = {
  id,
  title: 'Character the host layout cannot type',
  why: 'Nothing is sent for it (rule A2): the key stays mute.',
  check: (facts) => [...onPlaces(facts), ...onChords(facts)],
};

function onPlaces(facts: Facts): readonly Finding[] {
  return boundPlaces(facts).flatMap(({ key, layer, binding }) => {
    const place = { layer: layer.id, key: key.id };
    return sidesOf(binding).flatMap(({ side, action }) => {
      const chars = untypable(facts, action);
      if (chars.length === 0) return [];
      const where = placeInWords(facts.keymap, place);
      const edit = (to: Action): Edit => ({ edit: 'bind', place, side, action: to });
      return found(facts, chars, `${where}${side === 'hold' ? ', held,' : ''}`, {
        keys: [key.id],
        layers: [layer.id],
        mend: mendOf(action, chars, where, edit),
        side,
      });
    });
  });
}

function onChords(facts: Facts): readonly Finding[] {
  return facts.chords.flatMap(({ chord, name }) => {
    const chars = untypable(facts, chord.action);
    if (chars.length === 0) return [];
    const edit = (action: Action): Edit => ({ edit: 'change-chord', chord: chord.id, to: { action } });
    const words = `the chord “${name}”`;
    return found(facts, chars, words, {
      chords: [chord.id],
      mend: mendOf(chord.action, chars, words, edit),
      side: 'tap',
    });
  });
}

interface Where {
  readonly keys?: readonly string[];
  readonly layers?: readonly string[];
  readonly chords?: readonly string[];
  readonly side: 'tap' | 'hold';
  readonly mend: Mend;
}

function found({ keymap, host }: Facts, chars: readonly string[], where: string, about: Where): Finding {
  const { mend, side, ...subjects } = about;
  const words = listed(chars.map((char) => `“${char}”`));
  return finding({
    rule: id,
    messageId: 'no-strokes',
    severity: 'broken',
    message: sentence(
      `${where} is to type ${words}, which ${hostInWords(keymap, host.layout)} has no way to type.`,
    ),
    ...subjects,
    data: { need: chars.join(''), side, layout: host.layout },
    mends: [mend],
  });
}

function hostInWords(keymap: Keymap, layout: string): string {
  const system = keymap.hosts[0]?.system;
  return `the host layout ${layout}${system === undefined ? '' : ` on ${system}`}`;
}

/** The characters of an action that the host layout has no strokes for, each once. */
function untypable({ host }: Facts, action: Action): readonly string[] {
  if (action.do !== 'char' && action.do !== 'text') return [];
  const chars = action.do === 'char' ? [action.char] : clusters(action.text);
  return [...new Set(chars)].filter((char) => host.routesOf(char).length === 0);
}

const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });

function clusters(text: string): readonly string[] {
  return [...segmenter.segment(text.normalize('NFC'))].map(({ segment }) => segment);
}

/** Leaves the characters out of a text; a binding that would give nothing becomes blank, so that no other shows through. */
function mendOf(action: Action, chars: readonly string[], where: string, edit: (to: Action) => Edit): Mend {
  const words = listed(chars.map((char) => `“${char}”`));
  const text =
    action.do === 'text'
      ? clusters(action.text)
          .filter((char) => !chars.includes(char))
          .join('')
      : '';
  if (text !== '') return { title: `Leave ${words} out of the text`, edits: [edit({ do: 'text', text })] };
  return { title: `Make ${where} blank`, edits: [edit({ do: 'nothing' })] };
}
