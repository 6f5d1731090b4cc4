import { keyName } from '../board/key-name.ts';
import type { LayerId } from '../keymap/types.ts';
import type { Facts } from './facts.ts';
import type { EntryPoint } from './layer-entry-points.ts';
import { has } from './layer-grid.ts';

/** How one gets into a layer, in a sentence, and whether anybody can. */
export interface EntryWords {
  readonly sentence: string;
  readonly canEnter: boolean;
}

const SHOWN = 2;

const MODES = { 'while-held': 'held by', latch: 'for one key by', lock: 'locked by' } as const;

/** What of the facts the words of an entry are made of. */
type EntryFacts = Pick<Facts, 'keymap' | 'grid' | 'reach' | 'chords'>;

/** "Held by left inner thumb, or locked by left outer thumb + right outer thumb together." */
export function entryWords(facts: EntryFacts, layerId: LayerId): EntryWords {
  const number = facts.grid.layerNumber.get(layerId) ?? 0;
  if (number === 0) return { sentence: 'Always on.', canEnter: true };
  const ways = [
    ...facts.reach.entries
      .filter((entry) => entry.target === number && works(facts, entry))
      .map((entry) => wayWords(facts, entry)),
    ...conditionWords(facts, number),
  ];
  const unique = [...new Set(ways)];
  if (unique.length === 0)
    return { sentence: 'Nobody can get in: no key or chord turns it on.', canEnter: false };
  const shown = unique.slice(0, SHOWN);
  if (unique.length > SHOWN)
    shown.push(`${unique.length - SHOWN} more ${unique.length - SHOWN === 1 ? 'way' : 'ways'}`);
  const text = shown.join(', or ');
  return {
    sentence: `${text.charAt(0).toUpperCase()}${text.slice(1)}.`,
    canEnter: has(facts.reach.entered, number),
  };
}

function works({ reach, chords }: EntryFacts, entry: EntryPoint): boolean {
  if (entry.chord !== null) return reach.fires[chords.indexOf(entry.chord)] === true;
  return entry.keys.every((key) => has(reach.reached[key] ?? 0, entry.layer));
}

function wayWords({ keymap }: EntryFacts, entry: EntryPoint): string {
  const keys = entry.keys.map((key) => keyName(keymap.board, keymap.board.keys[key]?.id ?? ''));
  const from = entry.layer > 0 ? ` on ${keymap.layers[entry.layer]?.name ?? ''}` : '';
  const together = keys.length > 1 ? ' together' : '';
  return `${MODES[entry.mode]} ${keys.join(' + ')}${together}${from}`;
}

function conditionWords({ keymap, reach }: EntryFacts, number: number): readonly string[] {
  const layer = keymap.layers[number];
  if (layer?.onWhile === undefined || !has(reach.entered, number)) return [];
  const names = layer.onWhile.map((id) => keymap.layers.find((one) => one.id === id)?.name ?? id);
  return [`on while ${names.join(' and ')} are on`];
}
