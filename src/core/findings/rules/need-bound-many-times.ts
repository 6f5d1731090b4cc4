import type { HostLayout } from '../../host/host-layout.ts';
import { type Code, isModifier } from '../../keymap/codes.ts';
import type { Action, ChordId, KeyId, LayerId } from '../../keymap/types.ts';
import type { Facts } from '../facts.ts';
import type { Finding } from '../find.ts';
import { finding, type Rule } from '../rule.ts';
import { actionInWords, counted as countedWords, listed, sentence } from '../wording.ts';

const id = 'need-bound-many-times';

/** As many bindings of one thing are many; two may be meant, one for each hand. Our choice. */
const MANY = 3;

interface Bindings {
  /** The first action that gives it. */
  readonly action: Action;
  readonly keys: KeyId[];
  readonly layers: LayerId[];
  readonly chords: ChordId[];
  count: number;
}

/** Counts what bindings and chords in reach give; the same stroke counts as the same thing. */
export const needBoundManyTimes: Rule = {
  id,
  title: 'Same need bound many times',
  why: 'Keys are few, and each binding of the same thing takes the place of another.',
  check(facts) {
    const all = new Map<string, Bindings>();
    for (const { key, layer, sides, reached } of facts.places) {
      if (!reached) continue;
      for (const { action } of sides) {
        const bindings = counted(all, facts.host, action);
        bindings?.keys.push(key.id);
        bindings?.layers.push(layer.id);
      }
    }
    for (const { chord, order } of facts.chords) {
      if (facts.reach.fires[order] !== true) continue;
      for (const action of [chord.action, chord.hold])
        if (action !== undefined) counted(all, facts.host, action)?.chords.push(chord.id);
    }
    return [...all.values()].filter(({ count }) => count >= MANY).map((each) => found(facts, each));
  },
};

function counted(all: Map<string, Bindings>, host: HostLayout, action: Action): Bindings | null {
  const stroke = strokeOf(host, action);
  if (stroke === null) return null;
  const bindings = all.get(stroke) ?? { action, keys: [], layers: [], chords: [], count: 0 };
  if (bindings.count === 0) all.set(stroke, bindings);
  bindings.count += 1;
  return bindings;
}

/** What an action sends, as text; null for modifiers, layers and texts. */
function strokeOf(host: HostLayout, action: Action): string | null {
  if (action.do === 'key') return isModifier(action.code) ? null : written(action.with ?? [], action.code);
  if (action.do !== 'char') return null;
  const strokes = host.routesOf(action.char)[0];
  return strokes?.map((stroke) => written(stroke.with, stroke.code)).join(' ') ?? null;
}

function written(modifiers: readonly Code[], code: Code): string {
  return modifiers.length === 0 ? code : `${modifiers.join('+')}+${code}`;
}

function found({ keymap, host }: Facts, { action, keys, layers, chords, count: times }: Bindings): Finding {
  const where = [
    ...(keys.length > 0 ? [countedWords(keys.length, 'place')] : []),
    ...(chords.length > 0 ? [countedWords(chords.length, 'chord')] : []),
  ];
  const words = actionInWords(keymap, host, action);
  return finding({
    rule: id,
    messageId: 'many-times',
    severity: 'note',
    message: sentence(`${words} is bound ${times} times, on ${listed(where)}; one or two might do.`),
    keys: [...new Set(keys)],
    layers: [...new Set(layers)],
    chords: [...new Set(chords)],
    data: { need: needOf(action), name: words, times },
  });
}

/** The need that an action gives, as it is written in a keymap, modifiers by their codes. */
function needOf(action: Action): string {
  if (action.do === 'char') return action.char;
  if (action.do !== 'key') return '';
  const modifiers = action.with ?? [];
  return `${modifiers.length === 0 ? 'key' : 'shortcut'}:${written(modifiers, action.code)}`;
}
