import type { KeyRenaming } from '../core/board/key-renaming.ts';
import type { Edit } from '../core/keymap/edit.ts';
import type { Action, Chord, ChordId, KeyId, Keymap, LayerId, Place, Side } from '../core/keymap/types.ts';

/** Something the typist has picked up, by dragging or by a click, to put down on a key. */
export type Carried =
  | { readonly carry: 'action'; readonly action: Action; readonly label: string }
  | { readonly carry: 'binding'; readonly from: Place; readonly label: string };

/** Where a carried thing is put down: a key of the layer in front, on its tap or its hold side. */
export interface Target {
  readonly key: KeyId;
  readonly side: Side;
}

/** What is lit up on the board, because a finding or a need is being shown. Numbers give the order of a route. */
export interface Lit {
  readonly why: string;
  readonly keys: readonly KeyId[];
  readonly chords: readonly ChordId[];
  readonly layers: readonly LayerId[];
  /** Keys in the order in which a route presses them; empty for a finding. */
  readonly order: readonly { readonly key: KeyId; readonly held: boolean }[];
}

/** The card that is open beside a key or a chord; a chord without an id is one being made. */
export type OpenCard =
  | { readonly card: 'key'; readonly key: KeyId }
  | { readonly card: 'chord'; readonly chord: ChordId }
  | { readonly card: 'new-chord'; readonly draft: Omit<Chord, 'id'> };

/** A sentence that is shown for a while and read out; it may offer to undo the step it speaks of. */
export interface Notice {
  readonly id: number;
  readonly tone: 'done' | 'refused' | 'warning';
  readonly text: string;
  readonly canUndo: boolean;
}

/** One undoable step: its name and the keymap as it was before it. */
export interface HistoryStep {
  readonly title: string;
  readonly keymap: Keymap;
  /** Where the step puts another board under the design: which key becomes which. */
  readonly became?: Readonly<Record<KeyId, KeyId>>;
}

/** The open design, its history, and what is looked at. */
export interface BenchState {
  readonly designId: string;
  readonly keymap: Keymap;
  readonly past: readonly HistoryStep[];
  readonly future: readonly HistoryStep[];
  readonly frontLayer: LayerId;
  readonly focusedKey: KeyId | null;
  readonly selectedKeys: readonly KeyId[];
  readonly openCard: OpenCard | null;
  readonly carried: Carried | null;
  readonly lit: Lit | null;
  readonly notices: readonly Notice[];
  /** The design is being edited in another tab: edits are refused here, so that neither overwrites the other. */
  readonly readOnly: boolean;
  /** What keys of the open design were called anew by the last change, undone or redone ones too; null where nothing was. */
  readonly renaming: KeyRenaming | null;
}

/** All that can be done on the bench. Every change of the keymap goes through `edit`, so it is undoable and saved. */
export interface BenchActions {
  edit(edit: Edit): void;
  undo(): void;
  redo(): void;
  showLayer(layer: LayerId): void;
  focusKey(key: KeyId | null): void;
  /** Replaces the selection, or adds to and takes from it. */
  selectKeys(keys: readonly KeyId[], how: 'only' | 'toggle'): void;
  openCardOf(card: OpenCard | null): void;
  carry(what: Carried | null): void;
  /** Puts the given or the carried thing down on the layer in front, and carries nothing afterwards. */
  putDown(target: Target, what?: Carried): void;
  light(lit: Lit | null): void;
  notify(notice: Omit<Notice, 'id'>): void;
  dismiss(id: number): void;
  /**
   * Opens another document in place of the present one (which stays kept under its own id), with the history that leads
   * to it where there is one.
   */
  open(designId: string, keymap: Keymap, history?: Pick<BenchState, 'past' | 'future'>): void;
  setReadOnly(readOnly: boolean): void;
}
