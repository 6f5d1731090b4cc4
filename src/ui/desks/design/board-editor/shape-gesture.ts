import type { BoardDraft } from '../../../../core/board/draft.ts';
import { moveHalf, turnHalf } from '../../../../core/board/halves.ts';
import {
  addKeyAt,
  capGapMm,
  middleOf,
  moveKeys,
  nearest,
  paintFinger,
  paintHome,
  turnKeys,
} from '../../../../core/board/hand-work.ts';
import { partnersOf } from '../../../../core/board/partners.ts';
import { distanceMm, minus, type Point } from '../../../../core/board/point.ts';
import { type Guide, snapped, snappedTurn } from '../../../../core/board/snap.ts';
import type { BoardKey, Finger, Hand, KeyId } from '../../../../core/keymap/types.ts';
import { stepTitle } from './shape-words.ts';

/** What a press on the board is for. */
export type Tool = 'arrange' | 'finger' | 'home' | 'add';

/** What lies under the pointer. */
export type Grip =
  | { readonly on: 'bare' }
  | { readonly on: 'key'; readonly key: KeyId }
  /** The handle that turns what is selected. */
  | { readonly on: 'turn' }
  | { readonly on: 'half' | 'half-turn'; readonly hand: Hand };

/** A pointer on the board, mm. */
export interface ShapeMove {
  readonly kind: 'down' | 'move' | 'up' | 'cancel';
  readonly at: Point;
  readonly grip: Grip;
  /** With Shift: adds to what is selected. */
  readonly more: boolean;
  /** With Alt: nothing snaps. */
  readonly free: boolean;
}

/** What the gesture works on. */
export interface ShapeScene {
  readonly draft: BoardDraft;
  readonly selected: readonly KeyId[];
  readonly alike: boolean;
  readonly tool: Tool;
  readonly finger: Finger;
  /** How far a press goes before it is a drag, and within what a key falls into place, mm. */
  readonly slackMm: number;
  readonly snapMm: number;
}

type Doing = 'rest' | 'press' | 'move' | 'turn' | 'half' | 'half-turn' | 'lasso' | 'paint';

/** What is remembered while the pointer is down. */
export interface ShapeGesture {
  readonly doing: Doing;
  readonly from: Point;
  readonly grip: Grip;
  readonly keys: readonly KeyId[];
}

/** What a move of the pointer comes to. `commit` is the one step that a finished gesture makes. */
export interface ShapeOutcome {
  readonly gesture: ShapeGesture;
  readonly preview: BoardDraft | null;
  readonly guides: readonly Guide[];
  readonly lasso: readonly [Point, Point] | null;
  readonly select?: readonly KeyId[];
  readonly commit?: {
    readonly title: string;
    readonly draft: BoardDraft;
    readonly select?: readonly KeyId[];
  };
}

/** No pointer is down. */
export const AT_REST: ShapeGesture = { doing: 'rest', from: { x: 0, y: 0 }, grip: { on: 'bare' }, keys: [] };

const NOTHING: ShapeOutcome = { gesture: AT_REST, preview: null, guides: [], lasso: null };

/**
 * What a pointer's move makes of a gesture. While it goes on there is a preview; letting go makes one step, and a
 * cancelled gesture (Escape) leaves no trace.
 */
export function shapeAfter(gesture: ShapeGesture, move: ShapeMove, scene: ShapeScene): ShapeOutcome {
  if (move.kind === 'cancel') return NOTHING;
  if (move.kind === 'down') return pressed(move, scene);
  if (gesture.doing === 'rest') return NOTHING;
  const begun = gesture.doing === 'press' ? begin(gesture, move, scene) : gesture;
  const going = begun.doing === 'paint' ? { ...begun, keys: touched(begun.keys, move) } : begun;
  return move.kind === 'move' ? during(going, move, scene) : finished(going, move, scene);
}

