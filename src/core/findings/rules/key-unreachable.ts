import { keyName } from '../../board/key-name.ts';
import { layerWords } from '../../keymap/action-words.ts';
import type { Facts } from '../facts.ts';
import type { Finding, Mend } from '../find.ts';
import { freeOn, opensSomething, placeInWords } from '../free-places.ts';
import { firstHarmless } from '../harmless.ts';
import { enterMend } from '../hold-place.ts';
import { effectiveLayer, has } from '../layer-grid.ts';
import { isDown } from '../layer-state.ts';
import type { BoundPlace } from '../places.ts';
import { finding, type Rule } from '../rule.ts';
import { untypable } from '../untypable.ts';
import { usedWhileOn } from '../used-on-layer.ts';
import { actionInWords, counted, keysInWords, listed, sentence } from '../wording.ts';

const id = 'key-unreachable';

/**
 * Looks at every binding that is not just blank. A key alone is never taken by a chord: pressed by itself it is passed
 * on when it comes up or the window ends (rules G4 and G6), so only layers can keep a binding from taking effect.
 */
export const keyUnreachable: Rule = {
  id,
  title: 'Key unreachable',
  why: 'What is bound there can never be typed from there.',
  check(facts) {
    const unreached = facts.places.filter(
      (place) => !place.reached && place.sides.some(({ action }) => action.do !== 'nothing'),
    );
    return [...perLayer(facts, unreached), ...unreached.flatMap((place) => perPlace(facts, place))];
  },
};

function perLayer(facts: Facts, places: readonly BoundPlace[]): readonly Finding[] {
  return facts.keymap.layers.flatMap((layer, number) => {
    const here = places.filter((place) => place.layerNumber === number);
    if (has(facts.reach.entered, number) || here.length === 0) return [];
    const keys = here.map((place) => place.key.id);
    const mend = enterMend(facts, number);
    return finding({
      rule: id,
      messageId: 'on-layer-never-entered',
      severity: 'broken',
      message: `${sentence(counted(keys.length, 'key'))} on ${layer.name} cannot be pressed, since nobody can enter it: ${keysInWords(facts.keymap, keys)}.`,
      layers: [layer.id],
      keys,
      data: { layer: layer.name, keys: keys.length },
      mends: mend === null ? [] : [mend],
    });
  });
}

function perPlace(facts: Facts, place: BoundPlace): readonly Finding[] {
  const { reach } = facts;
  if (!has(reach.entered, place.layerNumber)) return [];
  const isHolder = has(reach.downOn[place.keyNumber] ?? 0, place.layerNumber);
  return [isHolder ? holdsItsLayer(facts, place) : alwaysCovered(facts, place)];
}

function holdsItsLayer(facts: Facts, place: BoundPlace): Finding {
  const name = keyName(facts.keymap.board, place.key.id);
  return finding({
    rule: id,
    messageId: 'holds-its-layer',
    severity: 'broken',
    message: sentence(
      `${name} has to be held down to be on ${place.layer.name}, so ${whatIsBound(facts, place)} bound there can never be pressed.`,
    ),
    keys: [place.key.id],
    layers: [place.layer.id],
    data: { key: name, layer: place.layer.name },
    mends: [...moveMend(facts, place), takeOff(facts, place)],
  });
}

function alwaysCovered(facts: Facts, place: BoundPlace): Finding {
  const name = keyName(facts.keymap.board, place.key.id);
  const cover = coveringLayer(facts, place);
  const by = layerWords(facts.keymap, cover);
  return finding({
    rule: id,
    messageId: 'always-covered',
    severity: 'broken',
    message: sentence(
      `${name} on ${place.layer.name} can never be pressed: whenever ${place.layer.name} is on, ${by} covers it.`,
    ),
    keys: [place.key.id],
    layers: [place.layer.id, cover],
    data: { key: name, layer: place.layer.name, cover: by },
    mends: [takeOff(facts, place)],
  });
}

function coveringLayer({ reach, grid, keymap }: Facts, place: BoundPlace): string {
  const state = reach.states.find((each) => has(each.on, place.layerNumber));
  const cover = state === undefined ? -1 : effectiveLayer(grid, place.keyNumber, state.on);
  return keymap.layers[cover]?.id ?? '';
}

function whatIsBound({ keymap, host }: Facts, place: BoundPlace): string {
  return listed(place.sides.map(({ action }) => actionInWords(keymap, host, action)));
}

function takeOff({ keymap }: Facts, place: BoundPlace): Mend {
  const at = { layer: place.layer.id, key: place.key.id };
  return { title: `Take it off ${placeInWords(keymap, at)}`, edits: [{ edit: 'unbind', place: at }] };
}

/** Moves what is bound to an empty place of the same layer that one can press while this key holds it. */
function moveMend(facts: Facts, place: BoundPlace): readonly Mend[] {
  const takesTroubleAlong = place.sides.some(({ action }) => untypable(facts.host, action).length > 0);
  if (takesTroubleAlong || opensSomething(place.binding)) return [];
  const state = facts.reach.states.find(
    (each) =>
      isDown(each, place.keyNumber) &&
      effectiveLayer(facts.grid, place.keyNumber, each.on) === place.layerNumber,
  );
  if (state === undefined) return [];
  const from = { layer: place.layer.id, key: place.key.id };
  const mends = freeOn(facts, state, place.layerNumber, usedWhileOn(facts)).map((to): Mend => {
    const title = `Move it to ${placeInWords(facts.keymap, to)}`;
    return { title, edits: [{ edit: 'move-binding', from, to }] };
  });
  const mend = firstHarmless(facts, mends);
  return mend === null ? [] : [mend];
}
