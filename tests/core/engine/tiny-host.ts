import type { HostLayout, Stroke } from '../../../src/core/host/host-layout.ts';
import type { Code, Modifier } from '../../../src/core/keymap/codes.ts';

const stroke = (code: Code, ...modifiers: Modifier[]): Stroke => ({ code, with: modifiers });

const routes: ReadonlyMap<string, readonly Stroke[]> = new Map([
  ['a', [stroke('KeyA')]],
  ['b', [stroke('KeyB')]],
  ['A', [stroke('KeyA', 'ShiftLeft')]],
  ['€', [stroke('KeyE', 'AltRight', 'ShiftLeft')]],
  ['é', [stroke('Quote'), stroke('KeyE')]],
  ['É', [stroke('Quote'), stroke('KeyE', 'ShiftLeft')]],
  ['ñ', [stroke('Backquote', 'ShiftLeft'), stroke('KeyN')]],
]);

/**
 * An invented host layout of seven characters, enough for one stroke, one with modifiers and two after a dead key. The
 * second route that it gives is never to be taken.
 */
export const tinyHost: HostLayout = {
  layout: 'tiny',
  variant: '',
  level3: 'AltRight',
  outputOf: () => ({ kind: 'none' }),
  compose: () => undefined,
  routesOf: (char) => {
    const route = routes.get(char);
    return route === undefined ? [] : [route, [stroke('F24')]];
  },
};
