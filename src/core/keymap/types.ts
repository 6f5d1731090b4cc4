import type * as z from 'zod/mini';
import type {
  actionSchema,
  bindingSchema,
  boardKeySchema,
  boardSchema,
  chordSchema,
  correctionSchema,
  diaryNoteSchema,
  hostSchema,
  keymapSchema,
  layerSchema,
  madeFromSchema,
  needsSchema,
  shiftedActionSchema,
  timingSchema,
} from './schema.ts';

type Frozen<T> = T extends readonly (infer Item)[]
  ? readonly Frozen<Item>[]
  : T extends object
    ? { readonly [Name in keyof T]: Frozen<T[Name]> }
    : T;

/** A whole design: the saved document and the exported keymap are the same. */
export type Keymap = Frozen<z.infer<typeof keymapSchema>>;
export type Board = Frozen<z.infer<typeof boardSchema>>;
/** One physical key: place and size in mm, whose finger. */
export type BoardKey = Frozen<z.infer<typeof boardKeySchema>>;
export type MadeFrom = Frozen<z.infer<typeof madeFromSchema>>;
export type Layer = Frozen<z.infer<typeof layerSchema>>;
export type Binding = Frozen<z.infer<typeof bindingSchema>>;
export type Action = Frozen<z.infer<typeof actionSchema>>;
/** What comes in place of a tap while Shift is on. */
export type ShiftedAction = Frozen<z.infer<typeof shiftedActionSchema>>;
export type Chord = Frozen<z.infer<typeof chordSchema>>;
export type Timing = Frozen<z.infer<typeof timingSchema>>;
export type Host = Frozen<z.infer<typeof hostSchema>>;
/** A key that a computer reads otherwise than its table says. */
export type Correction = Frozen<z.infer<typeof correctionSchema>>;
/** One line of the diary: what was noted, about what, when, of which state of the design. */
export type DiaryNote = Frozen<z.infer<typeof diaryNoteSchema>>;
export type Needs = Frozen<z.infer<typeof needsSchema>>;

export type KeyId = string;
export type LayerId = string;
export type ChordId = string;
export type NoteId = string;
export type Hand = BoardKey['hand'];
export type Finger = BoardKey['finger'];
export type HoldBy = NonNullable<Timing['holdBy']>;
/** Which of a binding's two actions. */
export type Side = 'tap' | 'hold';
/** Where an action stands in a binding: on one of its sides, or in place of the tap while Shift is on. */
export type Slot = Side | 'onShift';
/** A place: a key on a layer. */
export interface Place {
  readonly layer: LayerId;
  readonly key: KeyId;
}
