import { type BoardDraft, reshaped } from '../../../../core/board/draft.ts';
import type { MadeFrom } from '../../../../core/keymap/types.ts';
import { useBoardDrafts } from '../../../../store/board-drafts.ts';

/** Changes of a board's parameters: shown while a slider moves, made once when it is let go. */
export interface Shaping {
  readonly preview: (madeFrom: MadeFrom | null) => void;
  readonly commit: (title: string, madeFrom: MadeFrom) => void;
}

/** The ways to change a draft's parameters. */
export function shapingOf(draft: BoardDraft): Shaping {
  const { show, change } = useBoardDrafts.getState();
  return {
    preview: (madeFrom) => show(madeFrom === null ? null : reshaped(draft, madeFrom)),
    commit: (title, madeFrom) => change(title, reshaped(draft, madeFrom)),
  };
}
