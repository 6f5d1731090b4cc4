import { useEffect } from 'react';
import { create, useStore } from 'zustand';
import { samePlain } from '../../core/base/same-plain.ts';
import { type KeyRenaming, renamed } from '../../core/board/key-renaming.ts';
import { type Overlay, readyOverlays } from '../../core/board/overlay.ts';
import type { Board } from '../../core/keymap/types.ts';
import { indexedDbOrMemory } from '../keeping/key-value.ts';
import { type KeptThings, makeKeptThings } from './kept-things.ts';

/** An overlay of the typist's own, or the choice of one. */
type KeptOverlay = Omit<Overlay, 'id'>;

const { values } = indexedDbOrMemory({ database: 'handful overlays', store: 'overlays' });

/** Takes a stored overlay if it is one. */
export function readOverlay(stored: unknown): KeptOverlay | null {
  if (typeof stored !== 'object' || stored === null || !('title' in stored) || !('keys' in stored))
    return null;
  const { title, keys } = stored;
  if (typeof title !== 'string' || typeof keys !== 'object' || keys === null) return null;
  const pairs = Object.entries(keys).filter((pair): pair is [string, string] => typeof pair[1] === 'string');
  return { title, keys: Object.fromEntries(pairs) };
}

export const keptOverlays = makeKeptThings<KeptOverlay>(
  values,
  readOverlay,
  () => Date.now(),
  () => crypto.randomUUID(),
);

/** The typist's own overlays. */
export function useKeptOverlays(): KeptThings<KeptOverlay> {
  useEffect(() => void keptOverlays.getState().start(), []);
  return useStore(keptOverlays);
}

/** All overlays that fit a board: the ready ones, then the typist's own that name one of its keys at least. */
export function overlaysFor(board: Board, kept: KeptThings<KeptOverlay>['things']): readonly Overlay[] {
  const ids = new Set(board.keys.map(({ id }) => id));
  const own = kept.map(({ id, value }) => ({ id, ...value }));
  return [
    ...readyOverlays(board),
    ...own.filter(({ keys }) => Object.values(keys).some((key) => ids.has(key))),
  ];
}

const CHOSEN = 'chosen';

interface ChosenOverlay {
  readonly id: string;
  choose(id: string): void;
}

/** Which overlay was chosen last, kept beside them. Until one is chosen it is the first of the ready ones. */
const useChosen = create<ChosenOverlay>()((set) => {
  void values.get(CHOSEN).then((id) => {
    if (typeof id === 'string') set((now) => (now.id === '' ? { id } : {}));
  });
  return {
    id: '',
    choose: (id) => {
      set({ id });
      // A choice that cannot be kept is there for this visit.
      values.set(CHOSEN, id).catch(() => {});
    },
  };
});

/**
 * Keeps the typist's own overlays that fit a board also for the board that it became, with its keys' ids; where one of
 * those was chosen, the other is. An overlay stands for no design, so those for the board as it was stay.
 */
export async function overlaysFollow(before: Board, renaming: KeyRenaming): Promise<void> {
  await keptOverlays.getState().start();
  const ids = new Set(before.keys.map(({ id }) => id));
  for (const { id, value } of keptOverlays.getState().things) {
    const following = renamedOverlay(value, renaming);
    const fits = Object.values(value.keys).some((key) => ids.has(key));
    if (!fits || samePlain(following.keys, value.keys)) continue;
    const { things, keep } = keptOverlays.getState();
    const known = things.find((each) => samePlain(each.value.keys, following.keys));
    const now = known?.id ?? (await keep(following));
    if (useChosen.getState().id === id) useChosen.getState().choose(now);
  }
}

/** An overlay for a board whose keys were given other ids. */
export function renamedOverlay({ title, keys }: KeptOverlay, renaming: KeyRenaming): KeptOverlay {
  const to = Object.entries(keys).map(([code, key]) => [code, renamed(renaming, key)]);
  return { title: `${title}, changed board`, keys: Object.fromEntries(to) };
}

/** The overlay in force on a board. */
export function useChosenOverlay(board: Board): {
  readonly overlay: Overlay;
  readonly choose: (id: string) => void;
} {
  const { things } = useKeptOverlays();
  const { id, choose } = useChosen();
  const all = overlaysFor(board, things);
  const overlay = all.find((each) => each.id === id) ?? all[0] ?? { id: '', title: '', keys: {} };
  return { overlay, choose };
}
