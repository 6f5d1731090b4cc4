import type { KeyId, Keymap, LayerId } from '../keymap/types.ts';
import { type StepResult, strokesText } from './judge.ts';
import type { CheckStep } from './steps.ts';

/** A step with what it came to. */
export interface Checked {
  readonly step: CheckStep;
  readonly result: StepResult;
}

/** For each key that gave another key's result: which key's. */
export type GivenKeys = ReadonlyMap<KeyId, KeyId>;

/**
 * Which key each key gave the results of. Its tap on the lowest layer on which it was checked says so: nothing has to be
 * held for it, so nothing else can have gone wrong. Where what came there stands for no other key of that layer, or for
 * more than one, the next layer up is asked. Keys that gave their own are left out.
 */
export function givenKeys(keymap: Keymap, checked: readonly Checked[]): GivenKeys {
  const given = new Map<KeyId, KeyId>();
  const settled = new Set<KeyId>();
  for (const { id } of keymap.layers) {
    const taps = checked.flatMap(({ step, result }) => {
      const key = tapOn(step, id);
      return key === null ? [] : [{ key, own: strokesText(step.expects), came: strokesText(result.strokes) }];
    });
    for (const { key, own, came } of taps) {
      if (settled.has(key)) continue;
      const givers = taps.filter((other) => other.own === came).map((other) => other.key);
      const [giver] = givers;
      if (own !== came && (giver === undefined || givers.length > 1)) continue;
      settled.add(key);
      if (giver !== undefined && own !== came) given.set(key, giver);
    }
  }
  return given;
}

function tapOn({ at, expects }: CheckStep, layer: LayerId): KeyId | null {
  if ('chord' in at || at.side !== 'tap' || at.place.layer !== layer || expects.length === 0) return null;
  return at.place.key;
}
