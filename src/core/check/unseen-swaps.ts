import type { KeyId } from '../keymap/types.ts';
import type { Checked, GivenKeys } from './given-keys.ts';
import type { Prediction } from './hypothesis.ts';
import { strokesText } from './judge.ts';

/** So many wrong presses must be explained: a single one can be anything. */
const LEAST_EXPLAINED = 2;

/**
 * What keys gave, with those added that have changed places with a key of which nothing is seen by itself: a key that only
 * brings a layer sends nothing, so where it has gone shows in what was pressed together with it. Of all pairs that one counts
 * which explains most of what came; two presses at least, more than half of those with one of the two, more than
 * a dead key would, and it may speak against none that was right. A tie goes to the first on the walk.
 */
export function withUnseenSwaps(
  given: GivenKeys,
  checked: readonly Checked[],
  predict: Prediction,
): GivenKeys {
  const fits: Fits = ({ step, result }, wiredAs, dead = []) =>
    predict(step, { wiredAs, dead: new Set(dead) }) === strokesText(result.strokes);
  let known = given;
  for (;;) {
    const unexplained = checked.filter(
      (each) => each.result.verdict !== 'right' && !each.result.otherCharacters && !fits(each, known),
    );
    const swapped = bestSwap(known, checked, unexplained, fits);
    if (swapped === null) return known;
    known = swapped;
  }
}

type Fits = (each: Checked, wiredAs: GivenKeys, dead?: readonly KeyId[]) => boolean;

function bestSwap(
  given: GivenKeys,
  checked: readonly Checked[],
  unexplained: readonly Checked[],
  fits: Fits,
): GivenKeys | null {
  const telling = unexplained.filter(({ result }) => result.strokes.length > 0);
  let best: { readonly wiredAs: GivenKeys; readonly explained: number } | null = null;
  for (const [one, other] of openPairs(given, checked, telling, unexplained)) {
    const wiredAs = new Map(given).set(one, other).set(other, one);
    const own = telling.filter(involves(one, other));
    const explained = own.filter((each) => fits(each, wiredAs)).length;
    const ofDead = own.filter((each) => fits(each, given, [one])).length;
    const isEnough = explained >= LEAST_EXPLAINED && explained * 2 > own.length && explained > ofDead;
    if (!isEnough || explained <= (best?.explained ?? 0)) continue;
    const right = checked.filter(({ result }) => result.verdict === 'right').filter(involves(one, other));
    if (right.every((each) => fits(each, wiredAs))) best = { wiredAs, explained };
  }
  return best?.wiredAs ?? null;
}

const involves =
  (one: KeyId, other: KeyId) =>
  ({ step: { keys, held } }: Checked) =>
    [...keys, ...held].some((key) => key === one || key === other);

/** A key that was held for something wrong, and one that went wrong or gave what it should: what neither gave by itself is not known. */
function openPairs(
  given: GivenKeys,
  checked: readonly Checked[],
  telling: readonly Checked[],
  unexplained: readonly Checked[],
): readonly (readonly [KeyId, KeyId])[] {
  const right = checked.filter(({ step, result }) => step.keys.length === 1 && result.verdict === 'right');
  const settled = new Set([...given.keys(), ...right.map(({ step }) => step.keys[0])]);
  const open = (keys: readonly KeyId[]) => [...new Set(keys)].filter((key) => !settled.has(key));
  const held = open(telling.flatMap(({ step }) => [...step.held, ...step.keys]));
  const others = open(unexplained.flatMap(({ step }) => [...step.held, ...step.keys]));
  return held.flatMap((key) => {
    const givers = [...given].filter(([, gives]) => gives === key).map(([giver]) => giver);
    return [...others, ...givers].filter((other) => other !== key).map((other) => [key, other] as const);
  });
}
