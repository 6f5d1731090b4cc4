import { LIMITS } from '../keymap/limits.ts';
import type { BoardKey, Finger, Hand, KeyId } from '../keymap/types.ts';
import { capCorners, overlapMm } from './caps.ts';
import { type BoardDraft, newKeyId, withBoard } from './draft.ts';
import { mirrorAxis, partnersOf } from './partners.ts';
import { distanceMm, minus, type Point, plus, tidy, turned } from './point.ts';
import { homeOf } from './reach.ts';

/** Between two caps where a board has no parameters to say it, mm. Common practice, no source. */
const CAP_GAP_MM = 1.05;

/** What can be set of a key in numbers: mm and degrees. */
export type KeyNumbers = Partial<Pick<BoardKey, 'x' | 'y' | 'rotation' | 'width' | 'height'>>;

/** How keys are changed by hand: `alike` changes the mirror images in the other half along with them. */
export interface ByHand {
  readonly keys: readonly KeyId[];
  readonly alike: boolean;
}

/** The gap between two caps a pitch apart on this board, mm. */
export function capGapMm({ board }: BoardDraft): number {
  return board.madeFrom?.capGapMm ?? CAP_GAP_MM;
}

/** Moves keys; mirror images move the other way across. */
export function moveKeys(draft: BoardDraft, which: ByHand, by: Point): BoardDraft {
  return changed(draft, which, (key) => ({ ...key, ...plus(key, by) }));
}

/** Turns keys together about the middle of them all, degrees, clockwise. */
export function turnKeys(draft: BoardDraft, which: ByHand, degrees: number): BoardDraft {
  const middle = middleOf(leaders(draft, which));
  return changed(draft, which, (key) => ({
    ...key,
    ...plus(middle, turned(minus(key, middle), degrees)),
    rotation: key.rotation + degrees,
  }));
}

/** Gives keys numbers; those that are not named stay. */
export function setKeys(draft: BoardDraft, which: ByHand, numbers: KeyNumbers): BoardDraft {
  return changed(draft, which, (key) => ({ ...key, ...numbers }));
}

/** Gives keys to a finger. A home key that comes to a finger which has one already is home no longer. */
export function paintFinger(draft: BoardDraft, which: ByHand, finger: Finger): BoardDraft {
  return changed(draft, which, (key) => givenTo(draft, key, { finger }));
}

/** Gives keys to a hand, their mirror images to the other one; home keys as in `paintFinger`. */
export function giveToHand(draft: BoardDraft, which: ByHand, hand: Hand): BoardDraft {
  return changed(draft, which, (key) => givenTo(draft, key, { hand }));
}

function givenTo(
  { board }: BoardDraft,
  key: BoardKey,
  to: Partial<Pick<BoardKey, 'finger' | 'hand'>>,
): BoardKey {
  const given = { ...key, ...to };
  if (given.finger === key.finger && given.hand === key.hand) return key;
  const home = homeOf(board, given);
  return { ...given, home: key.home && (home === undefined || home.id === key.id) };
}

/** Makes keys home keys or not; a finger rests on one key, so its former home gives way. The last of one finger's wins. */
export function paintHome(draft: BoardDraft, which: ByHand, home: boolean): BoardDraft {
  const painted = changed(draft, which, (key) => ({ ...key, home }));
  if (!home) return painted;
  const named = new Set([...which.keys, ...(which.alike ? mirrored(draft, which.keys) : [])]);
  const last = new Map<string, KeyId>();
  for (const id of named) {
    const key = painted.board.keys.find((each) => each.id === id);
    if (key !== undefined) last.set(`${key.hand} ${key.finger}`, key.id);
  }
  const keys = painted.board.keys.map((key) => {
    const winner = last.get(`${key.hand} ${key.finger}`);
    return key.home && winner !== undefined && winner !== key.id ? { ...key, home: false } : key;
  });
  return { ...painted, board: { ...painted.board, keys } };
}

/** Takes keys away; a board keeps one key at least, so the draft comes back as it was if all were to go. */
export function removeKeys(draft: BoardDraft, which: ByHand): BoardDraft {
  const gone = new Set([...which.keys, ...(which.alike ? mirrored(draft, which.keys) : [])]);
  const keys = draft.board.keys.filter(({ id }) => !gone.has(id));
  if (keys.length === 0 || keys.length === draft.board.keys.length) return draft;
  const from = new Map([...draft.from].filter(([id]) => !gone.has(id)));
  return withBoard({ ...draft, from }, { ...draft.board, keys });
}

/** What came of adding: the draft, and the new key or the two of them; none where the board is full. */
export interface Added {
  readonly draft: BoardDraft;
  readonly keys: readonly KeyId[];
}

/** Adds a key like its nearest one, with its middle at a point; with `alike` its mirror image as well. */
export function addKeyAt(draft: BoardDraft, at: Point, alike: boolean): Added {
  const model = nearest(draft.board.keys, at);
  return model === undefined ? { draft, keys: [] } : added(draft, { ...model, ...at }, alike);
}

/**
 * Adds a key a pitch away from another, where there is room: outwards, inwards, towards the typist, away from them;
 * outwards if there is none anywhere.
 */
