import { ARRANGEMENTS, type Arrangement } from '../core/board/arrangements.ts';
import { layArrangement } from '../core/board/lay-rows.ts';
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
import type { FindList } from '../core/needs/needs-of.ts';
import { withMissingNeeds } from './starter-needs.ts';
import { innerRows, mainRows, outwards } from './starter-rows.ts';

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
const MOVES = 'moves';
const key = (code: Code): Action => ({ do: 'key', code });
const to = (layer: string): Action => ({ do: 'layer', layer, mode: 'while-held' });

/** Each hand's thumb keys from the inner one outwards, for hands with so many of them. */
const THUMBS: Readonly<Record<number, Readonly<Record<Hand, readonly Binding[]>>>> = {
  2: {
    left: [{ tap: key('Space') }, { tap: key('Backspace'), hold: to(NUMBERS) }],
    right: [{ tap: key('Enter'), hold: to(MOVES) }, { hold: key('ShiftLeft') }],
  },
  3: {
    left: [{ hold: to(NUMBERS) }, { tap: key('Space') }, { tap: key('Tab') }],
    right: [{ tap: key('Enter'), hold: to(MOVES) }, { tap: key('Backspace') }, { hold: key('ShiftLeft') }],
  },
};

/**
 * Keys beyond the five columns of a hand, from the top. The modifier of most shortcuts is there for both hands, so that
 * the other one presses the letter; no second one that goes with it, which the same little finger would hold.
 */
function outerCodes(hand: Hand, system: Host['system']): readonly Code[] {
  const [main, other] = system === 'macos' ? (['Meta', 'Control'] as const) : (['Control', 'Meta'] as const);
  return hand === 'left' ? ['Escape', `${main}Left`, 'Insert'] : ['Delete', `${main}Right`, `${other}Right`];
}

/** Ten keys of a row from left to right; what is null is left free. */
type Row = readonly (Action | null)[];
const LEFT_HAND = (['ControlLeft', 'AltLeft', 'MetaLeft', 'ShiftLeft'] as const).map(key);
const RIGHT_HAND = (['ShiftRight', 'MetaRight', 'AltRight', 'ControlRight'] as const).map(key);

/**
 * Figures above, and on the home keys the modifiers of both hands: each letter is pressed by the hand that does not hold
 * its modifier.
 */
const NUMBER_ROWS: readonly Row[] = [
  [...'1234567890'].map((char) => ({ do: 'char', char })),
  [...LEFT_HAND, null, null, ...RIGHT_HAND],
];

/** What moves and deletes under the right hand, and the modifiers that go with it under the left. */
const MOVE_ROWS: readonly Row[] = [
  [...[null, null, null, null, null], ...(['Insert', 'Home', 'PageDown', 'PageUp', 'End'] as const).map(key)],
  [
    ...[...LEFT_HAND, null],
    ...(['Tab', 'ArrowLeft', 'ArrowDown', 'ArrowUp', 'ArrowRight'] as const).map(key),
  ],
  [...[null, null, null, null, null], ...(['Escape', 'Delete'] as const).map(key)],
];

/**
 * A design that types from the start: letters on the thirty main keys, Space, Enter, Backspace and Shift under
 * the thumbs, and two layers that thumb keys open: figures with modifiers, and what moves. A character that the host
 * layout cannot type gives way to QWERTY's at the same place. What else is needed lies on the keys that are still free
 * on those layers, as far as there are any.
 */
export function starterDesign(choices: StarterChoices, host: HostLayout, findList?: FindList): Keymap {
  const { board } = choices;
  const base: Places = {
    ...letters(choices, host),
    ...thumbs(board, 'left'),
    ...thumbs(board, 'right'),
    ...outer(choices, 'left'),
    ...outer(choices, 'right'),
  };
  const layers: Layer[] = [{ id: 'base', name: 'Base', places: base }];
  if (opens(base, NUMBERS)) layers.push({ id: NUMBERS, name: 'Numbers', places: layOut(board, NUMBER_ROWS) });
  if (opens(base, MOVES)) layers.push({ id: MOVES, name: 'Moves', places: layOut(board, MOVE_ROWS) });
  const design: Keymap = {
    format: 'neutral-keymap',
    version: 1,
    name: choices.name,
    board,
    hosts: [choices.host],
    needs: choices.needs,
    layers,
  };
  return withMissingNeeds(design, host, findList);
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

function outer({ board, host }: StarterChoices, hand: Hand): Places {
  const rows = mainRows(board).map((row) => outwards(row.filter((each) => each.hand === hand)));
  const keys = rows.flatMap((row) => row.slice(5, 6));
  return paired(
    keys,
    outerCodes(hand, host.system).map((code) => ({ tap: key(code) })),
  );
}

/** Rows of ten actions on the five inner columns of both hands. */
function layOut(board: Board, rows: readonly Row[]): Places {
  const places = innerRows(board).map((keys, index) =>
    Object.fromEntries(
      keys.flatMap((id, at) => {
        const tap = rows[index]?.[at] ?? null;
        return tap === null ? [] : [[id, { tap }] as const];
      }),
    ),
  );
  return Object.assign({}, ...places);
}

function opens(places: Places, layer: string): boolean {
  return Object.values(places).some(({ hold }) => hold?.do === 'layer' && hold.layer === layer);
}

function paired(keys: readonly BoardKey[], bindings: readonly Binding[]): Places {
  return Object.fromEntries(
    keys.flatMap((each, index) => {
      const binding = bindings[index];
      return binding === undefined ? [] : [[each.id, binding] as const];
    }),
  );
}
