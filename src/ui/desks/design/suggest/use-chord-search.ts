import { useEffect } from 'react';
import { useStore } from 'zustand';
import type { Keymap } from '../../../../core/keymap/types.ts';
import { type ChordWish, USUAL_WISH } from '../../../../core/typist/suggest-chords.ts';
import { useHost } from '../../../../store/hosts.ts';
import { chordSearch } from '../../../../store/suggest/chord-search.ts';
import { useTypist } from '../../../../store/typist.ts';

/** How long the wish must have stood still before it is searched for, ms. */
const SETTLED_MS = 200;

/** What is asked for, as far as the typist chooses it. */
export type ChosenWish = Pick<ChordWish, 'keys' | 'windowMs' | 'layers' | 'hands'>;

/** Searches whenever the wish, the design, the typist or the text has changed; `isWanted` says whether at all. */
export function useChordSearch(keymap: Keymap, wish: ChosenWish, isWanted: boolean) {
  const { person, typed } = useTypist();
  const { table } = useHost(keymap);
  const { counts } = typed;
  const { windowMs, hands } = wish;
  const [least, most] = wish.keys;
  const layers = wish.layers.join(' ');
  useEffect(() => {
    if (!isWanted) return chordSearch.getState().clear();
    if (counts === null) return;
    const search = {
      keymap,
      table,
      counts,
      person,
      wish: { ...USUAL_WISH, keys: [least, most] as const, windowMs, hands, layers: layers.split(' ') },
    };
    const timer = setTimeout(() => void chordSearch.getState().run(search), SETTLED_MS);
    return () => clearTimeout(timer);
  }, [isWanted, keymap, table, counts, person, least, most, windowMs, hands, layers]);
  useEffect(() => () => chordSearch.getState().clear(), []);
  return useStore(chordSearch);
}