function pressed(move: ShapeMove, { tool }: ShapeScene): ShapeOutcome {
  const isPaint =
    (tool === 'finger' || tool === 'home') && (move.grip.on === 'key' || move.grip.on === 'bare');
  const doing = isPaint ? 'paint' : 'press';
  const gesture: ShapeGesture = { doing, from: move.at, grip: move.grip, keys: touched([], move) };
  return { ...NOTHING, gesture: isPaint ? gesture : { ...gesture, keys: [] } };
}

function touched(keys: readonly KeyId[], { grip }: ShapeMove): readonly KeyId[] {
  return grip.on !== 'key' || keys.includes(grip.key) ? keys : [...keys, grip.key];
}

/** A press that has gone far enough becomes what was pressed on. */
function begin(gesture: ShapeGesture, move: ShapeMove, scene: ShapeScene): ShapeGesture {
  if (scene.tool === 'add' || distanceMm(gesture.from, move.at) < scene.slackMm) return gesture;
  const { grip } = gesture;
  switch (grip.on) {
    case 'key':
      return {
        ...gesture,
        doing: 'move',
        keys: scene.selected.includes(grip.key) ? scene.selected : [grip.key],
      };
    case 'turn':
      return { ...gesture, doing: 'turn', keys: scene.selected };
    case 'half':
    case 'half-turn':
      return { ...gesture, doing: grip.on };
    case 'bare':
      return { ...gesture, doing: 'lasso' };
  }
}

function during(gesture: ShapeGesture, move: ShapeMove, scene: ShapeScene): ShapeOutcome {
  if (gesture.doing === 'press') return { ...NOTHING, gesture };
  if (gesture.doing === 'lasso') return { ...NOTHING, gesture, lasso: [gesture.from, move.at] };
  const { draft, guides } = made(gesture, move, scene);
  return { ...NOTHING, gesture, preview: draft, guides };
}

function finished(gesture: ShapeGesture, move: ShapeMove, scene: ShapeScene): ShapeOutcome {
  const { grip } = gesture;
  if (gesture.doing === 'press') {
    if (scene.tool === 'add') return adding(gesture.from, scene);
    if (grip.on === 'key') return { ...NOTHING, select: clicked(grip.key, move.more, scene.selected) };
    return grip.on === 'bare' && !move.more ? { ...NOTHING, select: [] } : NOTHING;
  }
  if (gesture.doing === 'lasso') {
    const caught = within(scene.draft.board.keys, gesture.from, move.at);
    return { ...NOTHING, select: move.more ? [...new Set([...scene.selected, ...caught])] : caught };
  }
  const { draft } = made(gesture, move, scene);
  const title = stepTitle(gesture.doing, gesture.keys.length, scene);
  const select = gesture.doing === 'move' ? { select: gesture.keys } : {};
  return draft === scene.draft ? NOTHING : { ...NOTHING, commit: { title, draft, ...select } };
}

function adding(at: Point, scene: ShapeScene): ShapeOutcome {
  const { draft, keys } = addKeyAt(scene.draft, placed(at, scene), scene.alike);
  return keys.length === 0 ? NOTHING : { ...NOTHING, commit: { title: 'Add a key', draft, select: keys } };
}

/** Where a new key falls into place. */
function placed(at: Point, { draft, snapMm }: ShapeScene): Point {
  const model = nearest(draft.board.keys, at);
  if (model === undefined) return at;
  return snapped({ ...model, ...at }, draft.board.keys, { gapMm: capGapMm(draft), withinMm: snapMm }).at;
}

function clicked(key: KeyId, more: boolean, selected: readonly KeyId[]): readonly KeyId[] {
  if (!more) return [key];
  return selected.includes(key) ? selected.filter((each) => each !== key) : [...selected, key];
}

interface Made {
  readonly draft: BoardDraft;
  readonly guides: readonly Guide[];
}

