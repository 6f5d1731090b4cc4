import type { Keymap } from '../../../src/core/keymap/types.ts';
import { useBench } from '../../../src/store/bench.ts';

/** Puts a design on the bench and gives the environment the parts of the platform that it lacks. */
export function openBench(keymap: Keymap): void {
  // happy-dom has no top layer: a popover is simply there.
  HTMLElement.prototype.showPopover ??= () => {};
  HTMLElement.prototype.hidePopover ??= () => {};
  useBench.getState().open('test', keymap);
}

/** The binding of a key on a layer of the open design. */
export function boundAt(layer: string, key: string) {
  return useBench.getState().keymap.layers.find(({ id }) => id === layer)?.places[key];
}
