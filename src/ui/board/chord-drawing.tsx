import { memo } from 'react';
import type { ChordId } from '../../core/keymap/types.ts';
import styles from './board.module.css';
import { type ChordScene, type ChordTag, TAG_SIZE_MM } from './chord-scene.ts';
import { textWidth } from './fit-text.ts';

/** A chord's outlines round its keys, and the line that joins two hands. */
export const ChordOutline = memo(function ChordOutline({
  scene,
  lit,
}: {
  readonly scene: ChordScene;
  readonly lit: boolean;
}) {
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

/** A chord's tag as it looks: what it gives, and its window in ms. */
export const ChordTagDrawing = memo(function ChordTagDrawing({
  tag,
  lit,
}: {
  readonly tag: ChordTag;
  readonly lit: boolean;
}) {
  const start = tag.x - tag.width / 2 + 0.5 * TAG_SIZE_MM;
  return (
    <g className={styles.tagDrawing} data-lit={lit}>
      <rect className={styles.tagArea} {...boxOf(tag)} />
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

/** The button that lies on a chord's tag and opens its card; its name is the chord in words. */
export const ChordButton = memo(function ChordButton({
  scene,
  tag,
  tabStop,
  onLook,
}: {
  readonly scene: ChordScene;
  readonly tag: ChordTag;
  readonly tabStop: boolean;
  /** Called with the chord when it is pointed at or focused, and with null afterwards. */
  readonly onLook: (chord: ChordId | null) => void;
}) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing cannot hold a button element
    <g
      role="button"
      tabIndex={tabStop ? 0 : -1}
      aria-label={scene.label}
      data-chord={scene.id}
      className={styles.tag}
      onPointerEnter={() => onLook(scene.id)}
      onPointerLeave={() => onLook(null)}
      onFocus={() => onLook(scene.id)}
      onBlur={() => onLook(null)}
    >
      <rect {...boxOf(tag)} />
    </g>
  );
});

function boxOf({ x, y, width, height }: ChordTag) {
  return { x: x - width / 2, y: y - height / 2, width, height, rx: height / 2 };
}
