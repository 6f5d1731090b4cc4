import { type Code, isModifier } from '../keymap/codes.ts';

/**
 * What a computer holds to be down or on at a key event, by the names that W3C UI Events gives to `getModifierState`. It
 * outlasts the press that brought it about: a Shift whose release got lost, Caps Lock.
 */
export const COMPUTER_STATES = ['Shift', 'Control', 'Alt', 'AltGraph', 'Meta', 'CapsLock'] as const;

export type ComputerState = (typeof COMPUTER_STATES)[number];

/** The states that are there for as long as a key is down. */
export const HELD_STATES = [
  'Shift',
  'Control',
  'Alt',
  'AltGraph',
  'Meta',
] as const satisfies readonly ComputerState[];

export type HeldState = (typeof HELD_STATES)[number];

/** The state that a modifier brings about while it is down; null for other codes. */
export function stateOf(code: Code): HeldState | null {
  if (!isModifier(code)) return null;
  if (code.startsWith('Shift')) return 'Shift';
  if (code.startsWith('Control')) return 'Control';
  return code.startsWith('Alt') ? 'Alt' : 'Meta';
}