function made(gesture: ShapeGesture, move: ShapeMove, scene: ShapeScene): Made {
  const { draft, alike } = scene;
  const which = { keys: gesture.keys, alike };
  const first = draft.board.keys.find(({ id }) => id === gesture.keys[0]);
  const by = minus(move.at, gesture.from);
  switch (gesture.doing) {
    case 'move':
      return moved(gesture, move, scene);
    case 'turn':
      return { draft: turnKeys(draft, which, turnOf(gesture, move, scene)), guides: [] };
    case 'paint': {
      if (first === undefined) return { draft, guides: [] };
      const painted =
        scene.tool === 'home'
          ? paintHome(draft, which, !first.home)
          : paintFinger(draft, which, scene.finger);
      return { draft: painted, guides: [] };
    }
    default:
      return { draft: halfMade(gesture, move, scene, by), guides: [] };
  }
}

function moved({ keys, grip, from }: ShapeGesture, move: ShapeMove, scene: ShapeScene): Made {
  const { draft, alike } = scene;
  const grabbed = draft.board.keys.find(({ id }) => grip.on === 'key' && id === grip.key);
  if (grabbed === undefined) return { draft, guides: [] };
  const by = minus(move.at, from);
  const there = { ...grabbed, x: grabbed.x + by.x, y: grabbed.y + by.y };
  const fallen = move.free
    ? { at: there, guides: [] }
    : snapped(there, still(scene, keys), { gapMm: capGapMm(draft), withinMm: scene.snapMm });
  // The hand of the key that was grabbed leads.
  const named = [grabbed.id, ...keys.filter((id) => id !== grabbed.id)];
  return { draft: moveKeys(draft, { keys: named, alike }, minus(fallen.at, grabbed)), guides: fallen.guides };
}

/** The keys that stay where they are while some are moved: guides come from them. */
function still({ draft, alike }: ShapeScene, keys: readonly KeyId[]): readonly BoardKey[] {
  const partners = alike ? partnersOf(draft.board) : new Map<KeyId, KeyId>();
  const moving = new Set([...keys, ...keys.map((key) => partners.get(key))]);
  return draft.board.keys.filter(({ id }) => !moving.has(id));
}

/** How far the selected keys are turned, degrees: so that the first one falls onto a turn near by. */
function turnOf({ keys, from }: ShapeGesture, move: ShapeMove, scene: ShapeScene): number {
  const turning = keys.flatMap((id) => scene.draft.board.keys.find((key) => key.id === id) ?? []);
  const [first] = turning;
  if (first === undefined) return 0;
  const raw = swept(middleOf(turning), from, move.at);
  if (move.free) return Math.round(raw * 10) / 10;
  return snappedTurn(first.rotation + raw, still(scene, keys)) - first.rotation;
}

/** Halves go by half a mm and half a degree, or by tenths when nothing snaps. */
function halfMade({ grip, from }: ShapeGesture, move: ShapeMove, scene: ShapeScene, by: Point): BoardDraft {
  const { draft, alike } = scene;
  if (grip.on !== 'half' && grip.on !== 'half-turn') return draft;
  const steps = move.free ? 10 : 2;
  const whole = (value: number) => Math.round(value * steps) / steps;
  if (grip.on === 'half') return moveHalf(draft, grip.hand, { x: whole(by.x), y: whole(by.y) }, alike);
  const middle = middleOf(draft.board.keys.filter(({ hand }) => hand === grip.hand));
  return turnHalf(draft, grip.hand, whole(swept(middle, from, move.at)), alike);
}

/** The angle from one point to another round a middle, degrees, clockwise, less than half a turn. */
function swept(middle: Point, from: Point, to: Point): number {
  const angle = (point: Point) => (Math.atan2(point.y - middle.y, point.x - middle.x) * 180) / Math.PI;
  const raw = angle(to) - angle(from);
  return raw - 360 * Math.round(raw / 360);
}

function within(keys: readonly BoardKey[], one: Point, other: Point): readonly KeyId[] {
  const between = (value: number, a: number, b: number) => value >= Math.min(a, b) && value <= Math.max(a, b);
  return keys
    .filter(({ x, y }) => between(x, one.x, other.x) && between(y, one.y, other.y))
    .map(({ id }) => id);
}
