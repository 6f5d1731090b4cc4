import type { KeyId, LayerId } from '../../../core/keymap/types.ts';
import type { ChangeRow } from '../../../core/versions/change-rows.ts';
import type { Comparison } from '../../../core/versions/compare.ts';
import { matchedLayers } from '../../../core/versions/match.ts';

/** A layer of either design to be chosen, with how many of its keys differ. */
export interface LayerOption {
  readonly value: LayerId;
  readonly label: string;
  readonly changes: number;
}

/** The layers of both designs from the base up, those that are gone at the end. */
export function layerOptions(
  { before, after }: Comparison,
  rows: readonly ChangeRow[],
): readonly LayerOption[] {
  return matchedLayers(before, after).flatMap(({ before: was, after: is }): LayerOption[] => {
    const layer = is ?? was;
    if (layer === null) return [];
    const changes = rows.filter((row) => row.part === 'key' && row.layer === layer.id).length;
    const label = changes === 0 ? layer.name : `${layer.name} · ${changes}`;
    return [{ value: layer.id, label, changes }];
  });
}

/** The keys to mark: those of the difference that is looked at, else all that differ on the layer or on the board itself. */
export function marksOf(
  rows: readonly ChangeRow[],
  layer: LayerId,
  lookedAt: ChangeRow | null,
): ReadonlySet<KeyId> {
  if (lookedAt !== null) return new Set(lookedAt.keys);
  const shown = rows.filter(({ part, layer: on }) => part === 'board' || (part === 'key' && on === layer));
  return new Set(shown.flatMap(({ keys }) => keys));
}

/** What is said of a board to those who do not see its marks. */
export function marksWords(marked: number): string {
  if (marked === 0) return 'no key differs on this layer';
  return marked === 1 ? '1 key marked' : `${marked} keys marked`;
}
