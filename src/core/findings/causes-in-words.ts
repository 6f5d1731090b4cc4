import { chordsOf } from '../keymap/timing.ts';
import type { Cause } from '../typist/chord-misfires.ts';
import { type PressedThing, pressedThings } from '../typist/pressed-things.ts';
import type { AccidentFacts } from './accident-facts.ts';
import type { Facts } from './facts.ts';
import { actionInWords, listed } from './wording.ts';

const MOST = 3;
/** Causes with a smaller share of all accidents are not worth their words. */
const LEAST_SHARE = 0.1;

/** What of the text does most of the damage, as the end of a sentence: ", mostly at “er” and “we”"; empty where nothing stands out. */
export function causesInWords(facts: Facts, { situation }: AccidentFacts, causes: readonly Cause[]): string {
  const all = causes.reduce((sum, { per1000Words }) => sum + per1000Words, 0);
  const words = causes
    .filter(({ presses, per1000Words }) => presses.length > 0 && per1000Words >= LEAST_SHARE * all)
    .slice(0, MOST)
    .map(({ presses }) => `“${runInWords(facts, pressedThings(facts.keymap, situation.runs, presses))}”`);
  return words.length === 0 ? '' : `, mostly at ${listed(words)}`;
}

/** What a run of presses types: letters one after the other, anything else by its name. */
function runInWords(facts: Facts, things: readonly PressedThing[]): string {
  const words = things.map((thing) => thingInWords(facts, thing));
  return words.join(words.every((word) => [...word].length === 1) ? '' : ' ');
}

function thingInWords({ keymap, host }: Facts, thing: PressedThing): string {
  if (thing.what === 'chord') {
    const chord = chordsOf(keymap).find(({ id }) => id === thing.chord);
    return chord === undefined ? '' : actionInWords(keymap, host, chord.action);
  }
  const binding = keymap.layers.find(({ id }) => id === thing.layer)?.places[thing.key];
  const action = thing.asHold ? binding?.hold : (binding?.tap ?? binding?.hold);
  if (action === undefined) return '';
  const word = actionInWords(keymap, host, action);
  return [...word].length === 1 ? word.toLowerCase() : word;
}
