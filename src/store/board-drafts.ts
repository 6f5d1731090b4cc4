import { create } from 'zustand';
import { type BoardDraft, draftOf, keysBecome, rebased } from '../core/board/draft.ts';
import { isMirrored } from '../core/board/partners.ts';
import type { Board, KeyId } from '../core/keymap/types.ts';
import { useBench } from './bench.ts';
import { keepWork, keptWork } from './board-works-kept.ts';
import { indexedDbOrMemory } from './keeping/key-value.ts';

/** One undoable step of the work on a board: its name and the draft before it. */
interface DraftStep {
  readonly title: string;
  readonly draft: BoardDraft;
}

/** The work on one design's board, apart from the design until it is used. */
export interface BoardWork {
  readonly draft: BoardDraft;
  readonly past: readonly DraftStep[];
  readonly future: readonly DraftStep[];
  readonly selected: readonly KeyId[];
  /** What is done by hand to one half is done to the other as in a mirror. */
  readonly alike: boolean;
}

interface BoardDraftsState {
  /** The board is being worked on in place of the keys. */
  readonly isOpen: boolean;
  /** By the id of the design, so that looking at another design loses nothing. */
  readonly works: Readonly<Record<string, BoardWork>>;
  /** What a gesture or a slider would make, while it goes on. */
  readonly preview: BoardDraft | null;
}

interface BoardDraftsActions {
  open(): void;
  /** Back to the keys; the work is kept. */
  close(): void;
  show(preview: BoardDraft | null): void;
  /** Makes a step; one that changes nothing is none. */
  change(title: string, draft: BoardDraft, selected?: readonly KeyId[]): void;
  undo(): void;
  redo(): void;
  select(keys: readonly KeyId[]): void;
  setAlike(alike: boolean): void;
  /** Puts the board under the design as one step of it. */
  use(): void;
  /** Lets the work on a design go that was deleted. */
  forget(designId: string): Promise<void>;
}

/** How many steps of the work can be undone. */
const STEPS = 300;

const { values } = indexedDbOrMemory({ database: 'handful boards', store: 'boards' });

/** A browser that keeps nothing says so of the designs already; the work is there while the page is. */
function notKept(): void {}

/** Boards that are being worked on. Where each of them stands is kept, the steps live as long as the page. */
export const useBoardDrafts = create<BoardDraftsState & BoardDraftsActions>()((set, get) => {
  const work = () => workOn(get().works, useBench.getState());
  const put = (next: BoardWork) => {
    const { designId } = useBench.getState();
    set((state) => ({ works: { ...state.works, [designId]: next }, preview: null }));
    void keepWork(values, designId, next).catch(notKept);
  };
  /** What an earlier visit left unfinished, unless something was begun since. */
  const bringBack = async () => {
    const { designId } = useBench.getState();
    const kept = await keptWork(values, designId).catch(() => null);
    if (kept === null || Object.hasOwn(get().works, designId)) return;
    const work = { ...kept, past: [], future: [], selected: [] };
    set((state) => ({ works: { ...state.works, [designId]: work } }));
  };
  return {
    isOpen: false,
    works: {},
    preview: null,
    open: () => {
      set({ isOpen: true, preview: null });
      void bringBack();
    },
    close: () => set({ isOpen: false, preview: null }),
    show: (preview) => set({ preview }),
    change: (title, draft, selected) => {
      const now = work();
      const past = [...now.past, { title, draft: now.draft }].slice(-STEPS);
      const next = { ...now, draft, past, future: [], selected: selected ?? now.selected };
      if (isSameBoard(draft.board, now.draft.board)) set({ preview: null });
      else put(withPresentKeys(next));
    },
    undo: () => {
      const now = work();
      const step = now.past.at(-1);
      if (step === undefined) return;
      const future = [{ title: step.title, draft: now.draft }, ...now.future];
      put(withPresentKeys({ ...now, draft: step.draft, past: now.past.slice(0, -1), future }));
    },
    redo: () => {
      const now = work();
      const [step, ...future] = now.future;
      if (step === undefined) return;
      const past = [...now.past, { title: step.title, draft: now.draft }];
      put(withPresentKeys({ ...now, draft: step.draft, past, future }));
    },
    select: (selected) => put({ ...work(), selected }),
    setAlike: (alike) => put({ ...work(), alike }),
    use: () => {
      const { draft } = work();
      const { edit, keymap } = useBench.getState();
      edit({ edit: 'set-board', board: draft.board, became: keysBecome(draft) });
      // Refused, for instance because the design is open in another tab: the work is still there.
      if (useBench.getState().keymap === keymap) return;
      set({ isOpen: false, preview: null });
      void get().forget(useBench.getState().designId).catch(notKept);
    },
    forget: async (designId) => {
      set((state) => ({ works: without(state.works, designId) }));
      await keepWork(values, designId, null);
    },
  };
});

/** The work on the open design's board: what was begun, else its board as it is. */
export function workOn(
  works: BoardDraftsState['works'],
  { designId, keymap }: { readonly designId: string; readonly keymap: { readonly board: Board } },
): BoardWork {
  const known = Object.hasOwn(works, designId) ? works[designId] : undefined;
  const { board } = keymap;
  if (known === undefined) {
    return { draft: draftOf(board), past: [], future: [], selected: [], alike: isMirrored(board) };
  }
  if (known.draft.origin === board) return known;
  // An unchanged draft goes along with the design's board.
  if (isSameBoard(known.draft.board, known.draft.origin)) return { ...known, draft: draftOf(board) };
  return { ...known, draft: rebased(known.draft, board) };
}

function isSameBoard(one: Board, other: Board): boolean {
  return one === other || JSON.stringify(one) === JSON.stringify(other);
}

function without(works: BoardDraftsState['works'], designId: string): BoardDraftsState['works'] {
  const { [designId]: _, ...others } = works;
  return others;
}

function withPresentKeys(work: BoardWork): BoardWork {
  const there = new Set(work.draft.board.keys.map(({ id }) => id));
  return { ...work, selected: work.selected.filter((id) => there.has(id)) };
}
