import type { Edit } from '../../../../core/keymap/edit.ts';
import { chordsOf } from '../../../../core/keymap/timing.ts';
import type { Binding, HoldBy, Keymap, Place, Timing } from '../../../../core/keymap/types.ts';

/** A hold/tap key: its place and binding. */
export interface HoldTap {
  readonly place: Place;
  readonly binding: Binding;
}

/** All hold/tap keys of a design, in the order of layers and board. */
export function holdTapsOf(keymap: Keymap): readonly HoldTap[] {
  return keymap.layers.flatMap((layer) =>
    keymap.board.keys.flatMap(({ id }) => {
      const binding = Object.hasOwn(layer.places, id) ? layer.places[id] : undefined;
      if (binding?.tap === undefined || binding.hold === undefined) return [];
      return [{ place: { layer: layer.id, key: id }, binding }];
    }),
  );
}

/** One timing field for the whole design: where a binding has its own, that too. */
export function timingEverywhere(keymap: Keymap, timing: Timing, title: string): Edit {
  const [field] = Object.keys(timing);
  const own = holdTapsOf(keymap).filter(({ binding }) => field !== undefined && field in binding);
  const edits: Edit[] = own.map(({ place }) => ({ edit: 'set-binding-timing', place, timing }));
  return { edit: 'several', title, edits: [{ edit: 'set-timing', timing }, ...edits] };
}

/** One window for all chords. */
export function windowEverywhere(keymap: Keymap, windowMs: number, title: string): Edit {
  const edits = chordsOf(keymap).map(
    ({ id }): Edit => ({ edit: 'change-chord', chord: id, to: { windowMs } }),
  );
  return { edit: 'several', title, edits };
}

export const HOLD_BY_WORDS: Readonly<Record<HoldBy, string>> = {
  'time-only': 'time only',
  'press-inside': 'a press inside',
  'tap-inside': 'a tap inside',
};
