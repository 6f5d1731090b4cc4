import { useMemo } from 'react';
import { type BoardDraft, keysBecome } from '../../../../core/board/draft.ts';
import { type BoardLosses, whatIsLost } from '../../../../core/board/what-is-lost.ts';
import type { KeyId } from '../../../../core/keymap/types.ts';
import { useBench } from '../../../../store/bench.ts';

/** What each key of the design becomes on a draft, and what the design loses by it. */
export function useBecame(draft: BoardDraft): {
  readonly became: Readonly<Record<KeyId, KeyId>>;
  readonly losses: BoardLosses;
} {
  const keymap = useBench((bench) => bench.keymap);
  return useMemo(() => {
    const became = keysBecome(draft);
    return { became, losses: whatIsLost(keymap, became) };
  }, [keymap, draft]);
}
