import type { KeyEvent } from '../base/key-event.ts';
import { type KeyRenaming, renamed } from '../board/key-renaming.ts';
import { compileKeymap } from '../engine/compile.ts';
import { playCompiled } from '../engine/play.ts';
import type { HostLayout } from '../host/host-layout.ts';
import { actionsOf, type StandingAction } from '../keymap/actions-of.ts';
import type { Action, KeyId, Keymap } from '../keymap/types.ts';
import type { Step } from '../routes/types.ts';
import { type ExpectedStroke, expectedStrokes } from './expected.ts';
import { type Sight, sightOf } from './sight.ts';
import { placeName, waysToAll } from './ways-to-all.ts';

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
  const ways = waysToAll(keymap, host);
  const steps: CheckStep[] = [];
  const unreached: Unreached[] = [];
  for (const { at, action } of actionsOf(keymap)) {
    if (action.do === 'nothing') continue;
    const id = placeName(at);
    const route = ways.get(id) ?? null;
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

/** The id of a step after keys of the board were given other ids. */
export function renamedStep(id: string, renaming: KeyRenaming): string {
  const [layer, key, side] = id.split(' ');
  return key === undefined || side === undefined ? id : `${layer} ${renamed(renaming, key)} ${side}`;
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
