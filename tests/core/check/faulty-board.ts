import type { KeyEvent } from '../../../src/core/base/key-event.ts';
import { type ComputerState, stateOf } from '../../../src/core/check/computer-state.ts';
import type { Checked } from '../../../src/core/check/given-keys.ts';
import type { HeardKey } from '../../../src/core/check/heard.ts';
import { judge } from '../../../src/core/check/judge.ts';
import type { CheckStep } from '../../../src/core/check/steps.ts';
import { play } from '../../../src/core/engine/play.ts';
import type { HostLayout } from '../../../src/core/host/host-layout.ts';
import { keyOfOutput } from '../../../src/core/host/key-of-output.ts';
import { type Code, isModifier } from '../../../src/core/keymap/codes.ts';
import type { KeyId, Keymap } from '../../../src/core/keymap/types.ts';

/** What is wrong with a made board; nothing where nothing is said. */
export interface Faults {
  /** Which key a key is wired as. */
  readonly wiredAs?: Readonly<Record<KeyId, KeyId>>;
  readonly dead?: readonly KeyId[];
  /** Each press of the key is followed, so many ms after its release, by another. */
  readonly chatters?: Readonly<Record<KeyId, number>>;
  /** Codes whose release the computer never hears. */
  readonly stuck?: readonly Code[];
  /** How far apart the keys of every chord come, ms. */
  readonly chordSpreadMs?: number;
  /** How the computer really reads the keys. */
  readonly computer?: HostLayout;
  /** The design that the board really holds. */
  readonly holds?: Keymap;
}

/** What the computer keeps from one press to the next. */
interface Computer {
  /** Codes that are down for it: a release that never comes leaves them so. */
  readonly down: Set<Code>;
  caps: boolean;
}

/** What a browser hears when somebody presses a step as they are told to, on a board with these faults. */
export function hear(
  keymap: Keymap,
  host: HostLayout,
  step: CheckStep,
  faults: Faults = {},
  computer: Computer = { down: new Set(), caps: false },
): readonly HeardKey[] {
  const events = chattering(spread(pressed(step, faults), step, faults), faults);
  const played = play(faults.holds ?? keymap, events, host);
  if (!played.ok) throw new Error(`event ${played.problem.index}: ${played.problem.reason}`);
  return played.value.output.flatMap(({ t, type, code }) => {
    const isLost = type === 'release' ? faults.stuck?.includes(code) === true : computer.down.has(code);
    const key = nameOf(faults.computer ?? host, code, computer);
    if (isLost) return [];
    if (type === 'press') computer.down.add(code);
    else computer.down.delete(code);
    if (type === 'press' && code === 'CapsLock') computer.caps = !computer.caps;
    const kind = type === 'press' ? 'down' : 'up';
    return [{ kind, code, key, timeMs: t, repeat: false, states: statesOf(computer) } as const];
  });
}

function statesOf({ down, caps }: Computer): readonly ComputerState[] {
  const held = [...down].flatMap((code) => stateOf(code) ?? []);
  return [...new Set([...held, ...(caps ? (['CapsLock'] as const) : [])])];
}

/** A whole walk over a board with these faults. */
export function walked(
  keymap: Keymap,
  host: HostLayout,
  steps: readonly CheckStep[],
  faults: Faults = {},
): Checked[] {
  const computer: Computer = { down: new Set(), caps: false };
  return steps
    .filter(({ expects }) => expects.length > 0)
    .map((step) => ({ step, result: judge(step, hear(keymap, host, step, faults, computer)) }));
}

function pressed(step: CheckStep, { wiredAs = {}, dead = [] }: Faults): readonly KeyEvent[] {
  return step.events.flatMap((event) =>
    dead.includes(event.key) ? [] : [{ ...event, key: wiredAs[event.key] ?? event.key }],
  );
}

/** The keys of a chord come one after another, and go up in the same order. */
function spread(
  events: readonly KeyEvent[],
  step: CheckStep,
  { chordSpreadMs, wiredAs = {} }: Faults,
): readonly KeyEvent[] {
  if (chordSpreadMs === undefined || step.keys.length < 2) return events;
  const late = step.keys.map(
    (key, at) => [wiredAs[key] ?? key, (at * chordSpreadMs) / (step.keys.length - 1)] as const,
  );
  const shift = new Map(late);
  return events
    .map((event) => ({ ...event, t: event.t + (shift.get(event.key) ?? 0) }))
    .sort((one, other) => one.t - other.t);
}

function chattering(events: readonly KeyEvent[], { chatters = {} }: Faults): readonly KeyEvent[] {
  return events
    .flatMap((event) => {
      const gap = chatters[event.key];
      if (gap === undefined || event.type === 'down') return [event];
      return [
        event,
        { ...event, t: event.t + gap, type: 'down' as const },
        { ...event, t: event.t + gap + 5, type: 'up' as const },
      ];
    })
    .sort((one, other) => one.t - other.t);
}

function nameOf(host: HostLayout, code: Code, { down, caps }: Computer): string {
  if (isModifier(code)) return code.replace(/Left|Right/, '');
  const shift = down.has('ShiftLeft') || down.has('ShiftRight');
  const level3 = host.level3 !== null && down.has(host.level3);
  return keyOfOutput(host.outputOf(code, { shift, level3, caps })) ?? code;
}
