import type { HostLayout, Stroke } from '../host/host-layout.ts';
import { CODES, type Code, isModifier, MODIFIERS } from '../keymap/codes.ts';
import type { Action, LayerId, ShiftedAction } from '../keymap/types.ts';

/** A set of modifiers as bits, in the order of rule I6. */
export type ModifierSet = number;

/** A code with the modifiers around it as one number: code number × 256 + modifiers. */
export type Sign = number;

const codeNumbers: ReadonlyMap<Code, number> = new Map(CODES.map((code, number) => [code, number]));

/** How many signs there are. */
export const SIGNS = CODES.length * 256;

/** The bit of a modifier. */
export function modifierBit(code: Code): ModifierSet {
  return isModifier(code) ? 1 << MODIFIERS.indexOf(code) : 0;
}

/** The bits of some modifiers. */
export function modifierSet(codes: readonly Code[]): ModifierSet {
  return codes.reduce((set, code) => set | modifierBit(code), 0);
}

/** The sign of a code with modifiers. */
export function signOf(code: Code, modifiers: ModifierSet): Sign {
  return (codeNumbers.get(code) ?? 0) * 256 + modifiers;
}

/** What an action does, as far as the search has to know. */
export type Act =
  /**
   * Strokes that the computer receives; none for a character without a route, which still uses latches. `lifted`: a Shift
   * that is not a stroke's own is lifted for it (rule A8).
   */
  | { readonly kind: 'type'; readonly signs: readonly Sign[]; readonly lifted?: true }
  /** Modifiers that are down while the key is; `bare`: a single one, which can be a need by itself. */
  | { readonly kind: 'modifiers'; readonly set: ModifierSet; readonly bare: Code | null }
  | { readonly kind: 'layer'; readonly layer: number; readonly mode: 'while-held' | 'latch' | 'lock' }
  | { readonly kind: 'modifier'; readonly set: ModifierSet; readonly mode: 'latch' | 'lock' }
  | { readonly kind: 'none' };

/** Both Shifts. */
export const SHIFTS: ModifierSet = modifierBit('ShiftLeft') | modifierBit('ShiftRight');

const NONE: Act = { kind: 'none' };
const NO_LAYERS: ReadonlyMap<LayerId, number> = new Map();
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** A stroke of an action as the computer receives it while some modifiers are on. */
export function signUnder(act: Extract<Act, { kind: 'type' }>, sign: Sign, modifiers: ModifierSet): Sign {
  return sign | (act.lifted && (sign & SHIFTS) === 0 ? modifiers & ~SHIFTS : modifiers);
}

/** What comes in place of a tap under Shift (rule A8). */
export function shiftedActOf(action: ShiftedAction, host: HostLayout): Act {
  const act = actOf(action, host, NO_LAYERS);
  return act.kind === 'type' ? { ...act, lifted: true } : act;
}

/**
 * Reads an action: layers by their number, characters by their route under the host (rules A1 to A6). What `repeat`
 * sends hangs on what came before the route, and Shift for one word is still on after a letter: no route is made of them.
 */
export function actOf(action: Action, host: HostLayout, layerNumbers: ReadonlyMap<LayerId, number>): Act {
  switch (action.do) {
    case 'key':
      return keyAct(action.code, action.with ?? []);
    case 'char':
      return { kind: 'type', signs: signsOf(action.char, host) };
    case 'text':
      return { kind: 'type', signs: textSigns(action.text, host) };
    case 'layer': {
      const layer = layerNumbers.get(action.layer);
      return layer === undefined || layer === 0 ? NONE : { kind: 'layer', layer, mode: action.mode };
    }
    case 'modifier':
      return { kind: 'modifier', set: modifierBit(action.code), mode: action.mode };
    default:
      return NONE;
  }
}

function keyAct(code: Code, around: readonly Code[]): Act {
  const set = modifierSet(around);
  if (!isModifier(code)) return { kind: 'type', signs: [signOf(code, set)] };
  return {
    kind: 'modifiers',
    set: set | modifierBit(code),
    bare: (set & ~modifierBit(code)) === 0 ? code : null,
  };
}

function strokeSign(stroke: Stroke): Sign {
  return signOf(stroke.code, modifierSet(stroke.with));
}

function signsOf(char: string, host: HostLayout): readonly Sign[] {
  return (host.routesOf(char)[0] ?? []).map(strokeSign);
}

function textSigns(text: string, host: HostLayout): readonly Sign[] {
  return [...graphemes.segment(text)].flatMap(({ segment }) => signsOf(segment.normalize('NFC'), host));
}
