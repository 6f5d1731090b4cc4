import type { Hand, KeyId, Keymap } from '../keymap/types.ts';
import type { Route } from '../routes/types.ts';
import type { FingerOfHand } from './text-load.ts';

/** Whose hands and fingers a route asks for. */
export interface RouteHands {
  /** The hands that press something, in the order in which they begin. */
  readonly hands: readonly Hand[];
  /** Fingers that must be on two keys at the same time, which no finger is. */
  readonly atOnce: readonly FingerOfHand[];
  /** Fingers that press two different keys one after the other, with time to get from one to the other. */
  readonly inTurn: readonly FingerOfHand[];
}

/**
 * Which hands a route takes, and whether a finger has two things to do. Held keys are down until they are released
 * or the route ends; keys that the board lacks are nobody's.
 */
export function routeHands(keymap: Keymap, route: Pick<Route, 'steps'>): RouteHands {
  const fingerOf = new Map<KeyId, FingerOfHand>(
    keymap.board.keys.map(({ id, hand, finger }) => [id, `${hand} ${finger}`]),
  );
  const handOf = new Map(keymap.board.keys.map(({ id, hand }) => [id, hand]));
  const hands = new Set<Hand>();
  const pressed = new Map<FingerOfHand, Set<KeyId>>();
  const atOnce = new Set<FingerOfHand>();
  const down = new Set<KeyId>();
  for (const { move, keys } of route.steps) {
    for (const key of keys) {
      if (move === 'release') {
        down.delete(key);
        continue;
      }
      const hand = handOf.get(key);
      const finger = fingerOf.get(key);
      if (hand === undefined || finger === undefined) continue;
      hands.add(hand);
      if ([...down].some((other) => other !== key && fingerOf.get(other) === finger)) atOnce.add(finger);
      pressed.set(finger, (pressed.get(finger) ?? new Set()).add(key));
      down.add(key);
    }
    if (move === 'press') for (const key of keys) down.delete(key);
  }
  const twice = [...pressed].filter(([, keys]) => keys.size > 1).map(([finger]) => finger);
  return { hands: [...hands], atOnce: [...atOnce], inTurn: twice.filter((finger) => !atOnce.has(finger)) };
}

/** The same in words: "left hand alone", "both hands; the left little finger must be on two keys at once". */
export function handsWords({ hands, atOnce, inTurn }: RouteHands): string {
  const [first] = hands;
  const who = hands.length === 1 && first !== undefined ? `${first} hand alone` : 'both hands';
  const parts = [
    ...atOnce.map((finger) => `the ${fingerName(finger)} must be on two keys at once`),
    ...inTurn.map((finger) => `the ${fingerName(finger)} presses two keys in turn`),
  ];
  return [who, ...parts].join('; ');
}

/** "left thumb", "right index finger". */
function fingerName(finger: FingerOfHand): string {
  return finger.endsWith('thumb') ? finger : `${finger} finger`;
}
