import type { Code } from './codes.ts';
import { layerById } from './lookup.ts';
import type { Action, Binding, Keymap, LayerId } from './types.ts';

/**
 * A code in words without knowledge of the computer it is sent to: `KeyJ` is "J", `ArrowLeft` "Arrow left".
 * For names of steps; what a key types on a computer is told by the host layout.
 */
function codeWords(code: Code): string {
  const letterOrDigit = /^(?:Key|Digit)(.)$/.exec(code)?.[1];
  if (letterOrDigit) return letterOrDigit;
  if (/^F\d+$/.test(code)) return code;
  const words = code.replace(/([a-z])([A-Z0-9])/g, '$1 $2').split(' ');
  return words.map((word, index) => (index === 0 ? word : word.toLowerCase())).join(' ');
}

/** A layer's name as it stands in sentences, its id where there is no such layer. */
export function layerWords(keymap: Keymap, id: LayerId): string {
  return layerById(keymap, id)?.name ?? id;
}

/** An action in a few words, for the names of steps: "J", "Shift left + 1", "layer Symbols while held". */
export function actionWords(keymap: Keymap, action: Action): string {
  switch (action.do) {
    case 'key':
      return [...(action.with ?? []), action.code].map(codeWords).join(' + ');
    case 'char':
      return action.char === ' ' ? 'space' : action.char;
    case 'text':
      return JSON.stringify(action.text);
    case 'layer':
      return `layer ${layerWords(keymap, action.layer)}, ${action.mode.replace('-', ' ')}`;
    case 'modifier':
      return `${codeWords(action.code)}, ${action.mode}`;
    case 'nothing':
      return 'blank';
    case 'repeat':
      return 'repeat';
    case 'word-shift':
      return 'Shift for one word';
    case 'board':
      return action.label;
  }
}

/** A binding in a few words: its tap, its hold, or both. */
export function bindingWords(keymap: Keymap, binding: Binding): string {
  const parts = [];
  if (binding.tap) parts.push(actionWords(keymap, binding.tap));
  if (binding.onShift) parts.push(`${actionWords(keymap, binding.onShift)} (under Shift)`);
  if (binding.hold) parts.push(`${actionWords(keymap, binding.hold)} (hold)`);
  const last = parts.pop() ?? '';
  return parts.length === 0 ? last : `${parts.join(', ')} and ${last}`;
}
