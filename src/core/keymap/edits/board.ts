import { castDraft, type Draft, produce } from 'immer';
import { hasKey } from '../lookup.ts';
import type { Board, Chord, ChordId, KeyId, Keymap } from '../types.ts';
import { unpinned } from './diary-pins.ts';
import { type Edited, type EditNamed, listWords, made, type NameKey, refused } from './outcome.ts';

/**
 * Puts another board under the design. What is bound, made a chord of or noted on keys that stay goes with them;
 * bindings and chords that lose a key go, and are told.
 */
export function setBoard(
  keymap: Keymap,
  { board, became }: EditNamed<'set-board'>,
  nameKey: NameKey,
): Edited {
  const wrong = became && wrongBecoming(keymap, board, became);
  if (wrong !== undefined) return refused(wrong);
  const kept = new Set(became ? Object.keys(became) : board.keys.map(({ id }) => id));
  const named = (key: KeyId) => nameKey(keymap.board, key);
  const alongside: string[] = [];
  const changed = new Set<ChordId>();
  const next = produce(keymap, (draft) => {
    alongside.push(
      ...dropBindings(draft, kept, named),
      ...dropFromChords(draft, kept, changed, named),
      ...unpinned(draft, kept),
    );
    if (became) rekey(draft, became);
    draft.board = castDraft(board);
  });
  alongside.push(...alikeNow(next.chords ?? [], changed));
  return made(next, `Change the board to ${board.name}`, alongside);
}

/** Why keys cannot become those: one of either is not there, or two would be one. Undefined where they can. */
function wrongBecoming(keymap: Keymap, board: Board, became: Readonly<Record<KeyId, KeyId>>) {
  const ids = new Set(board.keys.map(({ id }) => id));
  const taken = new Set<KeyId>();
  for (const [from, to] of Object.entries(became)) {
    if (!hasKey(keymap, from)) return `The board has no key with the id ${JSON.stringify(from)}.`;
    if (!ids.has(to)) return `The new board has no key with the id ${JSON.stringify(to)}.`;
    if (taken.has(to)) return `Two keys would become the key ${JSON.stringify(to)}.`;
    taken.add(to);
  }
  return undefined;
}

/** Gives everything that names a key the id that the key becomes; all of them stay. */
function rekey(draft: Draft<Keymap>, became: Readonly<Record<KeyId, KeyId>>): void {
  const to = (id: KeyId) => (Object.hasOwn(became, id) ? became[id] : undefined) ?? id;
  for (const layer of draft.layers) {
    if (Object.keys(layer.places).every((key) => to(key) === key)) continue;
    layer.places = Object.fromEntries(Object.entries(layer.places).map(([key, at]) => [to(key), at]));
  }
  for (const chord of draft.chords ?? []) chord.keys = chord.keys.map(to);
  for (const note of draft.diary ?? []) if (note.keys) note.keys = note.keys.map(to);
}

/** Deletes a key of the board with its bindings, and takes it out of chords. */
export function deleteKey(keymap: Keymap, { key }: EditNamed<'delete-key'>, nameKey: NameKey): Edited {
  if (!hasKey(keymap, key)) return refused(`The board has no key with the id ${JSON.stringify(key)}.`);
  const left = keymap.board.keys.filter(({ id }) => id !== key);
  if (left.length === 0) return refused('A board has one key at least.');
  const { madeFrom, ...board } = keymap.board;
  const put = setBoard(keymap, { edit: 'set-board', board: { ...board, keys: left } }, nameKey);
  if (!put.ok) return put;
  const apart = madeFrom ? ['The board can no longer be changed by its parameters.'] : [];
  return made(put.value.keymap, `Delete the key ${nameKey(keymap.board, key)}`, [
    ...put.value.alongside,
    ...apart,
  ]);
}

/** A key of the board as it was, in words. */
type Named = (key: KeyId) => string;

function dropBindings(draft: Draft<Keymap>, kept: ReadonlySet<KeyId>, named: Named): string[] {
  let count = 0;
  const lost = new Set<KeyId>();
  for (const layer of draft.layers) {
    for (const key of Object.keys(layer.places)) {
      if (kept.has(key)) continue;
      delete layer.places[key];
      lost.add(key);
      count += 1;
    }
  }
  if (count === 0) return [];
  return [
    `Took away ${count === 1 ? 'one binding' : `${count} bindings`} of ${listWords([...lost].map(named))}.`,
  ];
}

function dropFromChords(
  draft: Draft<Keymap>,
  kept: ReadonlySet<KeyId>,
  changed: Set<ChordId>,
  named: Named,
): string[] {
  const sentences: string[] = [];
  if (!draft.chords) return sentences;
  draft.chords = draft.chords.filter((chord) => {
    const left = chord.keys.filter((key) => kept.has(key));
    if (left.length === chord.keys.length) return true;
    const lost = listWords(chord.keys.filter((key) => !kept.has(key)).map(named));
    const words = `the chord ${chord.name ?? chord.id}`;
    chord.keys = left;
    if (left.length < 2) sentences.push(`Deleted ${words}, which lost ${lost}.`);
    else sentences.push(`Took ${lost} out of ${words}.`);
    changed.add(chord.id);
    return left.length >= 2;
  });
  return sentences;
}

/** Tells of changed chords that now have the same keys as another one which is live on a layer with them. */
function alikeNow(chords: readonly Chord[], changed: ReadonlySet<ChordId>): string[] {
  const sentences: string[] = [];
  chords.forEach((chord, index) => {
    for (const other of chords.slice(0, index)) {
      if (!changed.has(chord.id) && !changed.has(other.id)) continue;
      if (!sameKeys(chord, other) || !meet(chord, other)) continue;
      const names = `${other.name ?? other.id} and ${chord.name ?? chord.id}`;
      sentences.push(`The chords ${names} have the same keys now: only the first of them comes.`);
    }
  });
  return sentences;
}

function sameKeys(one: Chord, other: Chord): boolean {
  return one.keys.length === other.keys.length && one.keys.every((key) => other.keys.includes(key));
}

function meet(one: Chord, other: Chord): boolean {
  return !one.layers || !other.layers || one.layers.some((layer) => other.layers?.includes(layer));
}
