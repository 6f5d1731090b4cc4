import { parametricBoard } from '../../core/board/parametric.ts';
import { READY_BOARDS } from '../../core/board/ready-boards.ts';
import type { Board } from '../../core/keymap/types.ts';

/** A ready board by its id, under a name of the demo's own; throws where there is none, since demos are sources. */
export function readyBoard(id: string, name: string): Board {
  const ready = READY_BOARDS.find((each) => each.id === id);
  if (ready === undefined) throw new Error(`There is no ready board "${id}".`);
  return parametricBoard(ready.madeFrom, name);
}
