import { keyName } from '../../board/key-name.ts';
import { isModifier } from '../../keymap/codes.ts';
import { bindingOn } from '../../keymap/lookup.ts';
import { timingOf } from '../../keymap/timing.ts';
import type { Place } from '../../keymap/types.ts';
import type { Facts } from '../facts.ts';
import type { Finding, Mend } from '../find.ts';
import { isLetter } from '../letters.ts';
import type { BoundPlace } from '../places.ts';
import { finding, type Rule } from '../rule.ts';
import { actionInWords, sentence } from '../wording.ts';

const id = 'letter-hold-unprotected';

/** The quiet before, ms, that the mend asks for. Common practice, no source; about the interval of an average typist (160 ms). */
const QUIET_MS = 150;

/**
 * How often a press of an average typist (35 to 65 words per minute) lasts that long: [ms, percent of presses].
 * Computed from a sample of the 136M Keystrokes data (Dhakal, Feit, Kristensson, Oulasvirta, CHI 2018).
 */
const LASTS: readonly (readonly [number, number])[] = [
  [175, 5.9],
  [200, 2.3],
  [250, 0.34],
];

/** The same typist's share of letter pairs, percent, in which the next key comes while the first is still down. Same data. */
const ROLLOVER_PERCENT = 21.1;

/** Looks at every letter in reach that has a hold, and asks for quiet before or same hand taps. */
export const letterHoldUnprotected: Rule = {
  id,
  title: 'Letter with a hold and no protection',
  why: 'In quick typing a letter that stays down a little long becomes its hold.',
  check(facts) {
    const open = facts.places.filter((place) => place.reached && isOpenLetter(facts, place));
    if (open.length === 0) return [];
    const late = heldLate(facts);
    return open.map((place) => found(facts, place, !late.has(place.key.id)));
  },
};

function isOpenLetter({ keymap, host }: Facts, { binding }: BoundPlace): boolean {
  const { tap, hold } = binding;
  if (tap === undefined || hold === undefined || hold.do === 'nothing' || !isLetter(host, tap)) return false;
  const { quietBeforeMs, sameHandTaps, holdBy, tapIfAlone } = timingOf(keymap, binding);
  // A letter that only lasts long stays one with `tapIfAlone`; what a roll makes of it is told by the accidents.
  return quietBeforeMs === 0 && !sameHandTaps && !(tapIfAlone && holdBy !== 'press-inside');
}

/**
 * Keys whose hold comes too late for quiet before on some route: it would have to wait, and another route might do then.
 * A modifier of the base layer that comes while all earlier keys are still down does not count: it can as well go first.
 */
function heldLate({ keymap, needs }: Facts): ReadonlySet<string> {
  const base = keymap.layers[0];
  const canGoFirst = (key: string): boolean => {
    const hold = base === undefined ? undefined : bindingOn(base, key)?.hold;
    return hold?.do === 'key' && isModifier(hold.code);
  };
  const late = new Set<string>();
  for (const { route } of needs) {
    if (route === null || route.cost.presses < 2) continue;
    const held = new Set(
      route.steps.flatMap((step) => (step.move !== 'release' && step.side === 'hold' ? step.keys : [])),
    );
    let wasUp = false;
    route.events.forEach(({ key, type }, at) => {
      if (type === 'up') wasUp = true;
      else if (at > 0 && held.has(key) && (wasUp || !canGoFirst(key))) late.add(key);
    });
  }
  return late;
}

function found({ keymap, host }: Facts, place: BoundPlace, mayWait: boolean): Finding {
  const timing = timingOf(keymap, place.binding);
  const insideAPress = timing.holdBy === 'press-inside';
  const percent = insideAPress ? ROLLOVER_PERCENT : percentLasting(timing.holdAfterMs);
  const perThousand = Math.round(percent * 10);
  const name = keyName(keymap.board, place.key.id);
  const at = { layer: place.layer.id, key: place.key.id };
  const [tap = '', hold = ''] = place.sides.map(({ action }) => actionInWords(keymap, host, action));
  const becomes = `${tap} on ${name} becomes ${hold}`;
  const often = `about ${perThousand} times per 1,000`;
  return finding({
    rule: id,
    messageId: insideAPress ? 'press-inside' : 'lasts-long',
    severity: 'note',
    message: sentence(
      insideAPress
        ? `${becomes} as soon as the next key comes while it is down: ${often} pairs of letters for an average typist.`
        : `${becomes} when it stays down for ${timing.holdAfterMs} ms: ${often} presses for an average typist.`,
    ),
    keys: [at.key],
    layers: [at.layer],
    data: { key: name, holdAfterMs: timing.holdAfterMs, perThousand },
    mends: mayWait ? [quietMend(at)] : [],
  });
}

function quietMend(place: Place): Mend {
  return {
    title: `Ask for ${QUIET_MS} ms of quiet before`,
    edits: [{ edit: 'set-binding-timing', place, timing: { quietBeforeMs: QUIET_MS } }],
  };
}

/** Straight lines between the figures; outside them the nearest one. */
function percentLasting(ms: number): number {
  const after = LASTS.findIndex(([lasts]) => lasts >= ms);
  if (after < 0) return LASTS.at(-1)?.[1] ?? 0;
  const [toMs, to] = LASTS[after] ?? [0, 0];
  const [fromMs, from] = LASTS[after - 1] ?? [toMs, to];
  return toMs === fromMs ? to : from + ((ms - fromMs) / (toMs - fromMs)) * (to - from);
}
