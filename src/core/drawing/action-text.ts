import { codeName } from '../host/code-names.ts';
import { layerWords } from '../keymap/action-words.ts';
import type { Action, Keymap } from '../keymap/types.ts';

const LAYER_MODES = { 'while-held': 'while held', latch: 'latch', lock: 'lock' } as const;

/** An action as a sheet of paper says it: "a", "Left Control + C", "layer Moves while held", "blank". */
export function actionText(keymap: Keymap, action: Action): string {
  switch (action.do) {
    case 'key':
      return [...(action.with ?? []), action.code].map(codeName).join(' + ');
    case 'char':
      return action.char === ' ' ? 'Space' : action.char;
    case 'text':
      return `text ${JSON.stringify(action.text)}`;
    case 'layer':
      return `layer ${layerWords(keymap, action.layer)} ${LAYER_MODES[action.mode]}`;
    case 'modifier':
      return `${codeName(action.code)} ${action.mode}`;
    case 'nothing':
      return 'blank';
    case 'repeat':
      return 'repeat the last output';
    case 'word-shift':
      return 'Shift for one word';
    case 'board':
      return `board: ${action.label}`;
  }
}
