import { codeName } from '../../host/code-names.ts';
import type { HostLayout } from '../../host/host-layout.ts';
import { isModifier } from '../../keymap/codes.ts';
import { type Need, needText } from '../../keymap/need.ts';
import type { Action, ChordId, KeyId, LayerId } from '../../keymap/types.ts';
import type { Finding } from '../find.ts';
import { boundPlaces, isReached, sidesOf } from '../places.ts';
import { finding, type Rule } from '../rule.ts';
import { charInWords, codeInWords, counted, listed, sentence } from '../wording.ts';

const id = 'need-bound-many-times';

/** As many bindings of one thing are many; two may be meant, one for each hand. Our choice. */
const MANY = 3;

interface Bindings {
  readonly words: string;
  readonly need: string;
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
    for (const place of boundPlaces(facts)) {
      if (!isReached(facts, place)) continue;
      for (const { action } of sidesOf(place.binding)) {
        const bindings = count(all, facts.host, action);
        bindings?.keys.push(place.key.id);
        bindings?.layers.push(place.layer.id);
      }
    }
    for (const { chord, order } of facts.chords) {
      if (facts.reach.fires[order] === true) count(all, facts.host, chord.action)?.chords.push(chord.id);
    }
    return [...all.values()].filter((each) => each.count >= MANY).map(found);
  },
};

function count(all: Map<string, Bindings>, host: HostLayout, action: Action): Bindings | null {
  const given = thingGiven(host, action);
  if (given === null) return null;
  const bindings = all.get(given.stroke) ?? { ...given, keys: [], layers: [], chords: [], count: 0 };
  bindings.count += 1;
  all.set(given.stroke, bindings);
  return bindings;
}

/** What an action types, as the stroke that the computer receives; null for modifiers, layers and texts. */
function thingGiven(
  host: HostLayout,
  action: Action,
): { stroke: string; words: string; need: string } | null {
  if (action.do === 'char') {
    const [first] = host.routesOf(action.char)[0] ?? [];
    const stroke = host
      .routesOf(action.char)[0]
      ?.map((each) => [...each.with, each.code].join('+'))
      .join(' ');
    if (first === undefined || stroke === undefined) return null;
    return { stroke, words: charInWords(action.char), need: action.char };
  }
  if (action.do !== 'key' || isModifier(action.code)) return null;
  const modifiers = action.with ?? [];
  const need: Need = { kind: 'key', code: action.code };
  const words = [...modifiers.map(codeName), codeInWords(host, action.code)].join(' + ');
  const stroke = [...modifiers, action.code].join('+');
  return { stroke, words, need: modifiers.length === 0 ? needText(need) : `shortcut:${stroke}` };
}

function found({ words, need, keys, layers, chords, count: times }: Bindings): Finding {
  const where = [
    ...(keys.length > 0 ? [counted(keys.length, 'place')] : []),
    ...(chords.length > 0 ? [counted(chords.length, 'chord')] : []),
  ];
  return finding({
    rule: id,
    messageId: 'many-times',
    severity: 'note',
    message: sentence(`${words} is bound ${times} times, on ${listed(where)}; one or two might do.`),
    keys: [...new Set(keys)],
    layers: [...new Set(layers)],
    chords,
    data: { need, name: words, times },
  });
}
