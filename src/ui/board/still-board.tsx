import { useMemo } from 'react';
import type { HostLayout } from '../../core/host/host-layout.ts';
import type { KeyId, Keymap, LayerId } from '../../core/keymap/types.ts';
import styles from './board.module.css';
import { boardScene } from './board-scene.ts';
import { KeyDrawing } from './key-drawing.tsx';
import { type KeyLight, OrderBadge } from './order-badge.tsx';

/** A small board to be looked at only, one layer alone with some keys marked; `title` is what screen readers hear of it. */
export function StillBoard({
  keymap,
  host,
  layer,
  marked,
  lights = NO_LIGHTS,
  title,
}: {
  readonly keymap: Keymap;
  readonly host: HostLayout;
  readonly layer: LayerId;
  readonly marked: ReadonlySet<KeyId>;
  /** The order in which keys are pressed, where there is one. */
  readonly lights?: ReadonlyMap<KeyId, KeyLight>;
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
      {scene.keys.map((key) => (
        <OrderBadge key={key.id} light={lights.get(key.id) ?? ''} of={key} />
      ))}
    </svg>
  );
}

const NO_LIGHTS: ReadonlyMap<KeyId, KeyLight> = new Map();
