import type { BoardDraft } from '../../../../core/board/draft.ts';
import {
  addKeyBeside,
  moveKeys,
  paintFinger,
  paintHome,
  removeKeys,
  turnKeys,
} from '../../../../core/board/hand-work.ts';
import type { KeyId } from '../../../../core/keymap/types.ts';
import type { ShapeCommand } from './shape-command.ts';
import { fingerWords, keysWords } from './shape-words.ts';

/** A step of the work on a board: its name, the draft it makes, and what is selected after it. */
interface ShapeStep {
  readonly title: string;
  readonly draft: BoardDraft;
  readonly selected?: readonly KeyId[];
}

/** The step that a command makes of keys, the first of which leads; null for commands that change nothing on the board. */
export function stepOf(
  command: ShapeCommand,
  keys: readonly KeyId[],
  draft: BoardDraft,
  alike: boolean,
): ShapeStep | null {
  const which = { keys, alike };
  const many = keysWords(keys.length);
  switch (command.command) {
    case 'move':
      return { title: `Move ${many}`, draft: moveKeys(draft, which, command.by) };
    case 'turn':
      return { title: `Turn ${many}`, draft: turnKeys(draft, which, command.degrees) };
    case 'finger': {
      const title = `Give ${many} to the ${fingerWords(command.finger)}`;
      return { title, draft: paintFinger(draft, which, command.finger) };
    }
    case 'home': {
      const isHome = draft.board.keys.find(({ id }) => id === keys[0])?.home === true;
      return { title: 'Change home keys', draft: paintHome(draft, which, !isHome) };
    }
    case 'add': {
      const added = addKeyBeside(draft, keys[0] ?? '', alike);
      return { title: 'Add a key', draft: added.draft, selected: added.keys };
    }
    case 'remove':
      return { title: `Remove ${many}`, draft: removeKeys(draft, which), selected: [] };
    default:
      return null;
  }
}
