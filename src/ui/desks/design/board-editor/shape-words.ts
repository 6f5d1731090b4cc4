import { boardExtent } from '../../../../core/board/caps.ts';
import type { BoardDraft } from '../../../../core/board/draft.ts';
import { keyName } from '../../../../core/board/key-name.ts';
import type { FarKey } from '../../../../core/board/reach.ts';
import { FINGER_REACH_MM } from '../../../../core/board/reach.ts';
import type { BoardLosses } from '../../../../core/board/what-is-lost.ts';
import type { Board, BoardKey, Finger, KeyId } from '../../../../core/keymap/types.ts';
import { lengthText } from '../../../../store/settings/lengths.ts';
import type { Settings } from '../../../../store/settings/settings.ts';

/** So many keys, in the name of a step. */
export function keysWords(count: number): string {
  return count === 1 ? 'a key' : `${count} keys`;
}

/** The name of the step that a gesture makes, for undo. */
export function stepTitle(
  doing: string,
  count: number,
  { tool, finger }: { readonly tool: string; readonly finger: Finger },
): string {
  switch (doing) {
    case 'move':
      return `Move ${keysWords(count)}`;
    case 'turn':
      return `Turn ${keysWords(count)}`;
    case 'half':
      return 'Move a half';
    case 'half-turn':
      return 'Turn a half';
    default:
      return tool === 'home' ? 'Change home keys' : `Give ${keysWords(count)} to the ${fingerWords(finger)}`;
  }
}

/** A finger in words: "ring finger", "thumb". */
export function fingerWords(finger: Finger): string {
  return finger === 'thumb' ? 'thumb' : `${finger} finger`;
}

/** How large a board is: "36 keys, 302 × 124 mm", or in inches to a tenth. */
export function sizeWords(board: Board, units: Settings['units'] = 'mm'): string {
  const { minX, minY, maxX, maxY } = boardExtent(board);
  const size = [maxX - minX, maxY - minY].map((mm) =>
    units === 'mm' ? Math.round(mm) : (mm / 25.4).toFixed(1),
  );
  const keys = board.keys.length === 1 ? 'one key' : `${board.keys.length} keys`;
  return `${keys}, ${size.join(' × ')} ${units === 'mm' ? 'mm' : 'in'}`;
}

/** What a screen reader hears of a key: where it is, its numbers, and what is the matter with it. */
export function shapeLabel(
  board: Board,
  key: BoardKey,
  isNew: boolean,
  units: Settings['units'] = 'mm',
): string {
  const [across, down] = [key.x, key.y].map((length) => lengthText(length, units));
  const place = `across ${across}, down ${down}, turned ${degrees(key.rotation)}`;
  return [keyName(board, key.id), place, ...(isNew ? ['new'] : [])].join('; ');
}

/** What is said aloud after a step by keyboard: the key as it is now, or that it is gone. */
export function spokenAfter(title: string, board: Board, id: KeyId, units: Settings['units'] = 'mm'): string {
  const key = board.keys.find((each) => each.id === id);
  return key === undefined ? `${title}: done` : `${title}: ${shapeLabel(board, key, false, units)}`;
}

/** An angle as it is shown: "−8°". */
export function degrees(value: number): string {
  return `${Math.round(value * 10) / 10 + 0}°`.replace('-', '−');
}

/** What another board makes of the design's bindings, in a sentence. */
export function keptWords({ keptBindings, lostBindings }: BoardLosses): string {
  const all = keptBindings + lostBindings;
  if (all === 0) return 'Nothing is bound yet, so nothing can lose its place.';
  if (lostBindings === 0)
    return all === 1 ? 'The one binding keeps its place.' : `All ${all} bindings keep their place.`;
  const lose = lostBindings === 1 ? 'one loses its place' : `${lostBindings} lose their place`;
  return `${keptBindings} of ${all} bindings keep their place, ${lose}.`;
}

/** What loses its place, a line for each key and chord: "left little top – Base: Q  ·  Moves: F1". */
export function lossLines({
  keys: lost,
  chords,
  notes,
}: BoardLosses): readonly { readonly id: string; readonly text: string }[] {
  return [
    ...lost.map(({ key, name, bindings }) => ({
      id: `key ${key}`,
      text: `${name} – ${bindings.map(({ layer, words }) => `${layer}: ${words}`).join('  ·  ')}`,
    })),
    ...chords.map(({ name, lost: gone, goes }) => ({
      id: `chord ${name} ${gone.join(' ')}`,
      text: goes
        ? `the chord ${name} goes: it loses ${gone.join(', ')}`
        : `the chord ${name} loses ${gone.join(', ')}`,
    })),
    ...(notes === 0
      ? []
      : [
          {
            id: 'notes',
            text: `${notes === 1 ? 'one note' : `${notes} notes`} of the diary: what ${notes === 1 ? 'it is' : 'they are'} pinned to`,
          },
        ]),
  ];
}

/** Two caps in one place, in a sentence. */
export function overlapWords(board: Board, [one, other]: readonly [KeyId, KeyId]): string {
  return `${keyName(board, one)} and ${keyName(board, other)} overlap.`;
}

/** A key that its finger does not reach, in a sentence; `reachWords` says what reach is. */
export function farWords(board: Board, { key, home, mm }: FarKey, units: Settings['units'] = 'mm'): string {
  return `${keyName(board, key)} lies ${roughLength(mm, units)} from ${keyName(board, home)}.`;
}

/** What counts as a finger's reach. */
export function reachWords(units: Settings['units'] = 'mm'): string {
  const far = roughLength(FINGER_REACH_MM, units);
  return `Beyond ${far} most hands leave their home keys: common practice, no source, and hands differ.`;
}

/** To a millimetre, or a tenth of an inch. */
function roughLength(mm: number, units: Settings['units']): string {
  return units === 'mm' ? `${Math.round(mm)} mm` : `${(mm / 25.4).toFixed(1)} in`;
}

/** Whether the draft differs from the design's board. */
export function isChanged({ board, origin }: BoardDraft): boolean {
  return board !== origin && JSON.stringify(board) !== JSON.stringify(origin);
}
