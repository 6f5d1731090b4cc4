import type { Facts } from '../facts.ts';
import type { Finding } from '../find.ts';
import { enterMend } from '../hold-place.ts';
import { has } from '../layer-grid.ts';
import { chordsLiveOnlyOn } from '../live-chords.ts';
import { finding, type Rule } from '../rule.ts';
import { counted, listed, sentence } from '../wording.ts';

const id = 'layer-never-entered';

/** Looks at every layer above the base layer, its keys bound or not. */
export const layerNeverEntered: Rule = {
  id,
  title: 'Layer never entered',
  why: 'What lies on a layer that nothing turns on cannot be typed.',
  check: (facts) =>
    facts.keymap.layers.flatMap((_, layer) => (has(facts.reach.entered, layer) ? [] : [found(facts, layer)])),
};

function found(facts: Facts, number: number): Finding {
  const layer = facts.keymap.layers[number];
  const name = layer?.name ?? '';
  const bound = Object.keys(layer?.places ?? {}).length;
  const chords = chordsLiveOnlyOn(facts, number);
  const lost = [
    ...(bound > 0 ? [counted(bound, 'key')] : []),
    ...(chords.length > 0 ? [counted(chords.length, 'chord')] : []),
  ];
  const what = lost.length > 0 ? `, so ${listed(lost)} on it cannot be used` : '';
  const mend = enterMend(facts, number);
  return finding({
    rule: id,
    messageId: 'never-entered',
    severity: 'broken',
    message: sentence(`nobody can enter ${name}: no key or chord that can be pressed turns it on${what}.`),
    layers: [layer?.id ?? ''],
    chords: chords.map((chord) => chord.chord.id),
    data: { layer: name, keys: bound, chords: chords.length },
    mends: mend === null ? [] : [mend],
  });
}
