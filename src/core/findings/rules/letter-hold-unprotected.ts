import { keyName } from '../../board/key-name.ts';
import { type EffectiveTiming, timingOf } from '../../keymap/timing.ts';
import type { Action } from '../../keymap/types.ts';
import type { Facts } from '../facts.ts';
import type { Finding } from '../find.ts';
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
  check: (facts) =>
    facts.places.flatMap((place) => {
      const { tap, hold } = place.binding;
      if (tap === undefined || hold === undefined || hold.do === 'nothing') return [];
      const timing = timingOf(facts.keymap, place.binding);
      if (timing.quietBeforeMs > 0 || timing.sameHandTaps) return [];
      return place.reached && isLetter(facts.host, tap) ? [found(facts, place, tap, hold, timing)] : [];
    }),
};

function found(
  { keymap, host }: Facts,
  place: BoundPlace,
  tap: Action,
  hold: Action,
  timing: EffectiveTiming,
): Finding {
  const insideAPress = timing.holdBy === 'press-inside';
  const percent = insideAPress ? ROLLOVER_PERCENT : percentLasting(timing.holdAfterMs);
  const perThousand = Math.round(percent * 10);
  const name = keyName(keymap.board, place.key.id);
  const at = { layer: place.layer.id, key: place.key.id };
  const becomes = `${actionInWords(keymap, host, tap)} on ${name} becomes ${actionInWords(keymap, host, hold)}`;
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
    mends: [
      {
        title: `Ask for ${QUIET_MS} ms of quiet before`,
        edits: [{ edit: 'set-binding-timing', place: at, timing: { quietBeforeMs: QUIET_MS } }],
      },
    ],
  });
}

/** Straight lines between the figures; outside them the nearest one. */
function percentLasting(ms: number): number {
  const after = LASTS.findIndex(([lasts]) => lasts >= ms);
  if (after < 0) return LASTS.at(-1)?.[1] ?? 0;
  const [toMs, to] = LASTS[after] ?? [0, 0];
  const [fromMs, from] = LASTS[after - 1] ?? [toMs, to];
  return toMs === fromMs ? to : from + ((ms - fromMs) / (toMs - fromMs)) * (to - from);
}
