import { keyName } from '../board/key-name.ts';
import { layerWords } from '../keymap/action-words.ts';
import { timingOfChord } from '../keymap/timing.ts';
import type { Chord, Keymap } from '../keymap/types.ts';
import { actionWords, type BothTold, became, briefly, type Told, timingWords } from './change-words.ts';
import type { Pair } from './match.ts';

/** The keys of a chord by name: "left index home + left middle home". */
export function chordKeysWords(keymap: Keymap, { keys }: Chord): string {
  return keys.map((key) => keyName(keymap.board, key)).join(' + ');
}

/** What became of a chord: "Tab is new, window 45 ms", or the fields that differ. */
export function chordWords({ before, after }: Pair<Chord>, told: BothTold): string {
  if (before === null && after !== null)
    return `${briefly(after.action, told.after)} is new, window ${after.windowMs} ms`;
  if (before === null || after === null)
    return before === null ? '' : `${briefly(before.action, told.before)} is gone`;
  const parts = [
    actionWords(before.action, after.action, told),
    labelled('under Shift', actionWords(before.onShift, after.onShift, told)),
    labelled('hold', actionWords(before.hold, after.hold, told)),
    keysChange(before, after, told),
    before.windowMs === after.windowMs ? null : `window ${before.windowMs} ms became ${after.windowMs} ms`,
    (before.quietBeforeMs ?? 0) === (after.quietBeforeMs ?? 0)
      ? null
      : `quiet before ${before.quietBeforeMs ?? 0} ms became ${after.quietBeforeMs ?? 0} ms`,
    became(RELEASE[before.release ?? 'first-up'], RELEASE[after.release ?? 'first-up']),
    ...(before.hold === undefined || after.hold === undefined
      ? []
      : timingWords(timingOfChord(told.before.keymap, before), timingOfChord(told.after.keymap, after))),
    became(`live on ${liveOn(before, told.before)}`, `live on ${liveOn(after, told.after)}`),
    before.name === after.name ? null : nameChange(before.name, after.name),
  ];
  return parts.filter((part) => part !== null).join('; ');
}

const RELEASE = {
  'first-up': 'released with the first key',
  'last-up': 'released with the last key',
} as const;

function labelled(label: string, words: string | null): string | null {
  return words === null ? null : `${label}: ${words}`;
}

function keysChange(before: Chord, after: Chord, told: BothTold): string | null {
  if (samePlainSet(before.keys, after.keys)) return null;
  return `${chordKeysWords(told.before.keymap, before)} became ${chordKeysWords(told.after.keymap, after)}`;
}

function samePlainSet(one: readonly string[], other: readonly string[]): boolean {
  return one.length === other.length && one.every((each) => other.includes(each));
}

/** In the order of the stack, however the file lists them. */
function liveOn({ layers }: Chord, { keymap }: Told): string {
  if (layers === undefined) return 'every layer';
  const known = keymap.layers.filter(({ id }) => layers.includes(id));
  return known.map(({ id }) => layerWords(keymap, id)).join(', ');
}

function nameChange(before: string | undefined, after: string | undefined): string {
  if (after === undefined) return 'has no name now';
  return before === undefined ? `is called “${after}” now` : `“${before}” is called “${after}” now`;
}
