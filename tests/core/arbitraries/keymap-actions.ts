import fc from 'fast-check';
import { CODES, MODIFIERS } from '../../../src/core/keymap/codes.ts';
import type { Action, LayerId } from '../../../src/core/keymap/types.ts';

/** What a key can do, by the name in the file. */
export type ActionKind = Action['do'];

/** The kinds that the designs of most laws are made of. */
export const ACTION_KINDS: readonly ActionKind[] = [
  'key',
  'char',
  'text',
  'layer',
  'modifier',
  'nothing',
  'board',
];

/** All kinds: those of every design, and those that only designs with the later fields hold. */
export const ALL_ACTION_KINDS: readonly ActionKind[] = [...ACTION_KINDS, 'repeat', 'word-shift'];

/** Which actions are wanted: their kinds, the layers that they may turn on, the characters that they may type. */
export interface ActionChoice {
  readonly kinds: readonly ActionKind[];
  readonly layers: readonly LayerId[];
  readonly chars: readonly string[];
}

/** Single strokes, shifted ones, some behind dead keys on other hosts, some that most hosts lack; all in NFC. */
export const CHARS = ['a', 'e', 'Q', '1', '!', ' ', '~', '"', 'é', 'ß', 'ñ', '≥', '👩‍🚀'] as const;

const ORDINARY = ['KeyA', 'KeyB', 'KeyC', 'Digit1', 'Enter', 'Space', 'ArrowLeft', 'F5'] as const;

/** A code: a few ordinary ones and the modifiers often, so that two keys meet on one code; any of the list at times. */
const code = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...ORDINARY) },
  { weight: 3, arbitrary: fc.constantFrom(...MODIFIERS) },
  { weight: 1, arbitrary: fc.constantFrom(...CODES) },
);

const withModifiers = fc.uniqueArray(fc.constantFrom(...MODIFIERS), { maxLength: 2 });

const keyAction: fc.Arbitrary<Action> = fc.oneof(
  { weight: 3, arbitrary: fc.record({ do: fc.constant('key' as const), code }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('key' as const), code, with: withModifiers }) },
);

const modifierAction: fc.Arbitrary<Action> = fc.record({
  do: fc.constant('modifier' as const),
  code: fc.constantFrom(...MODIFIERS),
  mode: fc.constantFrom('latch' as const, 'lock' as const),
});

function layerAction(layers: readonly LayerId[]): fc.Arbitrary<Action> {
  return fc.record({
    do: fc.constant('layer' as const),
    layer: fc.constantFrom(...layers),
    mode: fc.constantFrom('while-held' as const, 'latch' as const, 'lock' as const),
  });
}

function typingAction(kind: 'char' | 'text', chars: readonly string[]): fc.Arbitrary<Action> {
  const char = fc.constantFrom(...chars);
  if (kind === 'char') return char.map((one): Action => ({ do: 'char', char: one }));
  const several = fc.array(char, { minLength: 1, maxLength: 4 });
  return several.map((all): Action => ({ do: 'text', text: all.join('') }));
}

function actionOf(kind: ActionKind, { layers, chars }: ActionChoice): fc.Arbitrary<Action> {
  switch (kind) {
    case 'key':
      return keyAction;
    case 'char':
    case 'text':
      return typingAction(kind, chars);
    case 'layer':
      return layerAction(layers);
    case 'modifier':
      return modifierAction;
    case 'nothing':
      return fc.constant<Action>({ do: 'nothing' });
    case 'repeat':
      return fc.constant<Action>({ do: 'repeat' });
    case 'word-shift':
      return fc.constant<Action>({ do: 'word-shift' });
    case 'board':
      return fc.constantFrom<Action>({ do: 'board', label: 'restart' }, { do: 'board', label: 'Radio 2' });
  }
}

const WEIGHTS: Readonly<Record<ActionKind, number>> = {
  key: 5,
  char: 2,
  text: 1,
  layer: 4,
  modifier: 2,
  repeat: 2,
  'word-shift': 2,
  nothing: 1,
  board: 1,
};

/** An action of one of the wanted kinds; a plain A where none can be made (layer actions with no layer to turn on). */
export function actionArbitrary(choice: ActionChoice): fc.Arbitrary<Action> {
  const kinds = choice.kinds.filter((kind) => kind !== 'layer' || choice.layers.length > 0);
  if (kinds.length === 0) return fc.constant<Action>({ do: 'key', code: 'KeyA' });
  return fc.oneof(...kinds.map((kind) => ({ weight: WEIGHTS[kind], arbitrary: actionOf(kind, choice) })));
}
