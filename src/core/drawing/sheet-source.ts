import type { designFacts } from '../findings/facts.ts';
import { actionInWords, type LegendSource, legendOf } from '../host/legend.ts';
import { layerWords } from '../keymap/action-words.ts';
import type { Action, Keymap, Layer } from '../keymap/types.ts';
import type { SheetType } from './sheet-type.ts';

/** What every part of a sheet is drawn from. */
export interface SheetSource extends LegendSource {
  readonly keymap: Keymap;
  readonly facts: ReturnType<typeof designFacts>;
  readonly type: SheetType;
  /** The layers above the base whose rungs are shown, lowest first, by their place in the document. */
  readonly rungs: readonly number[];
}

/** Wordings of a tap, the one that is wanted first. */
export function tapWordings(action: Action, source: SheetSource): readonly string[] {
  return [legendOf(action, source)];
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
