import { isCode, isModifier, MODIFIERS, type Modifier } from '../keymap/codes.ts';
import { type ComputerState, type HeldState, stateOf } from './computer-state.ts';

/** A key event as a browser tells it of a real board: nothing but results. Times in ms on the event's own clock. */
export interface HeardKey {
  readonly kind: 'down' | 'up';
  /** W3C `code`; empty where the browser does not say. */
  readonly code: string;
  /** W3C `key`: the character, `Dead`, or the name of the key. */
  readonly key: string;
  readonly timeMs: number;
  readonly repeat: boolean;
  /** What the computer holds to be down or on with this event in. */
  readonly states: readonly ComputerState[];
}

/** One thing that the computer received: a key with the modifiers down around it, or modifiers by themselves. */
export interface HeardStroke {
  readonly code: string;
  /** In the order of rule I6. */
  readonly with: readonly Modifier[];
  readonly key: string;
  readonly timeMs: number;
  /** Modifiers that the computer holds to be down though none of this was pressed here: from before. Absent where none is. */
  readonly carried?: readonly HeldState[];
  /** Caps Lock was on. */
  readonly caps?: true;
}

/** A press that follows its own release sooner than this is no finger, ms (common practice, no source). */
export const CHATTER_MS = 30;

/** A press too soon after its own release. */
export interface Bounce {
  readonly code: string;
  readonly gapMs: number;
}

/** What was heard, in strokes, with the presses that no finger made set apart. */
export interface Heard {
  readonly strokes: readonly HeardStroke[];
  readonly bounces: readonly Bounce[];
  /** Codes that are still down, and since when, ms. */
  readonly down: ReadonlyMap<string, number>;
}

/**
 * Reads events into strokes. A modifier counts by itself when it comes up with no other press since it went down, but for
 * Shift, see `withoutLoneShifts`. Codes that a right board sends twice in a row, as quickly as it likes, are in `twice`: they
 * cannot be told from a bounce.
 */
export function readHeard(events: readonly HeardKey[], twice: ReadonlySet<string> = new Set()): Heard {
  const down = new Map<string, number>();
  const ups = new Map<string, { readonly atMs: number; readonly strokes: number }>();
  const strokes: HeardStroke[] = [];
  const bounces: Bounce[] = [];
  let last = '';
  const around = () => MODIFIERS.filter((modifier) => down.has(modifier));
  for (const { kind, code, key, timeMs, repeat, states } of events) {
    if (kind === 'up') {
      if (down.delete(code) && isModifierCode(code) && last === code) {
        strokes.push({ code, with: around(), key, timeMs });
        last = '';
      }
      ups.set(code, { atMs: timeMs, strokes: strokes.length });
      continue;
    }
    if (repeat || down.has(code)) continue;
    const up = ups.get(code);
    const gapMs = timeMs - (up?.atMs ?? Number.NEGATIVE_INFINITY);
    // A modifier that was taken away for what came meanwhile is brought back by the board, as quickly as it likes.
    const isBroughtBack = isModifierCode(code) && up !== undefined && up.strokes < strokes.length;
    const isBounce = gapMs < CHATTER_MS && !twice.has(code) && !isBroughtBack;
    if (isBounce) bounces.push({ code, gapMs });
    else if (!isModifierCode(code)) {
      strokes.push({ code, with: around(), key, timeMs, ...keptFrom(states, around()) });
    }
    down.set(code, timeMs);
    if (!isBounce) last = code;
  }
  return { strokes: withoutLoneShifts(strokes), bounces, down };
}

/**
 * Strokes without every Shift by itself beside them. A board takes a held Shift away for a stroke that wants none, and
 * whether it brings it back is its own affair: to the computer both look like a Shift that was tapped, which types nothing.
 * A Shift and nothing else stays what came.
 */
export function withoutLoneShifts<Stroke extends { readonly code: string }>(
  strokes: readonly Stroke[],
): readonly Stroke[] {
  const others = strokes.filter(({ code }) => code !== 'ShiftLeft' && code !== 'ShiftRight');
  return others.length > 0 ? others : strokes;
}

/** What of the states was there before: Caps Lock, and modifiers that nothing which is down now brings about. */
function keptFrom(
  states: readonly ComputerState[],
  around: readonly Modifier[],
): Pick<HeardStroke, 'carried' | 'caps'> {
  const now = new Set<ComputerState>(around.flatMap((modifier) => stateOf(modifier) ?? []));
  // The right Alt is AltGraph on some layouts, and on some systems Control and Alt as well.
  if (around.includes('AltRight')) for (const state of ['AltGraph', 'Control'] as const) now.add(state);
  const carried = states.filter((state): state is HeldState => state !== 'CapsLock' && !now.has(state));
  return {
    ...(carried.length > 0 ? { carried } : {}),
    ...(states.includes('CapsLock') ? { caps: true } : {}),
  };
}

/** The modifiers that were down from before while something came. */
export function carriedIn(strokes: readonly HeardStroke[]): readonly HeldState[] {
  return [...new Set(strokes.flatMap(({ carried = [] }) => carried))];
}

function isModifierCode(code: string): boolean {
  return isCode(code) && isModifier(code);
}

/**
 * What has been heard of a step with one event more; null where the event says nothing of it: the keyboard's own repeats,
 * which never end while a key sticks, and the release of what went down before the step was asked for.
 */
export function heardWith(heard: readonly HeardKey[], key: HeardKey): readonly HeardKey[] | null {
  const isStray = key.kind === 'up' && !heard.some(({ code }) => code === key.code);
  return key.repeat || isStray ? null : [...heard, key];
}
