import { useDndContext } from '@dnd-kit/core';
import { useMemo } from 'react';
import type { ChordId, KeyId } from '../../core/keymap/types.ts';
import { useBench } from '../../store/bench.ts';
import type { BoardScene } from './board-scene.ts';
import { ChordOutline, ChordTagDrawing } from './chord-drawing.tsx';
import { bindingDragId } from './drop-id.ts';
import { KeyDrawing } from './key-drawing.tsx';
import { keyLights } from './key-lights.ts';
import { OrderBadge } from './order-badge.tsx';

/** With more live chords than this their outlines are drawn lighter. */
const CROWD = 8;

/**
 * All that is seen of the board: caps, then outlines, then tags, so that no line runs over a tag. It is hidden from
 * screen readers, who hear the labels of the keys and buttons that lie over it.
 */
export function BoardDrawing({
  scene,
  lookedAt,
}: {
  readonly scene: BoardScene;
  /** The chord whose tag is pointed at or focused. */
  readonly lookedAt: ChordId | null;
}) {
  const lit = useBench((bench) => bench.lit);
  const openCard = useBench((bench) => bench.openCard);
  const lights = useMemo(() => keyLights(lit), [lit]);
  const isOpen = (id: ChordId) => openCard?.card === 'chord' && openCard.chord === id;
  const isLit = (id: ChordId) => id === lookedAt || lit?.chords.includes(id) === true || isOpen(id);
  const tags = scene.chords.flatMap(({ id, tag }) => (tag === null ? [] : [{ id, tag }]));
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of shapes takes no focus
    <g aria-hidden="true">
      <Caps scene={scene} lights={lights} />
      <g data-crowded={tags.length > CROWD}>
        {scene.chords.map((chord) => (
          <ChordOutline key={chord.id} scene={chord} lit={isLit(chord.id)} />
        ))}
      </g>
      {tags.map(({ id, tag }) => (
        <ChordTagDrawing key={id} tag={tag} lit={isLit(id)} />
      ))}
      {scene.keys.map((key) => (
        <OrderBadge key={key.id} light={lights.get(key.id) ?? ''} of={key} />
      ))}
    </g>
  );
}

function Caps({
  scene,
  lights,
}: {
  readonly scene: BoardScene;
  readonly lights: ReadonlyMap<KeyId, string>;
}) {
  const frontLayer = useBench((bench) => bench.frontLayer);
  const selected = useBench((bench) => bench.selectedKeys);
  const openCard = useBench((bench) => bench.openCard);
  const carried = useBench((bench) => bench.carried);
  const dragged = useDndContext().active?.id;
  const isInHand = (key: KeyId) =>
    carried?.carry === 'binding' && carried.from.key === key && carried.from.layer === frontLayer;
  return scene.keys.map((key) => (
    <KeyDrawing
      key={key.id}
      scene={key}
      selected={selected.includes(key.id)}
      lit={lights.has(key.id)}
      open={openCard?.card === 'key' && openCard.key === key.id}
      lifted={isInHand(key.id) || dragged === bindingDragId(key.id)}
    />
  ));
}
