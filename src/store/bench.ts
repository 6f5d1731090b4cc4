import { create } from 'zustand';
import { keyName } from '../core/board/key-name.ts';
import { type KeyRenaming, keyRenaming } from '../core/board/key-renaming.ts';
import { applyEdit } from '../core/keymap/apply-edit.ts';
import type { BenchActions, BenchState, Notice } from './bench-state.ts';
import { editOfDrop } from './edit-of-drop.ts';
import { type History, redone, renamingOfRedo, renamingOfUndo, undone, withStep } from './history.ts';
import { PLACEHOLDER_ID, placeholderKeymap } from './placeholder.ts';
import { pruneView } from './prune-view.ts';

/** How many notices stand at most; the oldest gives way. */
const NOTICES = 4;

const READ_ONLY = 'This design is open in another tab, so it can only be looked at here.';

let nextNotice = 1;

type Change = Partial<BenchState>;

/** The state with a notice added. */
function withNotice(notices: readonly Notice[], notice: Omit<Notice, 'id'>): readonly Notice[] {
  return [...notices, { ...notice, id: nextNotice++ }].slice(-NOTICES);
}

/** After a step, an older notice's Undo would take back the wrong one. */
function withoutUndo(notices: readonly Notice[]): readonly Notice[] {
  return notices.map((notice) => (notice.canUndo ? { ...notice, canUndo: false } : notice));
}

function refusal(state: BenchState, text: string): Change {
  return { notices: withNotice(state.notices, { tone: 'refused', text, canUndo: false }) };
}

/** The change of state that moving to another point of the history makes. */
function movedTo(state: BenchState, history: History | null, renaming: KeyRenaming | null): Change {
  if (history === null) return {};
  return {
    ...history,
    renaming,
    ...pruneView(state, state.keymap, history.keymap),
    notices: withoutUndo(state.notices),
  };
}

function edited(state: BenchState, edit: Parameters<BenchActions['edit']>[0]): Change {
  if (state.readOnly) return refusal(state, READ_ONLY);
  const outcome = applyEdit(state.keymap, edit, keyName);
  if (!outcome.ok) return refusal(state, outcome.problem);
  const { keymap, title, alongside } = outcome.value;
  if (keymap === state.keymap) return {};
  const became = edit.edit === 'set-board' ? edit.became : undefined;
  const renaming = became ? keyRenaming(state.keymap.board, keymap.board, became) : null;
  const moved = movedTo(state, withStep(state, title, keymap, became), renaming);
  if (alongside.length === 0) return moved;
  const text = [`${title}.`, ...alongside].join(' ');
  return {
    ...moved,
    notices: withNotice(withoutUndo(state.notices), { tone: 'done', text, canUndo: true }),
  };
}

/** The open design, its history and what is looked at; see `BenchState` and `BenchActions`. */
export const useBench = create<BenchState & BenchActions>()((set, get) => ({
  designId: PLACEHOLDER_ID,
  keymap: placeholderKeymap,
  past: [],
  future: [],
  frontLayer: 'base',
  focusedKey: null,
  selectedKeys: [],
  openCard: null,
  carried: null,
  lit: null,
  notices: [],
  readOnly: false,
  renaming: null,

  edit: (edit) => set((state) => edited(state, edit)),
  undo: () =>
    set((state) =>
      state.readOnly ? refusal(state, READ_ONLY) : movedTo(state, undone(state), renamingOfUndo(state)),
    ),
  redo: () =>
    set((state) =>
      state.readOnly ? refusal(state, READ_ONLY) : movedTo(state, redone(state), renamingOfRedo(state)),
    ),
  showLayer: (layer) =>
    set((state) => (state.keymap.layers.some(({ id }) => id === layer) ? { frontLayer: layer } : {})),
  focusKey: (focusedKey) => set({ focusedKey }),
  selectKeys: (keys, how) =>
    set((state) => ({ selectedKeys: how === 'only' ? keys : toggled(state.selectedKeys, keys) })),
  openCardOf: (openCard) => set({ openCard }),
  carry: (carried) => set({ carried }),
  putDown: (target, what) => {
    const { carried, keymap, frontLayer } = get();
    const thing = what ?? carried;
    set({ carried: null });
    const edit = thing === null ? null : editOfDrop(keymap, frontLayer, target, thing);
    if (edit !== null) get().edit(edit);
  },
  light: (lit) => set({ lit }),
  notify: (notice) => set((state) => ({ notices: withNotice(state.notices, notice) })),
  dismiss: (id) => set((state) => ({ notices: state.notices.filter((notice) => notice.id !== id) })),
  open: (designId, keymap, history = { past: [], future: [] }) =>
    set((state) => ({
      designId,
      keymap,
      past: history.past,
      future: history.future,
      frontLayer: keymap.layers[0]?.id ?? '',
      focusedKey: null,
      selectedKeys: [],
      openCard: null,
      carried: null,
      lit: null,
      notices: withoutUndo(state.notices),
      readOnly: false,
      renaming: null,
    })),
  setReadOnly: (readOnly) => set({ readOnly }),
}));

function toggled<Id>(selected: readonly Id[], ids: readonly Id[]): readonly Id[] {
  const left = selected.filter((id) => !ids.includes(id));
  return [...left, ...ids.filter((id) => !selected.includes(id))];
}
