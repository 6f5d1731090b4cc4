import { freshId } from '../keymap/fresh-id.ts';
import type { Board, BoardKey, KeyId, MadeFrom } from '../keymap/types.ts';
import { boardTitle } from './board-title.ts';
import { matchKeys } from './match-keys.ts';
import { halfOf, onBoard, onHalf, parametricBoard } from './parametric.ts';
import { minus, plus, tidy, turned } from './point.ts';

/** A board that is being worked on, apart from the design whose board it will be. */
export interface BoardDraft {
  /** The design's board, on which things are bound. */
  readonly origin: Board;
  readonly board: Board;
  /** Which key of the design's board each key of the draft is; new keys are not in it. */
  readonly from: ReadonlyMap<KeyId, KeyId>;
}

/** A draft that is the design's board itself. */
export function draftOf(origin: Board): BoardDraft {
  return { origin, board: origin, from: new Map(origin.keys.map(({ id }) => [id, id])) };
}

/** The draft over another board of the design, which changed meanwhile: keys stay what they were as far as it has them. */
export function rebased(draft: BoardDraft, origin: Board): BoardDraft {
  const there = new Set(origin.keys.map(({ id }) => id));
  return { ...draft, origin, from: new Map([...draft.from].filter(([, was]) => there.has(was))) };
}

/** A draft begun anew from parameters; which of its keys are the design's is said by place and id (see `matchKeys`). */
export function startedFrom(draft: BoardDraft, madeFrom: MadeFrom): BoardDraft {
  const board = parametricBoard(madeFrom, draft.board.name);
  const from = new Map([...matchKeys(draft.origin, board)].map(([was, now]) => [now, was]));
  return withBoard({ ...draft, from }, board);
}

/** The draft with another board; a name that the board had of itself goes along with its keys. */
export function withBoard(draft: BoardDraft, board: Board): BoardDraft {
  const isOwn = draft.board.name === boardTitle(draft.board);
  return { ...draft, board: isOwn ? { ...board, name: boardTitle(board) } : board };
}

/**
 * Which key of the draft each key of the design's board becomes. The draft knows of those that stayed; of the rest
 * place and id say it, so that a column that comes back has its keys again (see `matchKeys`). A key that is not named loses its place.
 */
export function keysBecome({ origin, board, from }: BoardDraft): Readonly<Record<KeyId, KeyId>> {
  const stayed = [...from].map(([now, was]): [KeyId, KeyId] => [was, now]);
  const rest = matchKeys(origin, board, {
    before: new Set(stayed.map(([was]) => was)),
    after: new Set(from.keys()),
  });
  return Object.fromEntries([...stayed, ...rest]);
}

/** An id for a new key of a hand, which neither the draft nor the design's board has. */
export function newKeyId(draft: BoardDraft, hand: BoardKey['hand']): KeyId {
  const taken = [...draft.board.keys, ...draft.origin.keys].map(({ id }) => id);
  return freshId(hand === 'left' ? 'L' : 'R', taken);
}

/**
 * The draft made from other parameters. What was done by hand stays: keys that were moved, turned, sized or given to
 * another finger stay as far from what the parameters say as they were, those taken away stay away, and added ones go with
 * their half.
 */
export function reshaped(draft: BoardDraft, to: MadeFrom): BoardDraft {
  const { board, from } = draft;
  if (board.madeFrom === undefined || !followsParameters(board)) return startedFrom(draft, to);
  const was = parametricBoard(board.madeFrom, board.name);
  const is = parametricBoard(to, board.name);
  const back = new Map([...counterparts(was, is)].map(([old, made]) => [made, old]));
  const present = byId(board);
  const models = byId(was);
  const keys: BoardKey[] = [];
  const nextFrom = new Map<KeyId, KeyId>();
  const add = (key: BoardKey, old: KeyId | undefined) => {
    keys.push(key);
    const origin = old === undefined ? undefined : from.get(old);
    if (origin !== undefined) nextFrom.set(key.id, origin);
  };
  for (const made of is.keys) {
    const old = back.get(made.id);
    const model = old === undefined ? undefined : models.get(old);
    const now = old === undefined ? undefined : present.get(old);
    if (model === undefined) add(made, undefined);
    else if (now !== undefined) add(withHandWork(made, model, now), old);
  }
  const taken = new Set(is.keys.map(({ id }) => id));
  for (const key of board.keys.filter(({ id }) => !models.has(id))) {
    const id = taken.has(key.id) ? newKeyId(draft, key.hand) : key.id;
    const pose = onHalf(key, key.hand, halfOf(board.madeFrom, key.hand));
    add({ ...key, ...onBoard(pose, key.hand, halfOf(to, key.hand)), id }, key.id);
  }
  return withBoard({ ...draft, from: nextFrom }, { ...is, keys });
}

