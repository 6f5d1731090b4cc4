import { chordsOf } from '../keymap/timing.ts';
import type { ChordId, KeyId, Keymap, LayerId } from '../keymap/types.ts';
import type { PressRuns } from './press-runs.ts';

/** What one press of a run is on the design. */
export type PressedThing =
  | { readonly what: 'key'; readonly key: KeyId; readonly layer: LayerId; readonly asHold: boolean }
  | { readonly what: 'chord'; readonly chord: ChordId };

/** The presses of a run by what they are on the design; those that it no longer has are left out. */
export function pressedThings(
  keymap: Keymap,
  { compiled, presses }: PressRuns,
  run: readonly number[],
): readonly PressedThing[] {
  return run.flatMap((number): readonly PressedThing[] => {
    const press = presses[number];
    if (press === undefined) return [];
    if (press.chord >= 0) {
      const chord = chordsOf(keymap)[press.chord];
      return chord === undefined ? [] : [{ what: 'chord', chord: chord.id }];
    }
    const key = compiled.keyIds[press.keys[0] ?? -1];
    const layer = keymap.layers[press.place];
    if (key === undefined || layer === undefined) return [];
    return [{ what: 'key', key, layer: layer.id, asHold: press.asHold }];
  });
}
