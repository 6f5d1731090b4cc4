import type { Act } from './act.ts';
import { type Plan, type PlannedChord, SHORTEST_MS } from './plan.ts';
import {
  canBeKept,
  conflictWait,
  gatheringOf,
  isLive,
  isWithin,
  mayBeQuiet,
  NO_CHORDS,
  pressOf,
  type Scope,
  settleWait,
  tapUnder,
  topWhen,
} from './press.ts';
import { isDown, type State } from './state.ts';

/** How a chord is pressed in a state: whether the open key is still open then, and what must have passed. */
interface Way {
  readonly inside: boolean;
  readonly settle: number;
}

/** What is worth pressing a chord for: its tap, once or kept down, and its hold. */
interface Worth {
  readonly tap: Act | null;
  readonly taps: boolean;
  readonly keeps: boolean;
  readonly holds: boolean;
}

/** Hands every press of a chord that is wanted in a state to the scope's `take`, in the document's order. */
export function chordPresses(scope: Scope): void {
  const { plan, state, on } = scope;
  const { open } = state;
  const top = topWhen(plan, state, on, false);
  const inside = open !== null && !state.releasedSinceOpen ? settleWait(plan, state, null, true) : null;
  const keptInside = inside === null ? null : settleWait(plan, state, null, false);
  const topInside = open === null ? top : topWhen(plan, state, on, true);
  // A key that is a hold only from the next press on has not turned its layer on by then (S14).
  const later = { inside: open?.tapIfAlone ?? false, settle: open?.holdAfterMs ?? 0 };
  for (const chord of plan.chords) {
    const worth = worthOf(scope, chord);
    if (worth === null || chord.keys.some((key) => isDown(state, key))) continue;
    if (inside?.inside === true && inside.wait === 0 && isLive(chord, topInside)) {
      const mayKeep = keptInside?.inside === true && keptInside.wait === 0;
      const now = { inside: true, settle: 0 };
      chordTaps(scope, chord, now, { ...worth, keeps: worth.keeps && mayKeep });
      if (worth.holds && mayKeep) chordHolds(scope, chord, now);
    }
    if (!isLive(chord, later.inside ? topInside : top)) continue;
    chordTaps(scope, chord, later, worth);
    if (worth.holds) chordHolds(scope, chord, later);
  }
}

function worthOf({ state, wants }: Scope, { binding }: PlannedChord): Worth | null {
  const tap = tapUnder(state, binding);
  const { hold } = binding;
  const taps = tap !== null && wants(tap, false);
  const keeps = tap !== null && canBeKept(tap) && wants(tap, true);
  const holds = hold !== null && (wants(hold, false) || (canBeKept(hold) && wants(hold, true)));
  return taps || keeps || holds ? { tap, taps, keeps, holds } : null;
}

/** What pressing a chord asks for: its keys in order, what must have passed, how far apart they come; null where it cannot be. */
function chordTiming({ plan, state, on }: Scope, chord: PlannedChord, { inside, settle }: Way) {
  const free = chord.keys.find((key) => conflictWait(state, key) < 0);
  const keys = free === undefined ? chord.keys : [free, ...chord.keys.filter((key) => key !== free)];
  const conflict = free === undefined ? conflictWait(state, keys[0] ?? -1) : 0;
  const quiet = state.presses > 0 ? chord.quietBeforeMs : 0;
  const before = Math.max(settle, conflict);
  const waited = Math.max(before, quiet);
  const spread = spreadPast(plan, state, chord, topWhen(plan, state, on, inside), waited);
  return spread === 'never' ? null : { keys, quiet, before, waited, spread };
}

function chordTaps(scope: Scope, chord: PlannedChord, way: Way, { tap, taps, keeps }: Worth): void {
  const { plan, state, on, take } = scope;
  const { both, holdAfterMs } = chord.binding;
  const timing = tap === null || (!taps && !keeps) ? null : chordTiming(scope, chord, way);
  if (tap === null || timing === null) return;
  const { keys, quiet, before, waited, spread } = timing;
  // Its time counts from its first key: pressed so far apart it would be a hold.
  if (both && spread !== null && !isWithin(spread, holdAfterMs)) return;
  const shifted = tap !== chord.binding.tap;
  if (taps) take(pressOf(keys, 'tap', tap, false, before, { quiet, chord, spread, shifted }));
  // A chord with a hold that stays down becomes the hold.
  if (!keeps || both) return;
  const gathering = gatheringOf(plan, state, on, way.inside, keys, waited);
  take(pressOf(keys, 'tap', tap, true, before, { quiet, chord, spread, shifted, gathering }));
}

/** A chord as a hold: kept for what comes next, or held until it is one and let go. */
function chordHolds(scope: Scope, chord: PlannedChord, way: Way): void {
  const { plan, state, on, wants, take } = scope;
  const { binding } = chord;
  const { hold, holdAfterMs } = binding;
  const timing = chordTiming(scope, chord, way);
  if (hold === null || timing === null) return;
  const { keys, quiet, spread } = timing;
  // It may have been tapped before: then the again within has to pass, and other chords may find it quiet by then.
  const afterRelease = state.presses > 0 ? binding.againWithinMs : 0;
  const most = afterRelease > 0 ? Number.POSITIVE_INFINITY : timing.waited;
  if (spreadPast(plan, state, chord, topWhen(plan, state, on, way.inside), most) !== spread) return;
  const before = Math.max(timing.before, afterRelease);
  const common = { quiet, afterRelease, chord, spread };
  if (canBeKept(hold) && wants(hold, true)) {
    const gathering = gatheringOf(plan, state, on, way.inside, keys, most);
    const more = { ...common, settles: 'by-next', open: binding, gathering } as const;
    take(pressOf(keys, 'hold', hold, true, before, more));
  }
  if (binding.tapIfAlone || !wants(hold, false)) return;
  take(pressOf(keys, 'hold', hold, false, before, { ...common, settles: 'by-time', holdAfterMs }));
}

/**
 * How far apart a chord's keys must be pressed so that no earlier chord of the same keys takes them: null where
 * together will do, `never` where one takes them always.
 */
function spreadPast(
  plan: Plan,
  state: State,
  chord: PlannedChord,
  top: number,
  wait: number,
): number | null | 'never' {
  let spread: number | null = null;
  for (const other of plan.chordsOfKey[chord.keys[0] ?? -1] ?? NO_CHORDS) {
    if (other === chord) return spread;
    const isSame =
      other.keys.length === chord.keys.length && other.keys.every((key) => chord.keys.includes(key));
    if (!isSame || !isLive(other, top) || !mayBeQuiet(state, other, wait)) continue;
    if (other.chord.windowMs + SHORTEST_MS > chord.chord.windowMs) return 'never';
    spread = Math.max(spread ?? 0, other.chord.windowMs);
  }
  return spread;
}