/** The keys that are not as the parameters say: moved, turned, sized, given to another finger, added; and how many are missing. */
export function handWork(board: Board): { readonly keys: readonly KeyId[]; readonly missing: number } {
  if (board.madeFrom === undefined) return { keys: [], missing: 0 };
  const models = byId(parametricBoard(board.madeFrom, board.name));
  const present = byId(board);
  const keys = board.keys.filter((key) => !isSame(key, models.get(key.id))).map(({ id }) => id);
  return { keys, missing: [...models.keys()].filter((id) => !present.has(id)).length };
}

/** The draft as its parameters say, with nothing done by hand. */
export function withoutHandWork(draft: BoardDraft): BoardDraft {
  const { madeFrom, name } = draft.board;
  if (madeFrom === undefined) return draft;
  const board = parametricBoard(madeFrom, name);
  const ids = new Set(board.keys.map(({ id }) => id));
  const from = new Map([...draft.from].filter(([now]) => ids.has(now)));
  return withBoard({ ...draft, from }, board);
}

/** Whether any key is one of those that the board's parameters make; a file may carry parameters of something else. */
function followsParameters(board: Board): boolean {
  if (board.madeFrom === undefined) return false;
  const models = byId(parametricBoard(board.madeFrom, board.name));
  return board.keys.some(({ id, hand }) => models.get(id)?.hand === hand);
}

/** With as many keys in every column they are the same keys, whatever fingers and home rows became; else place says it. */
function counterparts(was: Board, is: Board): ReadonlyMap<KeyId, KeyId> {
  const [before, after] = [columnsOf(was), columnsOf(is)];
  const sizes = (columns: ReadonlyMap<string, readonly KeyId[]>) =>
    [...columns]
      .map(([name, ids]) => `${name} ${ids.length}`)
      .sort()
      .join();
  if (sizes(before) !== sizes(after)) return matchKeys(was, is);
  return new Map(
    [...before].flatMap(([name, ids]) =>
      ids.map((id, row): [KeyId, KeyId] => [id, after.get(name)?.[row] ?? id]),
    ),
  );
}

/** A parametric board's ids by hand and column, from the top: the last sign of an id counts the column, and after a T the thumb's key. */
function columnsOf(board: Board): ReadonlyMap<string, readonly KeyId[]> {
  const columns = new Map<string, KeyId[]>();
  for (const { id } of board.keys) {
    const name = id[1] === 'T' ? id : `${id[0]} ${id.at(-1)}`;
    columns.set(name, [...(columns.get(name) ?? []), id]);
  }
  return columns;
}

/** What parameters make of a key, changed as the key was from what the former ones made of it. */
function withHandWork(made: BoardKey, model: BoardKey, now: BoardKey): BoardKey {
  if (isSame(now, model)) return made;
  const place = plus(made, turned(minus(now, model), made.rotation - model.rotation));
  return {
    ...made,
    x: tidy(place.x),
    y: tidy(place.y),
    rotation: tidy(made.rotation + now.rotation - model.rotation),
    width: tidy(made.width + now.width - model.width),
    height: tidy(made.height + now.height - model.height),
    hand: now.hand === model.hand ? made.hand : now.hand,
    finger: now.finger === model.finger ? made.finger : now.finger,
    home: now.home === model.home ? made.home : now.home,
  };
}

const FIELDS = ['x', 'y', 'rotation', 'width', 'height', 'hand', 'finger', 'home'] as const;

function isSame(key: BoardKey, model: BoardKey | undefined): boolean {
  return model !== undefined && FIELDS.every((field) => key[field] === model[field]);
}

function byId(board: Board): ReadonlyMap<KeyId, BoardKey> {
  return new Map(board.keys.map((key) => [key.id, key]));
}
