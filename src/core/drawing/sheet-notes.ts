import { keyName } from '../board/key-name.ts';
import { actionInWords } from '../host/legend.ts';
import type { Action, KeyId, Layer, Slot } from '../keymap/types.ts';
import type { SheetSource } from './sheet-source.ts';

/** What found no room on its key, spelled out under a number. */
export interface SheetNote {
  readonly number: number;
  readonly text: string;
}

const SLOTS: Readonly<Record<Slot, string>> = { tap: '', onShift: ', under Shift', hold: ', held' };

/** Collects what found no room, in the order in which the keys are drawn. */
export class NoteBook {
  readonly #notes: SheetNote[] = [];

  get notes(): readonly SheetNote[] {
    return this.#notes;
  }

  /** The sign that the next note will have. */
  get nextSign(): string {
    return noteSign(this.#notes.length + 1);
  }

  /** Adds one slot of a binding and hands back the sign that stands on the key in its place. */
  add(key: KeyId, layer: Layer, side: Slot, action: Action, source: SheetSource): string {
    const number = this.#notes.length + 1;
    const words = actionInWords(action, source);
    this.#notes.push({
      number,
      text: `${keyName(source.keymap.board, key)}, ${layer.name}${SLOTS[side]}: ${words}`,
    });
    return noteSign(number);
  }
}

/** The sign of a note on a key: "§3". */
function noteSign(number: number): string {
  return `§${number}`;
}
