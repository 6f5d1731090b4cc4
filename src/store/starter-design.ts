import { ARRANGEMENTS, type Arrangement } from '../core/board/arrangements.ts';
import { layArrangement } from '../core/board/lay-rows.ts';
import { boardRows } from '../core/board/rows.ts';
import type { HostLayout } from '../core/host/host-layout.ts';
import type { Code } from '../core/keymap/codes.ts';
import type {
  Action,
  Binding,
  Board,
  BoardKey,
  Hand,
  Host,
  KeyId,
  Keymap,
  Layer,
  Needs,
} from '../core/keymap/types.ts';

/** What a new design is made from: the three questions and the arrangement of the letters. */
export interface StarterChoices {
  readonly name: string;
  readonly board: Board;
  readonly host: Host;
  readonly needs: Needs;
  readonly arrangement: Arrangement['id'];
}

type Places = Readonly<Record<KeyId, Binding>>;

const NUMBERS = 'numbers';
const key = (code: Code): Action => ({ do: 'key', code });
const toNumbers: Action = { do: 'layer', layer: NUMBERS, mode: 'while-held' };

/** Each hand's thumb keys from the inner one outwards, for hands with so many of them. */
const THUMBS: Readonly<Record<number, Readonly<Record<Hand, readonly Binding[]>>>> = {
  2: {
    left: [{ tap: key('Space') }, { tap: key('Backspace'), hold: toNumbers }],
    right: [{ tap: key('Enter') }, { hold: key('ShiftLeft') }],
  },
  3: {
    left: [{ hold: toNumbers }, { tap: key('Space') }, { tap: key('Tab') }],
    right: [{ tap: key('Enter') }, { tap: key('Backspace') }, { hold: key('ShiftLeft') }],
  },
};

/** Keys beyond the five columns of a hand, from the top. */
const OUTER: Readonly<Record<Hand, readonly Code[]>> = {
  left: ['Escape', 'ControlLeft', 'AltLeft'],
  right: ['Delete', 'MetaLeft', 'AltRight'],
};

/** The second layer, ten keys a row from left to right: figures, then modifiers and arrows. */
const SECOND_ROWS: readonly (readonly Action[])[] = [
  [...'1234567890'].map((char) => ({ do: 'char', char })),
  (
    [
      'ControlLeft',
      'AltLeft',
      'MetaLeft',
      'Escape',
      'Tab',
      'ArrowLeft',
      'ArrowDown',
      'ArrowUp',
      'ArrowRight',
      'Delete',
    ] as const
  ).map(key),
];

/**
 * A design that types from the start: letters on the thirty main keys, Space, Enter, Backspace and Shift under
 * the thumbs, and a second layer that a thumb key opens. A character that the host layout cannot type gives way
 * to QWERTY's at the same place.
 */
export function starterDesign(choices: StarterChoices, host: HostLayout): Keymap {
  const { board } = choices;
  const base: Places = {
    ...letters(choices, host),
    ...thumbs(board, 'left'),
    ...thumbs(board, 'right'),
    ...outer(board, 'left'),
    ...outer(board, 'right'),
  };
  const layers: Layer[] = [{ id: 'base', name: 'Base', places: base }];
  if (hasWayIn(base)) layers.push({ id: NUMBERS, name: 'Numbers', places: secondLayer(board) });
  return {
    format: 'neutral-keymap',
    version: 1,
    name: choices.name,
    board,
    hosts: [choices.host],
    needs: choices.needs,
    layers,
  };
}

function letters({ board, arrangement }: StarterChoices, host: HostLayout): Places {
  const wanted = ARRANGEMENTS.find(({ id }) => id === arrangement) ?? ARRANGEMENTS[0];
  const qwerty = ARRANGEMENTS.find(({ id }) => id === 'qwerty') ?? ARRANGEMENTS[0];
  if (wanted === undefined || qwerty === undefined) return {};
  const taps = layArrangement(board, wanted);
  const stead = layArrangement(board, qwerty);
  const typed = (action: Action | undefined) =>
    action?.do === 'char' && host.routesOf(action.char).length > 0 ? action : undefined;
  const places = Object.entries(taps).flatMap(([id, action]) => {
    const tap = typed(action) ?? typed(stead[id]);
    return tap === undefined ? [] : [[id, { tap }] as const];
  });
  return Object.fromEntries(places);
}

function thumbs(board: Board, hand: Hand): Places {
  const keys = outwards(board.keys.filter((each) => each.finger === 'thumb' && each.hand === hand));
  const bindings = THUMBS[Math.min(3, Math.max(2, keys.length))]?.[hand] ?? [];
  return paired(keys, bindings);
}

function outer(board: Board, hand: Hand): Places {
  const rows = mainRows(board).map((row) => outwards(row.filter((each) => each.hand === hand)));
  const keys = rows.flatMap((row) => row.slice(5, 6));
  return paired(
    keys,
    OUTER[hand].map((code) => ({ tap: key(code) })),
  );
}

function secondLayer(board: Board): Places {
  const rows = mainRows(board).map((row) => [
    ...outwards(row.filter(({ hand }) => hand === 'left'))
      .slice(0, 5)
      .reverse(),
    ...outwards(row.filter(({ hand }) => hand === 'right')).slice(0, 5),
  ]);
  const full = rows.filter((row) => row.length === 10);
  const places = full.map((row, index) =>
    paired(
      row,
      (SECOND_ROWS[index] ?? []).map((tap) => ({ tap })),
    ),
  );
  return Object.assign({}, ...places);
}

function hasWayIn(places: Places): boolean {
  return Object.values(places).some(({ hold }) => hold?.do === 'layer');
}

function mainRows(board: Board): readonly (readonly BoardKey[])[] {
  return boardRows(board)
    .map((ids) => ids.flatMap((id) => board.keys.find((each) => each.id === id) ?? []))
    .filter((row) => row.some((each) => each.finger !== 'thumb'));
}

/** From the middle of the board to its outer edge. */
function outwards(keys: readonly BoardKey[]): readonly BoardKey[] {
  return keys.toSorted((one, other) => (one.hand === 'left' ? other.x - one.x : one.x - other.x));
}

function paired(keys: readonly BoardKey[], bindings: readonly Binding[]): Places {
  return Object.fromEntries(
    keys.flatMap((each, index) => {
      const binding = bindings[index];
      return binding === undefined ? [] : [[each.id, binding] as const];
    }),
  );
}
