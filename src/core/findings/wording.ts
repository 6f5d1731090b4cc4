import { keyName } from '../board/key-name.ts';
import { codeName } from '../host/code-names.ts';
import type { HostLayout } from '../host/host-layout.ts';
import { layerWords } from '../keymap/action-words.ts';
import type { Code } from '../keymap/codes.ts';
import type { Need } from '../keymap/need.ts';
import type { Action, Keymap } from '../keymap/types.ts';

/** "a", "a and b", "a, b and c"; of more than `most`, the first ones and how many follow. */
export function listed(words: readonly string[], most = 6): string {
  const shown =
    words.length > most ? [...words.slice(0, most - 1), `${words.length - most + 1} more`] : words;
  const last = shown.at(-1) ?? '';
  return shown.length < 2 ? last : `${shown.slice(0, -1).join(', ')} and ${last}`;
}

/** "1 key", "3 keys". */
export function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? '' : 's'}`;
}

/** A sentence with its first letter large. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The names of keys as a list: "left index home and left middle home". */
export function keysInWords(keymap: Keymap, ids: readonly string[], most = 6): string {
  return listed(
    ids.map((id) => keyName(keymap.board, id)),
    most,
  );
}

/** What a code is called on the typist's computer: the character it gives there, else its plain English name. */
export function codeInWords(host: HostLayout, code: Code): string {
  const output = host.outputOf(code, { shift: false, level3: false, caps: false });
  const isVisible = output.kind === 'char' && /^[\p{L}\p{N}\p{P}\p{S}]$/u.test(output.char);
  if (!isVisible || code.startsWith('Numpad')) return codeName(code);
  return output.kind === 'char' ? output.char.toUpperCase() : codeName(code);
}

/** A character, named where it would not be seen. */
export function charInWords(char: string): string {
  if (char === ' ') return 'space';
  if (char === '\u00a0') return 'no-break space';
  return char;
}

/** An action in a few words for a finding's sentence. */
export function actionInWords(keymap: Keymap, host: HostLayout, action: Action): string {
  switch (action.do) {
    case 'key':
      return [...(action.with ?? []).map(codeName), codeInWords(host, action.code)].join(' + ');
    case 'char':
      return charInWords(action.char);
    case 'text':
      return `the text “${action.text}”`;
    case 'layer':
      return `${layerWords(keymap, action.layer)} (${action.mode === 'while-held' ? 'while held' : action.mode})`;
    case 'modifier':
      return `${codeName(action.code)} (${action.mode})`;
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

/** A need as a person says it: "“é”", "Page up", "Control + Alt + Delete". */
export function needInWords(host: HostLayout, need: Need): string {
  if (need.kind === 'char') return need.char === ' ' ? 'space' : `“${need.char}”`;
  if (need.kind === 'key') return codeName(need.code);
  return [...need.modifiers, codeInWords(host, need.code)].join(' + ');
}
