import { useMemo } from 'react';
import type { HostLayout } from '../../core/host/host-layout.ts';
import type { KeyId, Keymap, LayerId } from '../../core/keymap/types.ts';
import styles from './board.module.css';
import { boardScene } from './board-scene.ts';
import { KeyDrawing } from './key-drawing.tsx';

/** A small board to be looked at only, one layer alone with some keys marked; `title` is what screen readers hear of it. */
export function StillBoard({
  keymap,
  host,
  layer,
  marked,
  title,
}: {
  readonly keymap: Keymap;
  readonly host: HostLayout;
  readonly layer: LayerId;
  readonly marked: ReadonlySet<KeyId>;
  readonly title: string;
}) {
  const scene = useMemo(
    () => boardScene({ keymap, frontLayer: layer, host, withoutLadder: true }),
    [keymap, layer, host],
  );
  const { x, y, width, height } = scene.frame;
  return (
    <svg className={styles.still} viewBox={`${x} ${y} ${width} ${height}`} role="img" aria-label={title}>
      {scene.keys.map((key) => (
        <KeyDrawing
          key={key.id}
          scene={key}
          selected={false}
          lit={marked.has(key.id)}
          open={false}
          lifted={false}
        />
      ))}
    </svg>
  );
}
