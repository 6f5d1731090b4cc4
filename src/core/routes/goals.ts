import type { HostLayout, HostOutput, Stroke } from '../host/host-layout.ts';
import { isModifier, type Modifier } from '../keymap/codes.ts';
import type { ModifierName, Need } from '../keymap/need.ts';
import { type ModifierSet, modifierBit, modifierSet, type Sign, signOf } from './act.ts';
import type { Means } from './means.ts';

/**
 * Which strokes produce which needs, as a tree: a node is reached by the strokes so far, and at a stroke a need may be
 * complete. Node 0 is the start. Either Shift serves for a character, either side's key for a shortcut.
 */
export interface Goals {
  /** Per node: what signs complete or lead to. */
  readonly nodes: readonly GoalNode[];
  /** Needs that are a modifier by itself, by its bit. */
  readonly bare: ReadonlyMap<ModifierSet, number>;
  /** Per need: the modifiers that may be down at one of its strokes. Needs without means do not stand here. */
  readonly setsOf: ReadonlyMap<number, ReadonlySet<ModifierSet>>;
  /** Per need: the numbers of the codes that its strokes are on. */
  readonly codesOf: ReadonlyMap<number, ReadonlySet<number>>;
}

export interface GoalNode {
  readonly hits: ReadonlyMap<Sign, GoalHit>;
}

/** What a stroke comes to. */
export interface GoalHit {
  /** Needs (by their index) that are complete with this stroke. */
  readonly needs: number[];
  /** The node that it leads to; -1 where no sequence goes on. */
  next: number;
}

const SIDES: Readonly<Record<ModifierName, readonly Modifier[]>> = {
  Control: ['ControlLeft', 'ControlRight'],
  Shift: ['ShiftLeft', 'ShiftRight'],
  Alt: ['AltLeft', 'AltRight'],
  Meta: ['MetaLeft', 'MetaRight'],
};

/** The goals of some needs (by their index), by sequences of exactly `strokes` strokes whose every stroke can be made. */
export function goalsOf(
  needs: readonly Need[],
  open: readonly number[],
  host: HostLayout,
  strokes: number,
  means: Means,
): Goals {
  const tree = new GoalTree();
  const bare = new Map<ModifierSet, number>();
  for (const index of open) {
    const need = needs[index];
    if (need === undefined) continue;
    if (need.kind === 'key' && isModifier(need.code)) {
      if (strokes === 1) bare.set(modifierBit(need.code), index);
      continue;
    }
    for (const sequence of sequencesOf(need, host)) {
      if (sequence.length !== strokes) continue;
      const made = sequence.map((signs) => signs.filter(means.canMake));
      if (means.canMakeAll(made)) tree.add(index, made);
    }
  }
  return { nodes: tree.nodes, bare, setsOf: tree.setsOf, codesOf: tree.codesOf };
}

class GoalTree {
  readonly nodes: { readonly hits: Map<Sign, GoalHit> }[] = [];
  readonly setsOf = new Map<number, Set<ModifierSet>>();
  readonly codesOf = new Map<number, Set<number>>();

  constructor() {
    this.#addNode();
  }

  add(need: number, sequence: readonly (readonly Sign[])[], from = 0, node = 0): void {
    for (const sign of sequence[from] ?? []) {
      include(this.setsOf, need, sign & 255);
      include(this.codesOf, need, sign >> 8);
      const hit = this.#hitAt(node, sign);
      if (from === sequence.length - 1) {
        if (!hit.needs.includes(need)) hit.needs.push(need);
      } else {
        if (hit.next < 0) hit.next = this.#addNode();
        this.add(need, sequence, from + 1, hit.next);
      }
    }
  }

  #addNode(): number {
    return this.nodes.push({ hits: new Map() }) - 1;
  }

  #hitAt(number: number, sign: Sign): GoalHit {
    const node = this.nodes[number];
    const known = node?.hits.get(sign);
    if (known !== undefined) return known;
    const hit: GoalHit = { needs: [], next: -1 };
    node?.hits.set(sign, hit);
    return hit;
  }
}

function include(sets: Map<number, Set<number>>, at: number, value: number): void {
  const known = sets.get(at);
  if (known === undefined) sets.set(at, new Set([value]));
  else known.add(value);
}

/** The sequences of strokes that produce a need, each stroke with all the signs that serve. */
function sequencesOf(need: Need, host: HostLayout): readonly (readonly (readonly Sign[])[])[] {
  if (need.kind === 'key') return [[[signOf(need.code, 0)]]];
  if (need.kind === 'shortcut') return [[sidesOf(need.modifiers).map((set) => signOf(need.code, set))]];
  return host.routesOf(need.char).map((route) => route.map((stroke) => charSigns(stroke, host)));
}

/** The most strokes that any host needs for a character: two dead keys and a letter. */
export const MOST_STROKES = 3;

/** One side's modifier, the other's, or both: an action may bring both. */
function eitherSide(name: ModifierName): readonly ModifierSet[] {
  const sides = SIDES[name].map(modifierBit);
  return [...sides, modifierSet(SIDES[name])];
}

/**
 * A character's stroke with either Shift, or both; also with modifiers that change nothing there, which the host's own
 * routes leave out: Shift + Space is a space, and where level 3 repeats level 1 so is AltRight + Space.
 */
function charSigns(stroke: Stroke, host: HostLayout): readonly Sign[] {
  const { level3 } = host;
  const shift = stroke.with.some((modifier) => SIDES.Shift.includes(modifier));
  const third = level3 !== null && stroke.with.includes(level3);
  const given = host.outputOf(stroke.code, { shift, level3: third, caps: false });
  const signs: Sign[] = [];
  for (const [withShift, withThird] of LEVELS) {
    if ((withThird && level3 === null) || (shift && !withShift) || (third && !withThird)) continue;
    const isOwn = withShift === shift && withThird === third;
    if (
      !isOwn &&
      !isSame(given, host.outputOf(stroke.code, { shift: withShift, level3: withThird, caps: false }))
    )
      continue;
    const around = withThird && level3 !== null ? modifierBit(level3) : 0;
    for (const side of withShift ? eitherSide('Shift') : [0]) signs.push(signOf(stroke.code, around | side));
  }
  return signs;
}

/** Whether Shift and level 3 are down: the four levels of a key, Caps Lock off. */
const LEVELS: readonly (readonly [shift: boolean, level3: boolean])[] = [
  [false, false],
  [true, false],
  [false, true],
  [true, true],
];

/** Whether two outputs are the same character or dead key. Keys that give nothing by themselves (Enter, Tab) are not. */
function isSame(one: HostOutput, other: HostOutput): boolean {
  if (one.kind === 'char') return other.kind === 'char' && one.char === other.char;
  return one.kind === 'dead' && other.kind === 'dead' && one.dead === other.dead;
}

function sidesOf(names: readonly ModifierName[]): readonly ModifierSet[] {
  return names.reduce<readonly ModifierSet[]>(
    (sets, name) => sets.flatMap((set) => eitherSide(name).map((side) => set | side)),
    [0],
  );
}
