import { memo } from 'react';
import type { ChordId } from '../../core/keymap/types.ts';
import styles from './board.module.css';
import { type ChordScene, type ChordTag, TAG_SIZE_MM } from './chord-scene.ts';
import { textWidth } from './fit-text.ts';

interface ChordProps {
  readonly scene: ChordScene;
  readonly lit: boolean;
}

/** A chord's outlines round its keys, and the line that joins two hands. */
export const ChordOutline = memo(function ChordOutline({ scene, lit }: ChordProps) {
  return (
    <g className={styles.outlines} data-live={scene.live} data-lit={lit} data-outline={scene.id}>
      {scene.bridge !== null && (
        <line
          className={styles.bridge}
          x1={scene.bridge.from.x}
          y1={scene.bridge.from.y}
          x2={scene.bridge.to.x}
          y2={scene.bridge.to.y}
        />
      )}
      {scene.outlines.map((path) => (
        <path key={path} d={path} />
      ))}
      {scene.knots.map(({ x, y }) => (
        <circle className={styles.knot} key={`${x} ${y}`} cx={x} cy={y} r={1} />
      ))}
    </g>
  );
});

/** What the chord gives, and its window in ms. A press on it opens the chord's card. */
export const ChordTagDrawing = memo(function ChordTagDrawing({
  scene,
  lit,
  tag,
  tabStop,
  onLook,
}: ChordProps & {
  readonly tag: ChordTag;
  readonly tabStop: boolean;
  /** Called with the chord when its tag is pointed at or focused, and with null afterwards. */
  readonly onLook: (chord: ChordId | null) => void;
}) {
  const start = tag.x - tag.width / 2 + 0.5 * TAG_SIZE_MM;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing cannot hold a button element
    <g
      role="button"
      tabIndex={tabStop ? 0 : -1}
      aria-label={scene.label}
      data-chord={scene.id}
      data-lit={lit}
      className={styles.tag}
      onPointerEnter={() => onLook(scene.id)}
      onPointerLeave={() => onLook(null)}
      onFocus={() => onLook(scene.id)}
      onBlur={() => onLook(null)}
    >
      <rect
        className={styles.tagArea}
        x={tag.x - tag.width / 2}
        y={tag.y - tag.height / 2}
        width={tag.width}
        height={tag.height}
        rx={tag.height / 2}
      />
      <text x={start} y={tag.y} fontSize={TAG_SIZE_MM} className={styles.tagGives}>
        {tag.gives}
      </text>
      <text
        x={start + (textWidth(tag.gives) + 0.25) * TAG_SIZE_MM}
        y={tag.y}
        fontSize={TAG_SIZE_MM * 0.8}
        className={styles.tagWindow}
      >
        {tag.window}
      </text>
    </g>
  );
});
