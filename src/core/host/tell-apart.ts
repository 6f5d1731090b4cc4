import type { Code } from '../keymap/codes.ts';
import type { HostLayout, HostOutput } from './host-layout.ts';
import { keyOfOutput } from './key-of-output.ts';
import { TYPING_CODES } from './typing-codes.ts';

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
    answers.every(({ probe, key }) => {
      const own = keyOfOutput(outputAt(host, probe));
      return own === null || own === key;
    }),
  );
}

/**
 * The press that tells the layouts left over apart best: the one whose largest group of layouts that answer alike is
 * smallest; of equals one without modifiers, then in the order of `TYPING_CODES`. Only keys of `available` are asked for.
 * Null where no press tells any two of them apart: they are alike to a browser.
 */
export function nextProbe(
  hosts: readonly HostLayout[],
  answers: readonly ProbeAnswer[] = [],
  available: readonly Code[] = TYPING_CODES,
): Probe | null {
  const left = hostsThatFit(hosts, answers);
  let best: { readonly probe: Probe; readonly largest: number } | null = null;
  for (const level of LEVELS) {
    for (const code of TYPING_CODES) {
      const probe = { code, ...level };
      if (!available.includes(code) || wasAsked(answers, probe)) continue;
      const largest = largestGroup(left, probe);
      if (largest < (best?.largest ?? left.length)) best = { probe, largest };
    }
  }
  return best?.probe ?? null;
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

function outputAt(host: HostLayout, { code, shift, level3 }: Probe): HostOutput {
  return host.outputOf(code, { shift, level3: level3 && host.level3 !== null, caps: false });
}
