import type { Action } from '../../keymap/types.ts';
import type { Facts } from '../facts.ts';
import type { Finding, Mend } from '../find.ts';
import { freeOn, placeInWords } from '../free-places.ts';
import { firstHarmless } from '../harmless.ts';
import { has } from '../layer-grid.ts';
import { finding, type Rule } from '../rule.ts';
import type { StuckLayer } from '../stuck-layers.ts';
import { usedWhileOn } from '../used-on-layer.ts';

const id = 'layer-without-way-back';

/** Looks at every layer that a latch or lock can turn on, in the first state that leaves it on with no key down. */
export const layerWithoutWayBack: Rule = {
  id,
  title: 'Layer with no way back',
  why: 'Whoever locks such a layer must unplug the board to type again.',
  check: (facts) => facts.reach.stuck.map((stuck) => found(facts, stuck)),
};

function found(facts: Facts, stuck: StuckLayer): Finding {
  const layer = facts.keymap.layers[stuck.layer];
  const name = layer?.name ?? '';
  const how = has(stuck.state.locked, stuck.layer) ? 'lock' : 'latch';
  const keys = keysThatTurnOn(facts, stuck.layer);
  return finding({
    rule: id,
    messageId: how,
    severity: 'broken',
    message:
      how === 'lock'
        ? `Once ${name} is locked there is no way back: no key that unlocks it can be pressed there.`
        : `Once ${name} is latched there is no way back: nothing can be typed there to use it up, and its key is covered.`,
    layers: [layer?.id ?? ''],
    keys,
    data: { layer: name, mode: how },
    mends: mendsOf(facts, stuck, how),
  });
}

function keysThatTurnOn({ keymap, reach }: Facts, layer: number): readonly string[] {
  const keys = reach.entries.filter((entry) => entry.target === layer && entry.mode !== 'while-held');
  return [...new Set(keys.flatMap((entry) => entry.keys))].flatMap((key) => keymap.board.keys[key]?.id ?? []);
}

/** Binds the same lock or latch at an empty place that is in force in the very state one is stuck in. */
function mendsOf(facts: Facts, { layer, state }: StuckLayer, mode: 'lock' | 'latch'): readonly Mend[] {
  const target = facts.keymap.layers[layer];
  if (target === undefined) return [];
  const action: Action = { do: 'layer', layer: target.id, mode };
  const mends = freeOn(facts, state, layer, usedWhileOn(facts)).map((place): Mend => {
    const title = `Let ${placeInWords(facts.keymap, place)} turn ${target.name} off again`;
    return { title, edits: [{ edit: 'bind', place, side: 'tap', action }] };
  });
  const mend = firstHarmless(facts, mends);
  return mend === null ? [] : [mend];
}
