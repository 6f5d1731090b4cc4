import type { Code } from '../keymap/codes.ts';
import type { HostLayout, HostOutput } from './host-layout.ts';
import { keyOfOutput } from './key-of-output.ts';
import { COMMON_TYPING_CODES, TYPING_CODES } from './typing-codes.ts';

/** One key press that says something about the computer's layout. */
export interface Probe {
  readonly code: Code;
  readonly shift: boolean;
  readonly level3: boolean;
}

/** What a browser said came of it: the W3C `key`, `Dead` for a dead key of any kind. */
export interface ProbeAnswer {
  readonly probe: Probe;
  readonly key: string;
  /** Caps Lock was on. */
  readonly caps: boolean;
}

/** What cannot be pressed on the keyboard at hand. */
export interface Missing {
  readonly codes: readonly Code[];
  /** It has no key for level 3. */
  readonly level3: boolean;
}

export const NOTHING_MISSING: Missing = { codes: [], level3: false };

/**
 * What is missing once somebody says that a press cannot be made. At level 3 that says that there is no such modifier, since only
 * keys are asked for there that every board for typing has; else the key itself is not there.
 */
export function withoutProbe(missing: Missing, { code, level3 }: Probe): Missing {
  return level3 ? { ...missing, level3: true } : { ...missing, codes: [...missing.codes, code] };
}

/**
 * Level 3 is asked for last: not every keyboard has its key. Where the layout has none, it is an Alt, which leaves the `key`
 * as it is without (W3C UI Events, KeyboardEvent key values; from memory).
 */
const LEVELS = [
  { shift: false, level3: false },
  { shift: true, level3: false },
  { shift: false, level3: true },
] as const;

/**
 * The layouts that answers leave over, in the order given. A layout whose key gives nothing there is not held to the answer:
 * what browsers call such a key differs.
 */
export function hostsThatFit<Host extends HostLayout>(
  hosts: readonly Host[],
  answers: readonly ProbeAnswer[],
): readonly Host[] {
  return hosts.filter((host) =>
    answers.every(({ probe, key, caps }) => {
      const own = keyOfOutput(outputAt(host, probe, caps));
      return own === null || own === key;
    }),
  );
}

/**
 * The press that tells the layouts left over apart best: the one whose largest group of layouts that answer alike is
 * smallest; of equals one without modifiers, then in the order of `TYPING_CODES`. Null where no press tells any two of them
 * apart: they are alike to a browser.
 */
export function nextProbe(
  hosts: readonly HostLayout[],
  answers: readonly ProbeAnswer[] = [],
  missing: Missing = NOTHING_MISSING,
): Probe | null {
  const left = hostsThatFit(hosts, answers);
  let best: { readonly probe: Probe; readonly largest: number } | null = null;
  for (const probe of possibleProbes(answers, missing)) {
    const largest = largestGroup(left, probe);
    if (largest < (best?.largest ?? left.length)) best = { probe, largest };
  }
  return best?.probe ?? null;
}

/**
 * What to press next to see whether the computer is on a layout: what tells the layouts left over apart; then, where the
 * wished one is among them, a key by itself and a key at level 3, so that neither an arrangement of letters that comes
 * with no table nor a level 3 of its own passes for it. Null where nothing more is to be asked.
 */
export function nextQuestion(
  wished: HostLayout,
  hosts: readonly HostLayout[],
  answers: readonly ProbeAnswer[] = [],
  missing: Missing = NOTHING_MISSING,
): Probe | null {
  const probe = nextProbe(hosts, answers, missing);
  if (probe !== null || hostsThatFit([wished], answers).length === 0) return probe;
  const isAsked = (level3: boolean) =>
    answers.some(({ probe: each }) => !each.shift && each.level3 === level3);
  return (
    (isAsked(false) ? null : tellingProbe(wished, hosts, answers, missing, false)) ??
    (isAsked(true) || wished.level3 === null ? null : tellingProbe(wished, hosts, answers, missing, true))
  );
}

/** The press, without Shift, at which the fewest of the layouts answer as the wished one does. */
function tellingProbe(
  wished: HostLayout,
  hosts: readonly HostLayout[],
  answers: readonly ProbeAnswer[],
  missing: Missing,
  level3: boolean,
): Probe | null {
  let best: { readonly probe: Probe; readonly alike: number } | null = null;
  for (const probe of possibleProbes(answers, missing)) {
    const own = keyOfOutput(outputAt(wished, probe));
    if (probe.shift || probe.level3 !== level3 || own === null) continue;
    const alike = hosts.filter((host) => keyOfOutput(outputAt(host, probe)) === own).length;
    if (best === null || alike < best.alike) best = { probe, alike };
  }
  return best?.probe ?? null;
}

function possibleProbes(answers: readonly ProbeAnswer[], missing: Missing): readonly Probe[] {
  return LEVELS.flatMap((level) => {
    if (level.level3 && missing.level3) return [];
    const codes = level.level3 ? COMMON_TYPING_CODES : TYPING_CODES;
    return codes
      .filter((code) => !missing.codes.includes(code))
      .map((code) => ({ code, ...level }))
      .filter((probe) => !wasAsked(answers, probe));
  });
}

/**
 * The layouts that fit what the Keyboard Map API (a draft of the Web Incubator Community Group) says: for each code the
 * character without modifiers. Dead keys are left out, since browsers name them in ways of their own.
 */
export function hostsThatFitMap<Host extends HostLayout>(
  hosts: readonly Host[],
  map: ReadonlyMap<string, string>,
): readonly Host[] {
  return hosts.filter((host) =>
    TYPING_CODES.every((code) => {
      const said = map.get(code);
      const own = outputAt(host, { code, shift: false, level3: false });
      return said === undefined || own.kind !== 'char' || own.char === said;
    }),
  );
}

function wasAsked(answers: readonly ProbeAnswer[], probe: Probe): boolean {
  return answers.some(
    ({ probe: { code, shift, level3 } }) =>
      code === probe.code && shift === probe.shift && level3 === probe.level3,
  );
}

/** How many layouts would be left over by the answer that leaves most; those that give nothing are left over by any. */
function largestGroup(hosts: readonly HostLayout[], probe: Probe): number {
  const groups = new Map<string, number>();
  let silent = 0;
  for (const host of hosts) {
    const name = keyOfOutput(outputAt(host, probe));
    if (name === null) silent += 1;
    else groups.set(name, (groups.get(name) ?? 0) + 1);
  }
  return silent + Math.max(0, ...groups.values());
}

function outputAt(host: HostLayout, { code, shift, level3 }: Probe, caps = false): HostOutput {
  return host.outputOf(code, { shift, level3: level3 && host.level3 !== null, caps });
}
