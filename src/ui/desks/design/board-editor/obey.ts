import { neighbourOf } from '../../../../core/board/neighbours.ts';
import type { Board, KeyId } from '../../../../core/keymap/types.ts';
import { type BoardWork, useBoardDrafts } from '../../../../store/board-drafts.ts';
import { useSettings } from '../../../../store/settings/use-settings.ts';
import { elementOfKey } from '../../../board/key-element.ts';
import type { ShapeCommand } from './shape-command.ts';
import { stepOf } from './shape-step.ts';
import { spokenAfter } from './shape-words.ts';

/**
 * Does what was asked for at a key: to the selected keys if it is one of them, else to it alone. What came of it is
 * said aloud.
 */
export function obey(
  command: ShapeCommand,
  key: KeyId,
  work: BoardWork,
  svg: SVGSVGElement | null,
  say: (text: string) => void,
): void {
  const { select, change } = useBoardDrafts.getState();
  const { draft, selected, alike } = work;
  const others = selected.filter((each) => each !== key);
  const isSelected = others.length < selected.length;
  if (command.command === 'walk') focus(svg, neighbourOf(draft.board, key, command.direction));
  if (command.command === 'select') select(isSelected ? others : [...selected, key]);
  if (command.command === 'select-all') select(draft.board.keys.map(({ id }) => id));
  if (command.command === 'leave') select([]);
  const keys = isSelected ? [key, ...others] : [key];
  const step = stepOf(command, keys, draft, alike);
  if (step === null) return;
  if (command.command === 'remove') focusBeside(svg, draft.board, keys);
  change(step.title, step.draft, step.selected);
  say(spokenAfter(step.title, step.draft.board, key, useSettings.getState().units));
}

/** The focus goes on to a neighbour before the keys go, so that it is not lost with them. */
function focusBeside(svg: SVGSVGElement | null, board: Board, keys: readonly KeyId[]): void {
  const next = (['left', 'right', 'up', 'down'] as const)
    .map((way) => neighbourOf(board, keys[0] ?? '', way))
    .find((id) => id !== null && !keys.includes(id));
  focus(svg, next ?? null);
}

function focus(svg: SVGSVGElement | null, key: KeyId | null): void {
  if (key !== null) elementOfKey(svg, key)?.focus();
}
