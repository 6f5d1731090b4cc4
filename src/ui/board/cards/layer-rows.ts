import { actionInWords, type LegendSource, tapInWords } from '../../../core/host/legend.ts';
import { bindingOn } from '../../../core/keymap/lookup.ts';
import type { Binding, KeyId, LayerId } from '../../../core/keymap/types.ts';

/** What a key's card says of one layer. */
export interface LayerRow {
  readonly layer: LayerId;
  /** Its place in the stack, from the base's 0. */
  readonly number: number;
  readonly name: string;
  readonly binding: Binding | undefined;
  readonly tap: string;
  readonly hold: string;
}

/** A row for each layer, the highest first as they lie in the stack. */
export function layerRows(key: KeyId, source: LegendSource): readonly LayerRow[] {
  const rows = source.keymap.layers.map((layer, number): LayerRow => {
    const binding = bindingOn(layer, key);
    const silent = binding?.hold === undefined ? (number === 0 ? 'does nothing' : 'falls through') : 'no tap';
    return {
      layer: layer.id,
      number,
      name: layer.name,
      binding,
      tap: binding?.tap === undefined ? silent : tapInWords(binding.tap, binding.onShift, source),
      hold: binding?.hold === undefined ? 'no hold' : actionInWords(binding.hold, source),
    };
  });
  return rows.reverse();
}
