import { describe, expect, test } from 'vitest';
import { draftOf } from '../../../../../src/core/board/draft.ts';
import type { Point } from '../../../../../src/core/board/point.ts';
import type { KeyId } from '../../../../../src/core/keymap/types.ts';
import {
  AT_REST,
  type Grip,
  type ShapeMove,
  type ShapeOutcome,
  type ShapeScene,
  shapeAfter,
} from '../../../../../src/ui/desks/design/board-editor/shape-gesture.ts';
import { readyBoard } from '../../../../core/board/boards.ts';

const DRAFT = draftOf(readyBoard('split-36'));
const SCENE: ShapeScene = {
  draft: DRAFT,
  selected: [],
  alike: false,
  tool: 'arrange',
  finger: 'ring',
  slackMm: 1,
  snapMm: 1.5,
};

function keyOf(draft: typeof DRAFT, id: KeyId) {
  const key = draft.board.keys.find((each) => each.id === id);
  if (key === undefined) throw new Error(`no key ${id}`);
  return key;
}

const on = (key: KeyId): Grip => ({ on: 'key', key });
const BARE: Grip = { on: 'bare' };
type Part = Partial<ShapeMove>;
const down = (at: Point, grip: Grip, part: Part = {}): ShapeMove => ({
  kind: 'down',
  at: { x: at.x, y: at.y },
  grip,
  more: false,
  free: false,
  ...part,
});
const move = (at: Point, grip: Grip = BARE, part: Part = {}) => down(at, grip, { kind: 'move', ...part });
const up = (at: Point, part: Part = {}) => down(at, BARE, { kind: 'up', ...part });
const cancel = (): ShapeMove => down({ x: 0, y: 0 }, BARE, { kind: 'cancel' });

/** Plays moves of the pointer, and gives what each of them comes to. */
function play(scene: Partial<ShapeScene>, ...moves: readonly ShapeMove[]): readonly ShapeOutcome[] {
  let gesture = AT_REST;
  return moves.map((each) => {
    const outcome = shapeAfter(gesture, each, { ...SCENE, ...scene });
    gesture = outcome.gesture;
    return outcome;
  });
}

/** What the whole of it leaves: the last outcome, which has no preview any more. */
function left(scene: Partial<ShapeScene>, ...moves: readonly ShapeMove[]): ShapeOutcome {
  const last = play(scene, ...moves).at(-1);
  if (last === undefined) throw new Error('nothing was played');
  expect([last.preview, last.lasso, last.guides, last.gesture]).toEqual([null, null, [], AT_REST]);
  return last;
}

const R25 = keyOf(DRAFT, 'R25');
const aside = (by: number, downwards = 0): Point => ({ x: R25.x + by, y: R25.y + downwards });

