import { useMemo } from 'react';
import type { BoardDraft } from '../../../../core/board/draft.ts';
import { useBench } from '../../../../store/bench.ts';
import { type BoardWork, useBoardDrafts, workOn } from '../../../../store/board-drafts.ts';

/** The work on the open design's board, and the draft as it is shown: with what a gesture or slider is about to make. */
export function useBoardWork(): BoardWork & { readonly shown: BoardDraft } {
  const works = useBoardDrafts((drafts) => drafts.works);
  const preview = useBoardDrafts((drafts) => drafts.preview);
  const designId = useBench((bench) => bench.designId);
  const board = useBench((bench) => bench.keymap.board);
  return useMemo(() => {
    const work = workOn(works, { designId, keymap: { board } });
    return { ...work, shown: preview ?? work.draft };
  }, [works, preview, designId, board]);
}
