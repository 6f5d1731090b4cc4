import type { KeyEvent } from '../base/key-event.ts';
import { type KeyRenaming, renamed } from '../board/key-renaming.ts';
import { compileKeymap } from '../engine/compile.ts';
import { playCompiled } from '../engine/play.ts';
import type { HostLayout } from '../host/host-layout.ts';
import { actionsOf, type StandingAction } from '../keymap/actions-of.ts';
import { CODES, type Code } from '../keymap/codes.ts';
import { chordsOf } from '../keymap/timing.ts';
import type { Action, Chord, ChordId, KeyId, Keymap, Slot } from '../keymap/types.ts';
import { findRoutes } from '../routes/find-routes.ts';
import type { Route, Step } from '../routes/types.ts';
import { type ExpectedStroke, expectedStrokes } from './expected.ts';
import { type Sight, sightOf } from './sight.ts';

/** One thing to press on the board, and what a right board sends for it. */
export interface CheckStep {
  /** The same for as long as the place is: "base L22 tap", "c1 tap". */
  readonly id: string;
  readonly at: StandingAction['at'];
  readonly action: Action;
  /** The keys that do it, pressed last: one, or those of a chord. */
  readonly keys: readonly KeyId[];
  /** Keys that are down meanwhile, in the order of going down. */
  readonly held: readonly KeyId[];
  /** The whole way from rest. */
  readonly way: readonly Step[];
  /** Presses and releases that make the way, as the engine takes them. */
  readonly events: readonly KeyEvent[];
  readonly expects: readonly ExpectedStroke[];
  readonly sight: Sight;
}

/** Something that the design has and gives no way to. */
export type Unreached = Pick<CheckStep, 'id' | 'at' | 'action'>;

/** Everything on a board that can be pressed, and what cannot be come to. */
export interface CheckPlan {
  /** In document order, chords last; see `walkOf` for the order in which to press. */
  readonly steps: readonly CheckStep[];
  /** What has an action and no way to it: a matter of the design and not of the board. */
  readonly unreached: readonly Unreached[];
}

/** The checkable things of a design on a computer. Blanks are left out: that nothing comes proves nothing. */
export function checkPlan(keymap: Keymap, host: HostLayout): CheckPlan {
  const compiled = compileKeymap(keymap, host);
  const marker = unusedCode(keymap);
  const steps: CheckStep[] = [];
  const unreached: Unreached[] = [];
  for (const standing of actionsOf(keymap)) {
    if (standing.action.do === 'nothing') continue;
    const { at, action } = standing;
    const id = stepId(at);
    const route = wayTo(keymap, host, at, marker);
    const last = route?.steps.findLast(({ move }) => move !== 'release');
    if (route === null || last === undefined) {
      unreached.push({ id, at, action });
      continue;
    }
    const played = playCompiled(compiled, route.events);
    const expects = played.ok ? expectedStrokes(played.value.output, host) : [];
    const way = { keys: last.keys, held: heldAt(route.steps), way: route.steps, events: route.events };
    steps.push({ id, at, action, ...way, expects, sight: sightOf(action, expects) });
  }
  return { steps, unreached };
}

function stepId(at: StandingAction['at']): string {
  return 'chord' in at ? `${at.chord} ${at.side}` : `${at.place.layer} ${at.place.key} ${at.side}`;
}

/** The id of a step after keys of the board were given other ids. */
export function renamedStep(id: string, renaming: KeyRenaming): string {
  const [layer, key, side] = id.split(' ');
  return key === undefined || side === undefined ? id : `${layer} ${renamed(renaming, key)} ${side}`;
}

/** A code that nothing in the design sends: what stands at a place can then be told from all else. */
function unusedCode(keymap: Keymap): Code {
  const used = new Set(actionsOf(keymap).flatMap(({ action }) => (action.do === 'key' ? [action.code] : [])));
  return CODES.findLast((code) => /^F\d/.test(code) && !used.has(code)) ?? 'F24';
}

/** The way to one action: that to a key which stands in its place and nowhere else. */
function wayTo(keymap: Keymap, host: HostLayout, at: StandingAction['at'], marker: Code): Route | null {
  const marked = withMarker(keymap, at, { do: 'key', code: marker });
  return findRoutes(marked, host, [{ kind: 'key', code: marker }])[0]?.route ?? null;
}

function withMarker(keymap: Keymap, at: StandingAction['at'], marker: Action & { do: 'key' }): Keymap {
  if ('chord' in at) return { ...keymap, chords: markedChords(keymap, at.chord, at.side, marker) };
  const { layer, key } = at.place;
  const layers = keymap.layers.map((one) => {
    const binding = one.id === layer ? one.places[key] : undefined;
    if (binding === undefined) return one;
    return { ...one, places: { ...one.places, [key]: { ...binding, [at.side]: marker } } };
  });
  return { ...keymap, layers };
}

function markedChords(keymap: Keymap, id: ChordId, side: Slot, marker: Action & { do: 'key' }): Chord[] {
  const field = side === 'tap' ? 'action' : side;
  return chordsOf(keymap).map((chord) => (chord.id === id ? { ...chord, [field]: marker } : chord));
}

/** The keys that are down while the last press is made. */
function heldAt(steps: readonly Step[]): readonly KeyId[] {
  let held: KeyId[] = [];
  const last = steps.findLastIndex(({ move }) => move !== 'release');
  for (const { move, keys } of steps.slice(0, Math.max(0, last))) {
    if (move === 'hold') held = [...held, ...keys];
    if (move === 'release') held = held.filter((key) => !keys.includes(key));
  }
  return held;
}
