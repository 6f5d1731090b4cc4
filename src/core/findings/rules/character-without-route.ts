import type { Edit } from '../../keymap/edit.ts';
import type { Action, Keymap } from '../../keymap/types.ts';
import type { Facts } from '../facts.ts';
import type { Finding, Mend } from '../find.ts';
import { placeInWords } from '../free-places.ts';
import { firstHarmless } from '../harmless.ts';
import { finding, type Rule } from '../rule.ts';
import { clustersOf, untypable } from '../untypable.ts';
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
  return facts.places.flatMap(({ key, layer, sides }) => {
    const place = { layer: layer.id, key: key.id };
    return sides.flatMap(({ side, action }) => {
      const chars = untypable(facts.host, action);
      if (chars.length === 0) return [];
      const where = placeInWords(facts.keymap, place);
      const edit = (to: Action): Edit => ({ edit: 'bind', place, side, action: to });
      return found(facts, chars, `${where}${side === 'hold' ? ', held,' : ''}`, {
        keys: [key.id],
        layers: [layer.id],
        mends: mendsOf(facts, [key.id], action, where, edit),
        side,
      });
    });
  });
}

function onChords(facts: Facts): readonly Finding[] {
  return facts.chords.flatMap(({ chord, name }) => {
    const chars = untypable(facts.host, chord.action);
    if (chars.length === 0) return [];
    const edit = (action: Action): Edit => ({ edit: 'change-chord', chord: chord.id, to: { action } });
    const words = `the chord “${name}”`;
    return found(facts, chars, words, {
      chords: [chord.id],
      mends: mendsOf(facts, chord.keys, chord.action, words, edit),
      side: 'tap',
    });
  });
}

interface Where {
  readonly keys?: readonly string[];
  readonly layers?: readonly string[];
  readonly chords?: readonly string[];
  readonly side: 'tap' | 'hold';
  readonly mends: readonly Mend[];
}

function found({ keymap, host }: Facts, chars: readonly string[], where: string, about: Where): Finding {
  const { mends, side, ...subjects } = about;
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
    mends,
  });
}

function hostInWords(keymap: Keymap, layout: string): string {
  const system = keymap.hosts[0]?.system;
  return `the host layout ${layout}${system === undefined ? '' : ` on ${system}`}`;
}

/**
 * Leaves the characters out of a text; a binding that would give nothing becomes blank, so that no other shows through.
 * Not where that does harm: a mute key still uses a layer's latch up (rule L2), and a route may be built on that.
 */
function mendsOf(
  facts: Facts,
  keys: readonly string[],
  action: Action,
  where: string,
  edit: (to: Action) => Edit,
): readonly Mend[] {
  const chars = untypable(facts.host, action);
  const words = listed(chars.map((char) => `“${char}”`));
  const text =
    action.do === 'text'
      ? clustersOf(action.text)
          .filter((char) => !chars.includes(char))
          .join('')
      : '';
  if (text !== '') return [{ title: `Leave ${words} out of the text`, edits: [edit({ do: 'text', text })] }];
  if (isPressedOnSomeRoute(facts, keys)) return [];
  const blank = firstHarmless(facts, [{ title: `Make ${where} blank`, edits: [edit({ do: 'nothing' })] }]);
  return blank === null ? [] : [blank];
}

function isPressedOnSomeRoute({ needs }: Facts, keys: readonly string[]): boolean {
  return needs.some(({ route }) => route?.steps.some((step) => step.keys.some((key) => keys.includes(key))));
}