describe('arranging', () => {
  test('a press that hardly moves selects a key; with Shift it adds or takes away', () => {
    expect(left({}, down(R25, on('R25')), up(aside(0.5))).select).toEqual(['R25']);
    const more = { more: true };
    expect(left({ selected: ['L11'] }, down(R25, on('R25')), up(R25, more)).select).toEqual(['L11', 'R25']);
    expect(left({ selected: ['L11', 'R25'] }, down(R25, on('R25')), up(R25, more)).select).toEqual(['L11']);
    expect(left({ selected: ['R25'] }, down({ x: 0, y: 0 }, BARE), up({ x: 0, y: 0 })).select).toEqual([]);
  });

  test('a drag shows the key on its way and makes one step', () => {
    const free = { free: true };
    const outcomes = play({}, down(R25, on('R25')), move(aside(20, 5), BARE, free), up(aside(30, 8), free));
    expect(outcomes.map(({ commit }) => commit?.title)).toEqual([undefined, undefined, 'Move a key']);
    expect(outcomes[1]?.preview?.board.keys.find(({ id }) => id === 'R25')?.x).toBeCloseTo(R25.x + 20, 2);
    const made = outcomes[2]?.commit;
    expect(made?.draft && keyOf(made.draft, 'R25')).toMatchObject({ x: R25.x + 30, y: R25.y + 8 });
    expect(made?.select).toEqual(['R25']);
  });

  test('selected keys go together, and with both halves alike the grabbed key’s hand leads', () => {
    const scene = { selected: ['L15', 'R15', 'R25'], alike: true };
    const made = left(scene, down(R25, on('R25')), up(aside(3), { free: true })).commit;
    expect(made?.title).toBe('Move 3 keys');
    const went = (id: KeyId) => made && keyOf(made.draft, id).x - keyOf(DRAFT, id).x;
    expect([went('R25'), went('R15'), went('L15'), went('L25')].map((by) => Math.round(by ?? 0))).toEqual([
      3, 3, -3, -3,
    ]);
  });

  test('it falls into place beside its neighbours and says by which', () => {
    const at = { x: R25.x + 0.6, y: R25.y + 0.4 };
    const [, going, end] = play({ slackMm: 0.1 }, down(R25, on('R25')), move(at), up(at));
    expect(going?.guides.map(({ of }) => of)).toEqual(['R35', 'R35']);
    const back = end?.commit && keyOf(end.commit.draft, 'R25');
    expect([back?.x, back?.y]).toEqual([expect.closeTo(R25.x, 1), expect.closeTo(R25.y, 1)]);
  });

  test('Escape leaves no trace, and what comes after it does nothing', () => {
    const end = left({}, down(R25, on('R25')), move(aside(20)), cancel(), move(aside(30)), up(aside(30)));
    expect([end.commit, end.select]).toEqual([undefined, undefined]);
  });

  test('a drag back to where it began makes no step', () => {
    const { commit } = left({}, down(R25, on('R25')), move(aside(20)), up(R25, { free: true }));
    // The store takes no step that changes nothing.
    expect(commit?.draft.board).toEqual(DRAFT.board);
  });

  test('a lasso catches the keys whose middles are in it', () => {
    const inner = ['R11', 'R12', 'R21', 'R22', 'R31', 'R32'].map((id) => keyOf(DRAFT, id));
    const from = { x: Math.min(...inner.map(({ x }) => x)) - 1, y: Math.min(...inner.map(({ y }) => y)) - 1 };
    const to = { x: Math.max(...inner.map(({ x }) => x)) + 1, y: Math.max(...inner.map(({ y }) => y)) + 1 };
    const caught = left({}, down(from, BARE), move({ x: from.x + 5, y: from.y }), up(to)).select;
    expect(caught).toEqual(['R11', 'R12', 'R21', 'R22', 'R31', 'R32']);
  });

  test('the handle turns what is selected, onto turns of other keys or fives', () => {
    const middle = keyOf(DRAFT, 'RT3');
    const scene = { selected: ['RT3'] };
    const above = { x: middle.x, y: middle.y - 20 };
    const beside = { x: middle.x + 20, y: middle.y };
    const made = left(scene, down(above, { on: 'turn' }), move(beside, BARE), up(beside)).commit;
    expect(made?.title).toBe('Turn a key');
    const turned = made && keyOf(made.draft, 'RT3').rotation;
    expect(Math.abs((turned ?? 0) - (middle.rotation + 90))).toBeLessThanOrEqual(2.5);
  });

  test('the halves are moved and turned by their handles', () => {
    const grip: Grip = { on: 'half', hand: 'right' };
    const made = left({ alike: true }, down({ x: 90, y: -50 }, grip), up({ x: 95.2, y: -50 })).commit;
    expect([made?.title, made?.draft.board.madeFrom?.gapMm]).toEqual(['Move a half', 80]);
    const own = left(
      {},
      down({ x: 90, y: -50 }, { on: 'half-turn', hand: 'left' }),
      up({ x: 80, y: -50 }),
    ).commit;
    expect(own?.draft.board.madeFrom?.left?.turnDeg).not.toBe(-8);
    expect(own?.draft.board.madeFrom?.turnDeg).toBe(-8);
  });
});

describe('painting', () => {
  test('every key that is dragged across goes to the finger, in one step', () => {
    const scene = { tool: 'finger', finger: 'ring' } as const;
    const moves = [down(R25, on('R25')), move(R25, on('R24')), move(R25, BARE), move(R25, on('R15'))];
    const made = left(scene, ...moves, up(R25)).commit;
    expect(made?.title).toBe('Give 3 keys to the ring finger');
    expect(made && ['R25', 'R24', 'R15'].map((id) => keyOf(made.draft, id).finger)).toEqual([
      'ring',
      'ring',
      'ring',
    ]);
    expect(left(scene, ...moves, cancel()).commit).toBeUndefined();
  });

  test('home keys are painted, or taken away where the first one was home', () => {
    const scene = { tool: 'home' } as const;
    const made = left(scene, down(R25, on('R35')), up(R25)).commit;
    expect(made && [keyOf(made.draft, 'R35').home, keyOf(made.draft, 'R25').home]).toEqual([true, false]);
    const away = left(scene, down(R25, on('R25')), up(R25)).commit;
    expect(away && keyOf(away.draft, 'R25').home).toBe(false);
  });
});

test('adding: a press puts a key there, like its nearest, and selects it', () => {
  const at = aside(30, 3);
  const made = left({ tool: 'add', alike: true }, down(at, BARE), up(at)).commit;
  expect(made?.draft.board.keys).toHaveLength(38);
  expect(made?.select).toEqual(['R1', 'L1']);
  expect(made && keyOf(made.draft, 'R1').finger).toBe('little');
});
