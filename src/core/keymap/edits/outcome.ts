import { fail, ok, type Result } from '../../base/result.ts';
import { layerWords } from '../action-words.ts';
import type { Edit, EditOutcome } from '../edit.ts';
import { hasKey, layerById } from '../lookup.ts';
import type { Board, KeyId, Keymap, LayerId, Place } from '../types.ts';

/** The edits of one name. */
export type EditNamed<Name extends Edit['edit']> = Extract<Edit, { readonly edit: Name }>;

/**
 * What a person calls a key of a board. Whoever makes an edit hands it in: this room knows keys by their ids only, and
 * a board may lack the id it asks for.
 */
export type NameKey = (board: Board, key: KeyId) => string;

/** What an edit gives back: the outcome, or the sentence why it was refused. */
export type Edited = Result<EditOutcome, string>;

/**
 * Keeps a sentence on one line. Among several edits it may name what an earlier one called with a line break (refused
 * only if it is still there at the end), and the line break is a character that a key may type.
 */
function onOneLine(sentence: string): string {
  return sentence.replace(/[\n\r]+/g, ' ');
}

/** An edit that was made. */
export function made(keymap: Keymap, title: string, alongside: readonly string[] = []): Edited {
  return ok({ keymap, title: onOneLine(title), alongside: alongside.map(onOneLine) });
}

/** An edit that was refused, with a sentence for the typist. */
export function refused(sentence: string): Edited {
  return fail(onOneLine(sentence));
}

/** Why a layer cannot be edited: it does not exist. Undefined where it does. */
export function missingLayer(keymap: Keymap, id: LayerId): string | undefined {
  return layerById(keymap, id) ? undefined : `There is no layer with the id ${JSON.stringify(id)}.`;
}

/** Why a place cannot take a binding: its layer or its key does not exist. Undefined where both do. */
export function missingPlace(keymap: Keymap, place: Place): string | undefined {
  const layer = missingLayer(keymap, place.layer);
  if (layer !== undefined || hasKey(keymap, place.key)) return layer;
  return `The board has no key with the id ${JSON.stringify(place.key)}.`;
}

/** A place in words: "left ring top on Base". */
export function placeWords(keymap: Keymap, place: Place, nameKey: NameKey): string {
  return `${nameKey(keymap.board, place.key)} on ${layerWords(keymap, place.layer)}`;
}

/** Things in a row for a sentence, six at most: "a, b, c", "a, b, c, d, e, f and 3 more". */
export function listWords(things: readonly string[]): string {
  const shown = things.slice(0, 6).join(', ');
  return things.length > 6 ? `${shown} and ${things.length - 6} more` : shown;
}
