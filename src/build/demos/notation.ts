import { boardRows } from '../../core/board/rows.ts';
import { isCode, isModifier } from '../../core/keymap/codes.ts';
import { isOneCharacter } from '../../core/keymap/need.ts';
import type { Action, Binding, Board, Layer } from '../../core/keymap/types.ts';

/**
 * A layer drawn as it lies on the board: one line a row, one word a key. A word is a tap, or a tap, `⇩` and a hold.
 *
 * `a` a character · `Enter` a key · `ControlLeft+KeyC` a key with modifiers · `@moves` a layer while held ·
 * `@moves:lock`, `@moves:latch` · `ShiftLeft:latch`, `ShiftLeft:lock` · `[Radio]` a function of the board ·
 * `∅` blank · `·` no binding, so it falls through · `⇩` with nothing before it: a hold alone.
 */
export function drawnPlaces(
  board: Board,
  drawing: string,
  timing: (word: string) => Partial<Binding> = () => ({}),
): Layer['places'] {
  const words = drawing.trim().split(/\s+/);
  const keys = boardRows(board).flat();
  if (words.length !== keys.length) throw new Error(`${words.length} words for ${keys.length} keys`);
  const places: Record<string, Binding> = {};
  for (const [at, key] of keys.entries()) {
    const word = words[at] ?? '·';
    if (word !== '·') places[key] = { ...bindingOf(word), ...timing(word) };
  }
  return places;
}

function bindingOf(word: string): Binding {
  const [tap = '', hold] = word.split('⇩');
  return {
    ...(tap === '' ? {} : { tap: actionOf(tap) }),
    ...(hold === undefined ? {} : { hold: actionOf(hold) }),
  };
}

/** Reads one action of the notation; throws at what it does not know, since drawings are sources. */
export function actionOf(word: string): Action {
  if (word === '∅') return { do: 'nothing' };
  if (isOneCharacter(word)) return { do: 'char', char: word };
  if (isCode(word)) return { do: 'key', code: word };
  if (word.startsWith('@')) return layerAction(word.slice(1));
  if (/^\[.+\]$/.test(word)) return { do: 'board', label: word.slice(1, -1).replaceAll('_', ' ') };
  if (word.includes(':')) return modifierAction(word);
  return keyWithModifiers(word);
}

function layerAction(word: string): Action {
  const [layer = '', mode] = word.split(':');
  return { do: 'layer', layer, mode: mode === 'lock' || mode === 'latch' ? mode : 'while-held' };
}

function modifierAction(word: string): Action {
  const [code = '', mode] = word.split(':');
  if (!isModifier(code) || (mode !== 'latch' && mode !== 'lock')) throw new Error(`no action: ${word}`);
  return { do: 'modifier', code, mode };
}

function keyWithModifiers(word: string): Action {
  const parts = word.split('+');
  const code = parts.at(-1) ?? '';
  const modifiers = parts.slice(0, -1).filter(isModifier);
  if (!isCode(code) || modifiers.length !== parts.length - 1) throw new Error(`no action: ${word}`);
  return { do: 'key', code, with: modifiers };
}
