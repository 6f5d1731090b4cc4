import { freshId } from '../../../../core/keymap/fresh-id.ts';
import { LIMITS } from '../../../../core/keymap/limits.ts';
import type { Keymap, LayerId } from '../../../../core/keymap/types.ts';
import type { BenchActions } from '../../../../store/bench-state.ts';
import { copyName } from '../../../../store/keeping/copy-name.ts';
import type { MenuItem } from '../../../widgets/menu.tsx';

/** Where a layer comes to lie when it is put down on another one: in its place, and above the base layer. */
export function placeOfDrop(keymap: Keymap, on: LayerId): number {
  return Math.max(
    1,
    keymap.layers.findIndex(({ id }) => id === on),
  );
}

/** At which edge of the sheet that is dragged over the dragged one would come to lie; null where nothing moves. */
export function edgeOfDrop(keymap: Keymap, dragged: LayerId, over: LayerId): 'above' | 'below' | null {
  const from = keymap.layers.findIndex(({ id }) => id === dragged);
  const to = placeOfDrop(keymap, over);
  if (from < 1 || from === to) return null;
  return to > from || keymap.layers[0]?.id === over ? 'above' : 'below';
}

/** What the page is told of a layer that was moved by keyboard. */
export function movedWords(keymap: Keymap, layer: LayerId): string {
  const at = keymap.layers.findIndex(({ id }) => id === layer);
  const below = keymap.layers[at - 1]?.name ?? '';
  return `${keymap.layers[at]?.name ?? ''} is number ${at} of ${keymap.layers.length - 1} now, above ${below}.`;
}

/** The commands for one sheet of the stack. */
export function sheetItems(
  keymap: Keymap,
  layer: LayerId,
  bench: Pick<BenchActions, 'edit' | 'showLayer'>,
  change: () => void,
): readonly MenuItem[] {
  const at = keymap.layers.findIndex(({ id }) => id === layer);
  const move = (to: number) => bench.edit({ edit: 'move-layer', layer, to });
  const duplicate = () => {
    const id = freshId(
      'layer',
      keymap.layers.map((each) => each.id),
    );
    const name = copyName(
      keymap.layers[at]?.name ?? '',
      keymap.layers.map((each) => each.name),
    );
    bench.edit({ edit: 'duplicate-layer', layer, id, name });
    bench.showLayer(id);
  };
  return [
    { label: 'Name and ways in…', onSelect: change },
    'line',
    {
      label: 'Move up',
      hint: 'Alt ↑',
      disabled: at < 1 || at === keymap.layers.length - 1,
      onSelect: () => move(at + 1),
    },
    { label: 'Move down', hint: 'Alt ↓', disabled: at < 2, onSelect: () => move(at - 1) },
    { label: 'Duplicate', disabled: keymap.layers.length >= LIMITS.layers, onSelect: duplicate },
    ...(at < 1
      ? []
      : ([
          'line',
          { label: 'Delete', tone: 'danger', onSelect: () => bench.edit({ edit: 'delete-layer', layer }) },
        ] as const)),
  ];
}
