import { useMemo } from 'react';
import type { HostLayout } from '../../../core/host/host-layout.ts';
import type { KeyId, Keymap, LayerId } from '../../../core/keymap/types.ts';
import { boardScene } from '../../board/board-scene.ts';
import { KeyDrawing } from '../../board/key-drawing.tsx';
import type { KeyScene } from '../../board/key-scene.ts';
import { OrderBadge } from '../../board/order-badge.tsx';
import type { Hint } from './hint.ts';
import type { KeyFigure } from './key-figures.ts';
import styles from './practise-board.module.css';

/** What the board shows: bare caps, one layer with the way to a need, or a figure on each key. */
export type BoardShows =
  | { readonly shows: 'caps' }
  | { readonly shows: 'layer'; readonly layer: LayerId; readonly lights: Hint['lights'] }
  | { readonly shows: 'figures'; readonly marks: ReadonlyMap<KeyId, KeyFigure> };

const NO_LIGHTS: Hint['lights'] = new Map();

/** The board to look at while practising: never a place to edit it. */
export function PractiseBoard({
  keymap,
  host,
  shows,
  pressed,
  label,
}: {
  readonly keymap: Keymap;
  readonly host: HostLayout;
  readonly shows: BoardShows;
  readonly pressed: ReadonlySet<KeyId>;
  readonly label: string;
}) {
  const layer = shows.shows === 'layer' ? shows.layer : (keymap.layers[0]?.id ?? '');
  const scene = useMemo(() => boardScene({ keymap, frontLayer: layer, host }), [keymap, layer, host]);
  const lights = shows.shows === 'layer' ? shows.lights : NO_LIGHTS;
  const { x, y, width, height } = scene.frame;
  return (
    <svg className={styles.board} viewBox={`${x} ${y} ${width} ${height}`} role="img" aria-label={label}>
      {scene.keys.map((key) =>
        shows.shows === 'layer' ? (
          <KeyDrawing
            key={key.id}
            scene={key}
            selected={false}
            lit={lights.has(key.id)}
            open={pressed.has(key.id)}
            lifted={false}
          />
        ) : (
          <Cap
            key={key.id}
            scene={key}
            isPressed={pressed.has(key.id)}
            mark={shows.shows === 'figures' ? shows.marks.get(key.id) : undefined}
          />
        ),
      )}
      {scene.keys.map((key) => (
        <OrderBadge key={key.id} light={lights.get(key.id) ?? ''} of={key} />
      ))}
    </svg>
  );
}

/** A cap without a legend, or with a figure. */
function Cap({
  scene,
  isPressed,
  mark,
}: {
  readonly scene: KeyScene;
  readonly isPressed: boolean;
  readonly mark: KeyFigure | undefined;
}) {
  const { width, height } = scene;
  return (
    <g
      transform={`translate(${scene.x} ${scene.y}) rotate(${scene.rotation})`}
      className={styles.cap}
      data-pressed={isPressed}
      data-heat={mark?.step}
    >
      {mark !== undefined && <title>{mark.words}</title>}
      <rect x={-width / 2} y={-height / 2} width={width} height={height} rx={2.6} />
      {scene.home && (
        <rect className={styles.home} x={-2.6} y={height / 2 - 1.15} width={5.2} height={0.7} rx={0.35} />
      )}
      {mark !== undefined && (
        <text className={styles.figure} fontSize={mark.figure.length > 5 ? 3.4 : 4.8}>
          {mark.figure}
        </text>
      )}
    </g>
  );
}
