import { keyName } from '../board/key-name.ts';
import { codeName } from '../host/code-names.ts';
import { chordById, layerById } from '../keymap/lookup.ts';
import type { Action, Keymap } from '../keymap/types.ts';
import type { Route, Step } from './types.ts';

/**
 * The steps of a route in words, one a move: "hold left inner thumb (Symbols)", "press right index home", "press left ring
 * home + left middle home together (Tab)". What a key does is told where it is a layer, a modifier or a chord.
 */
export function describeSteps(keymap: Keymap, route: Route): string[] {
  const on: string[] = [];
  return route.steps.map((step) => {
    const does = step.move === 'release' ? null : doesOf(keymap, step, on);
    if (step.move !== 'release') turnOn(keymap, step, on);
    const names = step.keys.map((key) => keyName(keymap.board, key)).join(' + ');
    const together = step.keys.length > 1 && step.move !== 'release' ? ' together' : '';
    return `${step.move} ${names}${together}${does === null ? '' : ` (${does})`}`;
  });
}

function actionOf(
  keymap: Keymap,
  step: Exclude<Step, { move: 'release' }>,
  on: readonly string[],
): Action | undefined {
  if (step.chord !== undefined) return chordById(keymap, step.chord)?.action;
  const [key = ''] = step.keys;
  const layer = keymap.layers.findLast(
    ({ id, places }, number) => (number === 0 || on.includes(id)) && Object.hasOwn(places, key),
  );
  return layer?.places[key]?.[step.side];
}

function doesOf(
  keymap: Keymap,
  step: Exclude<Step, { move: 'release' }>,
  on: readonly string[],
): string | null {
  const action = actionOf(keymap, step, on);
  if (action === undefined) return null;
  if (action.do === 'layer') return layerById(keymap, action.layer)?.name ?? action.layer;
  if (action.do === 'modifier') return codeName(action.code);
  if (step.chord !== undefined) return wordsOf(action);
  return step.move === 'hold' ? wordsOf(action) : null;
}

function wordsOf(action: Action): string | null {
  if (action.do === 'key') return [...(action.with ?? []), action.code].map(codeName).join(' + ');
  if (action.do === 'char') return action.char === ' ' ? 'space' : action.char;
  return action.do === 'text' ? action.text : null;
}

/** Keeps count of the layers that the steps so far have turned on, as far as words need it. */
function turnOn(keymap: Keymap, step: Exclude<Step, { move: 'release' }>, on: string[]): void {
  const action = actionOf(keymap, step, on);
  if (action?.do !== 'layer') return;
  on.push(action.layer);
  for (const { id, onWhile } of keymap.layers) {
    if (onWhile?.every((lower) => on.includes(lower) || lower === keymap.layers[0]?.id)) on.push(id);
  }
}
