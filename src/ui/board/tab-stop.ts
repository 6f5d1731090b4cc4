import type { Board, KeyId } from '../../core/keymap/types.ts';

/** The one key at which Tab stops: the one last focused, else the left index finger's home key, else the first. */
export function tabStopOf(board: Board, focused: KeyId | null): KeyId | undefined {
  const isThere = board.keys.some((key) => key.id === focused);
  if (focused !== null && isThere) return focused;
  const home = board.keys.find((key) => key.home && key.finger === 'index' && key.hand === 'left');
  return (home ?? board.keys[0])?.id;
}
