import type { designFacts } from '../findings/facts.ts';
import { actionInWords, type LegendSource, legendOf } from '../host/legend.ts';
import { layerWords } from '../keymap/action-words.ts';
import type { Action, Binding, Keymap, Layer } from '../keymap/types.ts';
import type { SheetType } from './sheet-type.ts';

/** What every part of a sheet is drawn from. */
export interface SheetSource extends LegendSource {
  readonly keymap: Keymap;
  readonly facts: ReturnType<typeof designFacts>;
  readonly type: SheetType;
  /** The layers above the base whose rungs are shown, lowest first, by their place in the document. */
  readonly rungs: readonly number[];
}

/** What stands before a legend that comes with Shift. */
export const SHIFT_SIGN = '⇧';

/** What a tap gives; with what comes in its place under Shift, where that is something of its own. */
export function tapWording({ tap, onShift }: Pick<Binding, 'tap' | 'onShift'>, source: SheetSource): string {
  const plain = tap === undefined ? '' : legendOf(tap, source);
  return onShift === undefined ? plain : `${plain} ${shiftedWording(onShift, source)}`;
}

/** What comes with Shift, under its sign; a blank says so, since a bare sign would be misread. */
function shiftedWording(action: Action, source: SheetSource): string {
  return `${SHIFT_SIGN}${legendOf(action, source) || 'blank'}`;
}

/** Wordings of a hold: in words, else as it stands on a key. */
export function holdWordings(action: Action, source: SheetSource): readonly string[] {
  if (action.do !== 'layer') return [...new Set([actionInWords(action, source), legendOf(action, source)])];
  const name = layerWords(source.keymap, action.layer);
  return action.mode === 'while-held' ? [name] : [`${name} ${action.mode}`];
}

/** The layer that an action leads to, by its place in the document; null for every other action. */
export function leadsTo(action: Action | undefined, keymap: Keymap): number | null {
  if (action?.do !== 'layer') return null;
  const at = keymap.layers.findIndex((layer: Layer) => layer.id === action.layer);
  return at < 0 ? null : at;
}