export function addKeyBeside(draft: BoardDraft, beside: KeyId, alike: boolean): Added {
  const model = draft.board.keys.find(({ id }) => id === beside);
  if (model === undefined) return { draft, keys: [] };
  const gap = capGapMm(draft);
  const out = (model.hand === 'right' ? 1 : -1) * (model.width + gap);
  const down = model.height + gap;
  const steps = [
    { x: out, y: 0 },
    { x: -out, y: 0 },
    { x: 0, y: down },
    { x: 0, y: -down },
  ];
  const places = steps.map((step) => ({ ...model, ...plus(model, turned(step, model.rotation)) }));
  const free = places.find((place) => draft.board.keys.every((key) => overlapMm(key, place) <= 0.1));
  return added(draft, free ?? places[0] ?? model, alike);
}

function added(draft: BoardDraft, model: BoardKey, alike: boolean): Added {
  const more = alike ? 2 : 1;
  if (draft.board.keys.length + more > LIMITS.keys) return { draft, keys: [] };
  const one = kept({ ...model, id: newKeyId(draft, model.hand), home: false });
  const first = withBoard(draft, { ...draft.board, keys: [...draft.board.keys, one] });
  if (!alike) return { draft: first, keys: [one.id] };
  const hand = model.hand === 'left' ? 'right' : 'left';
  const x = 2 * mirrorAxis(draft.board) - one.x;
  const other = kept({ ...one, id: newKeyId(first, hand), x, rotation: -one.rotation, hand });
  const both = withBoard(first, { ...first.board, keys: [...first.board.keys, other] });
  return { draft: both, keys: [one.id, other.id] };
}

/**
 * The keys that are changed themselves: all that are named, or with `alike` those of the first one's hand, since
 * the others follow as mirror images.
 */
function leaders(draft: BoardDraft, { keys, alike }: ByHand): readonly BoardKey[] {
  const named = keys.flatMap((id) => draft.board.keys.find((key) => key.id === id) ?? []);
  const partners = partnersOf(draft.board);
  const leads = (key: BoardKey) => key.hand === named[0]?.hand || !keys.includes(partners.get(key.id) ?? '');
  return alike ? named.filter(leads) : named;
}

function mirrored(draft: BoardDraft, keys: readonly KeyId[]): readonly KeyId[] {
  const partners = partnersOf(draft.board);
  return keys.flatMap((key) => partners.get(key) ?? []);
}

function changed(draft: BoardDraft, which: ByHand, change: (key: BoardKey) => BoardKey): BoardDraft {
  const now = new Map<KeyId, BoardKey>();
  const partners = which.alike ? partnersOf(draft.board) : new Map<KeyId, KeyId>();
  for (const key of leaders(draft, which)) {
    const after = kept(change(key));
    now.set(key.id, after);
    const partner = draft.board.keys.find(({ id }) => id === partners.get(key.id));
    if (partner !== undefined) now.set(partner.id, kept(followed(partner, key, after)));
  }
  const keys = draft.board.keys.map((key) => now.get(key.id) ?? key);
  return { ...draft, board: { ...draft.board, keys } };
}

/** A mirror image after its original was changed: as far the other way, so that a difference of the halves stays one. */
function followed(partner: BoardKey, before: BoardKey, after: BoardKey): BoardKey {
  return {
    ...partner,
    x: partner.x - (after.x - before.x),
    y: partner.y + (after.y - before.y),
    rotation: partner.rotation - (after.rotation - before.rotation),
    width: partner.width + (after.width - before.width),
    height: partner.height + (after.height - before.height),
    hand: after.hand === before.hand ? partner.hand : before.hand,
    finger: after.finger,
    home: after.home,
  };
}

/** Within what a document may hold, in thousandths, turned by less than half a turn. */
function kept(key: BoardKey): BoardKey {
  const within = (value: number, least: number, most: number) => tidy(Math.min(Math.max(value, least), most));
  return {
    ...key,
    x: within(key.x, -2000, 2000),
    y: within(key.y, -2000, 2000),
    width: within(key.width, 5, 200),
    height: within(key.height, 5, 200),
    rotation: tidy(key.rotation - 360 * Math.round(key.rotation / 360)),
  };
}

/** The middle of the upright rectangle round some keys' caps, mm. */
export function middleOf(keys: readonly BoardKey[]): Point {
  const corners = keys.flatMap((key) => capCorners(key));
  const half = (values: readonly number[]) => (Math.min(...values) + Math.max(...values)) / 2;
  return { x: half(corners.map(({ x }) => x)), y: half(corners.map(({ y }) => y)) };
}

/** The key whose middle is nearest to a point; the first of equals. */
export function nearest(keys: readonly BoardKey[], at: Point): BoardKey | undefined {
  const distances = keys.map((key) => distanceMm(key, at));
  return keys[distances.indexOf(Math.min(...distances))];
}

/** The key whose cap has a point of the board in it; the last of several, which is drawn on top. */
export function keyAt(keys: readonly BoardKey[], at: Point): BoardKey | undefined {
  return keys.findLast((key) => {
    const inside = turned(minus(at, key), -key.rotation);
    return Math.abs(inside.x) <= key.width / 2 && Math.abs(inside.y) <= key.height / 2;
  });
}
