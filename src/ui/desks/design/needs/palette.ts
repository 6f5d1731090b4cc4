import { codeLabel, codeName } from '../../../../core/host/code-names.ts';
import { MODIFIERS, type Modifier } from '../../../../core/keymap/codes.ts';
import type { Action, Keymap } from '../../../../core/keymap/types.ts';

/** An action that can be put on a key though nobody types it for its own sake. */
export interface PaletteEntry {
  readonly id: string;
  readonly glyph: string;
  readonly name: string;
  readonly action: Action;
}

const LAYER_MODES = [
  { mode: 'while-held', glyph: 'held', words: 'on while the key is held' },
  { mode: 'latch', glyph: 'latch', words: 'on for the next key' },
  { mode: 'lock', glyph: 'lock', words: 'on until pressed again' },
] as const;

/** The ways into each layer but the base, which is always on. */
export function layerEntries(keymap: Keymap): readonly PaletteEntry[] {
  return keymap.layers.slice(1).flatMap((layer) =>
    LAYER_MODES.map(({ mode, glyph, words }) => ({
      id: `layer ${layer.id} ${mode}`,
      glyph: `${layer.name} ${glyph}`,
      name: `Layer ${layer.name}, ${words}`,
      action: { do: 'layer' as const, layer: layer.id, mode },
    })),
  );
}

const LATCHED: readonly Modifier[] = ['ShiftLeft', 'ControlLeft', 'AltLeft', 'MetaLeft', 'AltRight'];

/** The modifiers while held, the usual ones as latches, and the blank. */
export const MODIFIER_ENTRIES: readonly PaletteEntry[] = [
  ...MODIFIERS.map((code) => ({
    id: `modifier ${code}`,
    glyph: codeLabel(code),
    name: `${codeName(code)}, while the key is held`,
    action: { do: 'key' as const, code },
  })),
  ...LATCHED.map((code) => ({
    id: `latch ${code}`,
    glyph: `${codeLabel(code)} latch`,
    name: `${codeName(code)}, for the next key`,
    action: { do: 'modifier' as const, code, mode: 'latch' as const },
  })),
  { id: 'blank', glyph: 'blank', name: 'Blank: nothing here, on purpose', action: { do: 'nothing' } },
];
