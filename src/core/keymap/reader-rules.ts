import { actionsOf } from './actions-of.ts';
import { isModifier } from './codes.ts';
import { isOneCharacter, parseNeed } from './need.ts';
import { type Path, type Problem, quoted } from './problem.ts';
import { brokenReferences } from './references.ts';
import type { Host, Keymap } from './types.ts';

/**
 * What a keymap of the right shape may still break, which a JSON Schema cannot say. Characters are expected in NFC.
 * No problem here and none of shape: a valid keymap.
 */
export function ruleProblems(keymap: Keymap): readonly Problem[] {
  return [
    ...idProblems(keymap),
    ...brokenReferences(keymap).map(({ path, names, id }) => ({
      path,
      found: quoted(id),
      expected: names === 'key' ? 'the id of a key of the board' : `the id of a ${names}`,
    })),
    ...baseProblems(keymap),
    ...onWhileProblems(keymap),
    ...chordProblems(keymap),
    ...diaryProblems(keymap),
    ...typingProblems(keymap),
    ...shiftedProblems(keymap),
    ...needProblems(keymap),
    ...keymap.hosts.flatMap(correctionProblems),
  ];
}

function idProblems(keymap: Keymap): Problem[] {
  const ids = (things: readonly { readonly id: string }[]) => things.map(({ id }) => id);
  const of = (path: Path, names: readonly string[]) =>
    repeated(path, names, 'an id that is used once').map((one) => ({ ...one, path: [...one.path, 'id'] }));
  return [
    ...of(['board', 'keys'], ids(keymap.board.keys)),
    ...of(['layers'], ids(keymap.layers)),
    ...of(['chords'], ids(keymap.chords ?? [])),
    ...of(['diary'], ids(keymap.diary ?? [])),
  ];
}

/** The items of a list that stand in it before. */
function repeated(path: Path, items: readonly string[], expected: string): Problem[] {
  const seen = new Set<string>();
  return items.flatMap((item, at) => {
    if (seen.has(item)) return [{ path: [...path, at], found: `${quoted(item)} again`, expected }];
    seen.add(item);
    return [];
  });
}

function baseProblems(keymap: Keymap): Problem[] {
  const base = keymap.layers[0]?.id;
  return actionsOf(keymap).flatMap(({ action, path }) => {
    if (action.do !== 'layer' || action.layer !== base) return [];
    const expected = 'a layer above the base, which is always on';
    return [{ path: [...path, 'layer'], found: quoted(action.layer), expected }];
  });
}

function onWhileProblems(keymap: Keymap): Problem[] {
  const order = new Map(keymap.layers.map(({ id }, at) => [id, at]));
  return keymap.layers.flatMap((layer, index) => {
    const path = ['layers', index, 'onWhile'];
    const names = layer.onWhile ?? [];
    const higher = names.flatMap((id, at) => {
      if ((order.get(id) ?? -1) < index) return [];
      return [{ path: [...path, at], found: quoted(id), expected: 'a layer lower than this one' }];
    });
    return [...higher, ...repeated(path, names, 'each layer once')];
  });
}

function chordProblems(keymap: Keymap): Problem[] {
  return (keymap.chords ?? []).flatMap((chord, index) => [
    ...repeated(['chords', index, 'keys'], chord.keys, 'each key once'),
    ...repeated(['chords', index, 'layers'], chord.layers ?? [], 'each layer once'),
  ]);
}

function diaryProblems(keymap: Keymap): Problem[] {
  return (keymap.diary ?? []).flatMap(({ keys = [] }, index) =>
    repeated(['diary', index, 'keys'], keys, 'each key once'),
  );
}

const LONE_SURROGATE = /\p{Surrogate}/u;

function typingProblems(keymap: Keymap): Problem[] {
  return actionsOf(keymap).flatMap(({ action, path }): Problem[] => {
    if (action.do === 'char') {
      const whole = isOneCharacter(action.char) && !LONE_SURROGATE.test(action.char);
      const field = [...path, 'char'];
      if (!whole) return [{ path: field, found: quoted(action.char), expected: 'one character' }];
      const composed = action.char === action.char.normalize('NFC');
      return composed ? [] : [{ path: field, found: quoted(action.char), expected: 'the character in NFC' }];
    }
    if (action.do !== 'text' || !LONE_SURROGATE.test(action.text)) return [];
    return [{ path: [...path, 'text'], found: quoted(action.text), expected: 'whole characters' }];
  });
}

function shiftedProblems(keymap: Keymap): Problem[] {
  return actionsOf(keymap).flatMap(({ action, path, at }) => {
    if (at.side !== 'onShift' || action.do !== 'key' || !isModifier(action.code)) return [];
    return [{ path: [...path, 'code'], found: quoted(action.code), expected: 'a key that is no modifier' }];
  });
}

function needProblems(keymap: Keymap): Problem[] {
  const own = (keymap.needs?.own ?? []).map((text, at) => ({ text, path: ['needs', 'own', at] }));
  const waived = (keymap.needs?.waived ?? []).map(({ need }, at) => ({
    text: need,
    path: ['needs', 'waived', at, 'need'],
  }));
  return [...own, ...waived].flatMap(({ text, path }) => {
    if (parseNeed(text).ok && !LONE_SURROGATE.test(text)) return [];
    const expected = 'one character, key:CODE or shortcut:Modifier+CODE with W3C codes';
    return [{ path, found: quoted(text), expected }];
  });
}

const DEAD_KEY = /^dead_\w{1,40}$/;

function correctionProblems({ corrections = [] }: Host, host: number): Problem[] {
  const list = ['hosts', host, 'corrections'];
  const places = corrections.map(({ code, level }) => `${code} ${level}`);
  const each = corrections.flatMap(({ code, gives }, at): Problem[] => {
    if (isModifier(code)) {
      return [{ path: [...list, at, 'code'], found: quoted(code), expected: 'a key that is no modifier' }];
    }
    const isNamed = gives === '' || DEAD_KEY.test(gives);
    const isWhole = isOneCharacter(gives) && !LONE_SURROGATE.test(gives) && gives === gives.normalize('NFC');
    if (isNamed || isWhole) return [];
    const expected = 'one character in NFC, a dead key such as dead_acute, or nothing';
    return [{ path: [...list, at, 'gives'], found: quoted(gives), expected }];
  });
  return [...each, ...repeated(list, places, 'each key once a level')];
}
