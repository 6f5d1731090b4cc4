import { keyName } from '../board/key-name.ts';
import { codeName } from '../host/code-names.ts';
import { bindingThrough, chordById, layerById } from '../keymap/lookup.ts';
import type { Action, Keymap, LayerId } from '../keymap/types.ts';
import type { Route, Step } from './types.ts';

/**
 * The steps of a route in words, one a move: "hold left inner thumb (Symbols)", "press right index home", "press left ring
 * home + left middle home together (Tab)". What a key does is told where it is a layer, a modifier or a chord.
 */
export function describeSteps(keymap: Keymap, route: Route): string[] {
  let on: readonly On[] = [];
  return route.steps.map((step) => {
    const names = step.keys.map((key) => keyName(keymap.board, key)).join(' + ');
    if (step.move === 'release') {
      on = on.filter(({ keys }) => keys !== step.keys.join());
      return `release ${names}`;
    }
    const does = doesOf(keymap, step, on);
    on = [...on, ...turnedOnBy(keymap, step, on)];
    const together = step.keys.length > 1 ? ' together' : '';
    return `${step.move} ${names}${together}${does === null ? '' : ` (${does})`}`;
  });
}

/** A layer that is on, and the keys that turned it on. */
interface On {
  readonly layer: LayerId;
  readonly keys: string;
}

type Press = Exclude<Step, { move: 'release' }>;

/** The layers on when these are turned on: those that wait for them too. */
function layersOn(keymap: Keymap, on: readonly On[]): ReadonlySet<LayerId> {
  const layers = new Set(on.map(({ layer }) => layer));
  const base = keymap.layers[0];
  if (base !== undefined) layers.add(base.id);
  for (const { id, onWhile } of keymap.layers)
    if (onWhile?.every((lower) => layers.has(lower))) layers.add(id);
  return layers;
}

function actionOf(keymap: Keymap, step: Press, on: readonly On[]): Action | undefined {
  const slot = step.shifted ? 'onShift' : step.side;
  if (step.chord !== undefined) return chordById(keymap, step.chord)?.[slot === 'tap' ? 'action' : slot];
  const [key = ''] = step.keys;
  return bindingThrough(keymap, layersOn(keymap, on), key)?.binding[slot];
}

function doesOf(keymap: Keymap, step: Press, on: readonly On[]): string | null {
  const action = actionOf(keymap, step, on);
  if (action === undefined) return null;
  if (action.do === 'layer') return layerById(keymap, action.layer)?.name ?? action.layer;
  if (action.do === 'modifier') return codeName(action.code);
  if (step.chord !== undefined || step.shifted) return wordsOf(action);
  return step.move === 'hold' ? wordsOf(action) : null;
}

function wordsOf(action: Action): string | null {
  if (action.do === 'key') return [...(action.with ?? []), action.code].map(codeName).join(' + ');
  if (action.do === 'char') return action.char === ' ' ? 'space' : action.char;
  return action.do === 'text' ? action.text : null;
}

function turnedOnBy(keymap: Keymap, step: Press, on: readonly On[]): readonly On[] {
  const action = actionOf(keymap, step, on);
  return action?.do === 'layer' ? [{ layer: action.layer, keys: step.keys.join() }] : [];
}
