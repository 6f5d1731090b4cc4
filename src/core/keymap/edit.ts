import type {
  Action,
  Binding,
  Board,
  Chord,
  ChordId,
  DiaryNote,
  Host,
  KeyId,
  Keymap,
  Layer,
  LayerId,
  Needs,
  NoteId,
  Place,
  ShiftedAction,
  Side,
  Timing,
} from './types.ts';

/** A change of the timing fields: a value sets a field, null takes it away so that the next wider one holds. */
export type TimingChange = { readonly [Field in keyof Timing]?: Timing[Field] | null };

/** The fields that a chord may go without. */
export type OptionalOfChord = Exclude<keyof Chord, 'id' | 'keys' | 'windowMs' | 'action'>;

/** A change of a chord: a value sets a field, null takes an optional one away. */
export type ChordChange = Partial<Pick<Chord, 'keys' | 'windowMs' | 'action'>> & {
  readonly [Field in OptionalOfChord]?: NonNullable<Chord[Field]> | null;
};

/** A change of a note of the diary: its text, or what it is about; null takes that away. */
export type NoteChange = Partial<Pick<DiaryNote, 'text'>> & {
  readonly [Field in 'keys' | 'layer' | 'chord']?: NonNullable<DiaryNote[Field]> | null;
};

/** A change of a keymap as plain data; `applyEdit` makes it. */
export type Edit =
  | { readonly edit: 'rename-design'; readonly name: string }
  | { readonly edit: 'set-notes'; readonly notes: string }
  | { readonly edit: 'bind'; readonly place: Place; readonly side: Side; readonly action: Action }
  | { readonly edit: 'set-on-shift'; readonly place: Place; readonly action: ShiftedAction | null }
  | { readonly edit: 'unbind'; readonly place: Place; readonly side?: Side }
  | { readonly edit: 'set-binding'; readonly place: Place; readonly binding: Binding }
  | { readonly edit: 'move-binding'; readonly from: Place; readonly to: Place }
  | { readonly edit: 'swap-bindings'; readonly one: Place; readonly other: Place }
  | { readonly edit: 'set-binding-timing'; readonly place: Place; readonly timing: TimingChange }
  | { readonly edit: 'set-timing'; readonly timing: TimingChange }
  | { readonly edit: 'fill-layer'; readonly layer: LayerId; readonly taps: Readonly<Record<KeyId, Action>> }
  | { readonly edit: 'add-layer'; readonly layer: Layer }
  | { readonly edit: 'rename-layer'; readonly layer: LayerId; readonly name: string }
  | { readonly edit: 'delete-layer'; readonly layer: LayerId }
  /** `to`: its place in the new stack, the base layer being 0. */
  | { readonly edit: 'move-layer'; readonly layer: LayerId; readonly to: number }
  /** `id` and `name` are the copy's. */
  | { readonly edit: 'duplicate-layer'; readonly layer: LayerId; readonly id: LayerId; readonly name: string }
  | { readonly edit: 'set-on-while'; readonly layer: LayerId; readonly onWhile: readonly LayerId[] | null }
  | { readonly edit: 'add-chord'; readonly chord: Chord }
  | { readonly edit: 'change-chord'; readonly chord: ChordId; readonly to: ChordChange }
  | { readonly edit: 'delete-chord'; readonly chord: ChordId }
  | {
      readonly edit: 'set-board';
      readonly board: Board;
      /** Which key of the new board each key that stays becomes; left out, keys stay by their ids. */
      readonly became?: Readonly<Record<KeyId, KeyId>>;
    }
  | { readonly edit: 'delete-key'; readonly key: KeyId }
  | { readonly edit: 'set-hosts'; readonly hosts: readonly Host[] }
  | { readonly edit: 'set-needs'; readonly needs: Needs }
  | { readonly edit: 'add-diary-note'; readonly note: DiaryNote }
  | { readonly edit: 'change-diary-note'; readonly note: NoteId; readonly to: NoteChange }
  | { readonly edit: 'tick-diary-note'; readonly note: NoteId; readonly tickedOff: boolean }
  | { readonly edit: 'delete-diary-note'; readonly note: NoteId }
  /** Everything at once: an earlier version, or what two people made of a design. `title` names the step. */
  | { readonly edit: 'replace-design'; readonly title: string; readonly keymap: Keymap }
  | { readonly edit: 'several'; readonly title: string; readonly edits: readonly Edit[] };

/** What came of an edit: the new keymap, the step's name for undo, and what was taken along or mended, in sentences. */
export interface EditOutcome {
  readonly keymap: Keymap;
  readonly title: string;
  readonly alongside: readonly string[];
}
