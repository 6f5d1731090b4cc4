import type { StoreApi } from 'zustand/vanilla';
import type { Result } from '../../core/base/result.ts';
import type { Edit } from '../../core/keymap/edit.ts';
import type { Keymap } from '../../core/keymap/types.ts';
import type { Branch, Branches } from './branches.ts';
import type { Histories } from './histories.ts';
import type { Saving, Timer } from './saver.ts';
import type { Damage, KeptDesign, Shelf } from './shelf.ts';
import type { GuardEvents, TabGuard } from './tab-guard.ts';

/** A kept design that could not be opened. */
export interface DamagedDesign extends Damage {
  readonly id: string;
  readonly name: string;
}

export interface DesignsState {
  readonly status: 'opening' | 'ready';
  readonly designs: readonly KeptDesign[];
  readonly saving: Saving;
  /** Another tab holds the design that is open here. */
  readonly heldElsewhere: boolean;
  readonly damaged: DamagedDesign | null;
  /** What the open design is a copy of, where it was made because another tab had that one. */
  readonly branch: OpenBranch | null;
  /** False where the browser keeps nothing beyond this visit. */
  readonly keeps: boolean;
}

/** What the open design is a copy of. */
export interface OpenBranch extends Branch {
  readonly ofName: string;
  /**
   * Made by the page itself: the design was written by another tab while this one had changes of its own, which are in
   * the copy.
   */
  readonly wasOvertaken: boolean;
}

export interface DesignsActions {
  /** Opens the design that this tab, else any tab, had open last; on the very first visit the demonstration. */
  start(): Promise<void>;
  openDesign(id: string): Promise<void>;
  /** Keeps a document beside the others under an id of its own, and opens it. */
  addDesign(keymap: Keymap): Promise<void>;
  /** Opens the kept design that is the same through and through; where there is none, keeps this one as `addDesign` does. */
  addOrFind(keymap: Keymap): Promise<'added' | 'kept before'>;
  duplicate(id: string): Promise<void>;
  rename(id: string, name: string): Promise<void>;
  remove(id: string): Promise<void>;
  /** Makes this tab the one that writes the open design. */
  takeOver(): Promise<void>;
  /** Keeps what this tab shows as a design of its own, which can be brought together with the original later. */
  openCopy(): Promise<void>;
  /** The original of the open copy as it is kept now; null where it is gone or cannot be read. */
  readOriginal(): Promise<Keymap | null>;
  /**
   * Opens the original, takes it over where another tab has it, and makes the edit that `bring` gives for its last state.
   * The copy is then done with: its state is among the versions of the original. Gives the sentence why it was not done,
   * null where it was.
   */
  bringTogether(bring: (original: Keymap) => Result<Edit, string>): Promise<string | null>;
  /** Leaves the open copy a design of its own for good. */
  keepApart(): Promise<void>;
  /** Writes at once what is waiting. */
  flush(): Promise<void>;
  closeDamaged(): void;
}

/** What the keeping of designs is made of; time, chance and the other tabs are handed in. */
export interface DesignsParts {
  readonly shelf: Shelf;
  readonly histories: Pick<Histories, 'read' | 'write' | 'remove'>;
  readonly branches: Pick<Branches, 'read' | 'write' | 'remove'>;
  /** Forgets what else is kept of a design that is gone. */
  readonly forget: (id: string) => Promise<void>;
  /** Keeps a state among the versions of a design. */
  readonly keepVersion: (id: string, keymap: Keymap, name: string) => Promise<unknown>;
  readonly keeps: Promise<boolean>;
  readonly guard: (
    events: GuardEvents,
  ) => Pick<TabGuard, 'show' | 'takeOver' | 'heldElsewhere' | 'tellListChanged'>;
  readonly timer: Timer;
  readonly now: () => number;
  readonly newId: () => string;
  readonly firstDesign: () => Promise<Keymap>;
  /** Which design this tab had open before it was loaded again. */
  readonly tabMemory: { read(): string | null; write(id: string): void };
}

export type DesignsStore = StoreApi<DesignsState & DesignsActions>;
