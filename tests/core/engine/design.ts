import { type Code, isCode, isModifier, type Modifier } from '../../../src/core/keymap/codes.ts';
import type {
  Action,
  Binding,
  BoardKey,
  Chord,
  KeyId,
  Keymap,
  Layer,
  LayerId,
  Timing,
} from '../../../src/core/keymap/types.ts';

/** "A" is KeyA, "1" is Digit1, anything else is the code itself. */
function codeOf(short: string): Code {
  const long = /^[A-Z]$/.test(short) ? `Key${short}` : /^[0-9]$/.test(short) ? `Digit${short}` : short;
  if (!isCode(long)) throw new Error(`no code ${short}`);
  return long;
}

function modifierOf(code: string): Modifier {
  if (!isModifier(code)) throw new Error(`no modifier ${code}`);
  return code;
}

export const key = (code: string, ...modifiers: string[]): Action => ({
  do: 'key',
  code: codeOf(code),
  ...(modifiers.length > 0 ? { with: modifiers.map(modifierOf) } : {}),
});
export const char = (text: string): Action => ({ do: 'char', char: text });
export const text = (written: string): Action => ({ do: 'text', text: written });
export const nothing: Action = { do: 'nothing' };
export const ofBoard: Action = { do: 'board', label: 'Radio channel 2' };
export const held = (layer: LayerId): Action => ({ do: 'layer', layer, mode: 'while-held' });
export const latch = (layer: LayerId): Action => ({ do: 'layer', layer, mode: 'latch' });
export const lock = (layer: LayerId): Action => ({ do: 'layer', layer, mode: 'lock' });
export const latchCode = (code: string): Action => ({
  do: 'modifier',
  code: modifierOf(code),
  mode: 'latch',
});
export const lockCode = (code: string): Action => ({ do: 'modifier', code: modifierOf(code), mode: 'lock' });

/** Both a tap and a hold. */
export const both = (tap: Action, hold: Action, timing: Timing = {}): Binding => ({ tap, hold, ...timing });

/** "DF" are the keys D and F. */
export const chord = (
  keys: string,
  windowMs: number,
  action: Action,
  more: Partial<Pick<Chord, 'layers' | 'quietBeforeMs'>> = {},
): Chord => ({ id: keys.toLowerCase(), keys: [...keys], windowMs, action, ...more });

const HANDS = { left: 'ASDFGQWERT', right: 'HJKLYUIOPN' } as const;

function boardKey(id: KeyId, at: number, hand: 'left' | 'right', thumb: boolean): BoardKey {
  const x = 20 * at + (hand === 'right' ? 300 : 0);
  return {
    id,
    x,
    y: thumb ? 40 : 0,
    rotation: 0,
    width: 17,
    height: 17,
    hand,
    finger: thumb ? 'thumb' : 'index',
    home: false,
  };
}

/** Ten keys a hand, named by letters as on a typewriter, and four thumb keys: 1 and 2 left, 3 and 4 right. */
const KEYS: readonly BoardKey[] = [
  ...[...HANDS.left].map((id, at) => boardKey(id, at, 'left', false)),
  ...[...HANDS.right].map((id, at) => boardKey(id, at, 'right', false)),
  ...['1', '2'].map((id, at) => boardKey(id, at, 'left', true)),
  ...['3', '4'].map((id, at) => boardKey(id, at, 'right', true)),
];

type Places = Readonly<Record<KeyId, Binding | Action>>;

export interface Design {
  readonly base: Places;
  /** Layers above the base, lowest first. */
  readonly layers?: Readonly<Record<LayerId, Places>>;
  readonly onWhile?: Readonly<Record<LayerId, readonly LayerId[]>>;
  readonly chords?: readonly Chord[];
  readonly timing?: Timing;
}

function layerOf(id: LayerId, places: Places, onWhile: readonly LayerId[] | undefined): Layer {
  const bindings = Object.entries(places).map(([at, one]) => [at, 'do' in one ? { tap: one } : one] as const);
  const others = onWhile === undefined ? {} : { onWhile };
  return { id, name: id, ...others, places: Object.fromEntries(bindings) };
}

/** A keymap in a few words: a bare action is a tap. */
export function design({ base, layers = {}, onWhile = {}, chords, timing }: Design): Keymap {
  const upper = Object.entries(layers).map(([id, places]) => layerOf(id, places, onWhile[id]));
  return {
    format: 'neutral-keymap',
    version: 1,
    name: 'Example',
    board: { name: 'Twenty-four keys', keys: KEYS },
    hosts: [{ system: 'linux', layout: 'us', variant: '' }],
    ...(timing === undefined ? {} : { timing }),
    layers: [layerOf('base', base, undefined), ...upper],
    ...(chords === undefined ? {} : { chords }),
  };
}
