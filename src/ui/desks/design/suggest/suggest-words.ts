import { keyName } from '../../../../core/board/key-name.ts';
import type { Board, KeyId, Keymap } from '../../../../core/keymap/types.ts';
import type { ChordSuggestion, ChordSuggestions, ChordWish } from '../../../../core/typist/suggest-chords.ts';
import { reasonsOf } from '../../../../core/typist/suggestion-words.ts';

/** A candidate as it is shown. */
export interface CandidateRow {
  readonly id: string;
  readonly keys: readonly KeyId[];
  readonly name: string;
  readonly misfires: string;
  readonly misses: string;
  readonly speaksFor: string;
  readonly speaksAgainst: string;
}

/** The keys of a chord by their names. */
export function keysWords(board: Board, keys: readonly KeyId[]): string {
  return keys.map((key) => keyName(board, key)).join(' + ');
}

/** The candidates, the best first. */
export function candidateRows(keymap: Keymap, { suggestions }: ChordSuggestions): readonly CandidateRow[] {
  return suggestions.map((suggestion) => {
    const reasons = reasonsOf(keymap, suggestion);
    const that = (speaks: 'for' | 'against') =>
      reasons.flatMap((reason) => (reason.speaks === speaks ? [reason.text] : [])).join(', ');
    return {
      id: suggestion.keys.join(' '),
      keys: suggestion.keys,
      name: keysWords(keymap.board, suggestion.keys),
      misfires: misfiresWords(suggestion),
      misses: `about ${Math.round(suggestion.missesPer1000Uses)} misses in 1,000 uses`,
      speaksFor: that('for'),
      speaksAgainst: that('against'),
    };
  });
}

/** Rates so small are below what the counts of a text can tell, per 1,000 words. */
const NOTHING = 0.005;

function misfiresWords({ misfiresPer1000Words: rate }: ChordSuggestion): string {
  if (rate < NOTHING) return 'hardly ever set off by typing';
  const text = rate < 1 ? rate.toFixed(2) : rate.toFixed(rate < 10 ? 1 : 0);
  return `about ${text} misfires in 1,000 words`;
}

/** What was looked at, in a sentence. */
export function lookedAt({ considered, suggestions }: ChordSuggestions, title: string): string {
  const sets = considered.toLocaleString('en');
  return suggestions.length === 0
    ? `None of ${sets} sets of keys will do: all of them are chords already.`
    : `The best of ${sets} sets of keys, for ${title}. Of misfires a factor of two up or down is to be reckoned with.`;
}

/** How many keys a chord may have, as it is chosen. */
export type SizeChoice = '2' | '3' | '4' | '2-4';

export const SIZES: readonly { readonly value: SizeChoice; readonly label: string }[] = [
  { value: '2-4', label: '2 to 4' },
  { value: '2', label: '2' },
  { value: '3', label: '3' },
  { value: '4', label: '4' },
];

/** Fewest and most keys of a choice. */
export function sizesOf(choice: SizeChoice): ChordWish['keys'] {
  const [least = 2, most = least] = choice.split('-').map(Number);
  return [least, most];
}

export const HANDS: readonly { readonly value: ChordWish['hands']; readonly label: string }[] = [
  { value: 'any', label: 'either' },
  { value: 'one', label: 'one hand' },
  { value: 'two', label: 'both hands' },
];
