import type { Edit } from '../../keymap/edit.ts';
import type { Action, Keymap, ShiftedAction, Slot } from '../../keymap/types.ts';
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

/** What a mend puts in the place of an action. */
type TextOrBlank = Extract<ShiftedAction, { do: 'text' | 'nothing' }>;

const SLOTS = ['tap', 'onShift', 'hold'] as const satisfies readonly Slot[];
/** How it comes to that action, behind the name of the key or chord. */
const HOW: Readonly<Record<Slot, string>> = { tap: '', onShift: ', under Shift,', hold: ', held,' };

function onPlaces(facts: Facts): readonly Finding[] {
  return facts.places.flatMap(({ key, layer, binding }) => {
    const place = { layer: layer.id, key: key.id };
    return SLOTS.flatMap((side) => {
      const action = binding[side];
      if (action === undefined) return [];
      const chars = untypable(facts.host, action);
      if (chars.length === 0) return [];
      const where = placeInWords(facts.keymap, place);
      const edit = (to: TextOrBlank): Edit =>
        side === 'onShift'
          ? { edit: 'set-on-shift', place, action: to }
          : { edit: 'bind', place, side, action: to };
      return found(facts, chars, `${where}${HOW[side]}`, {
        keys: [key.id],
        layers: [layer.id],
        mends: mendsOf(facts, [key.id], action, where, edit),
        side,
      });
    });
  });
}

function onChords(facts: Facts): readonly Finding[] {
  return facts.chords.flatMap(({ chord, name }) =>
    SLOTS.flatMap((side) => {
      const field = side === 'tap' ? 'action' : side;
      const action = chord[field];
      const chars = action === undefined ? [] : untypable(facts.host, action);
      if (action === undefined || chars.length === 0) return [];
      const edit = (to: TextOrBlank): Edit => ({
        edit: 'change-chord',
        chord: chord.id,
        to: { [field]: to },
      });
      const words = `the chord “${name}”${HOW[side]}`;
      return found(facts, chars, words, {
        chords: [chord.id],
        mends: mendsOf(facts, chord.keys, action, words, edit),
        side,
      });
    }),
  );
}

interface Where {
  readonly keys?: readonly string[];
  readonly layers?: readonly string[];
  readonly chords?: readonly string[];
  readonly side: Slot;
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
  edit: (to: TextOrBlank) => Edit,
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
