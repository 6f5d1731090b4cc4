import type { Board } from '../../core/keymap/types.ts';
import { Button, IconButton } from '../widgets/button.tsx';
import styles from './board.module.css';
import type { CameraHandle } from './use-camera.ts';
import { useHalfView } from './use-half-view.ts';

/** In, out, and the whole board; `board` where it is another than the design's. */
export function ZoomButtons({ camera, board }: { readonly camera: CameraHandle; readonly board?: Board }) {
  const half = useHalfView(camera, board);
  return (
    <div className={styles.zoom} data-half={half?.shown}>
      {half !== null && (
        <Button onClick={half.turn}>{half.other === 'left' ? 'Left half' : 'Right half'}</Button>
      )}
      <IconButton label="Zoom out" tone="plain" onClick={camera.zoomOut}>
        <Sign path="M4 8h8" />
      </IconButton>
      <IconButton label="Zoom in" tone="plain" onClick={camera.zoomIn}>
        <Sign path="M4 8h8M8 4v8" />
      </IconButton>
      <IconButton label="Show the whole board" tone="plain" disabled={!camera.zoomed} onClick={camera.fit}>
        <Sign path="M3 6V3h3M10 3h3v3M13 10v3h-3M6 13H3v-3" />
      </IconButton>
    </div>
  );
}

function Sign({ path }: { readonly path: string }) {
  return (
    <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
      <path d={path} fill="none" stroke="currentColor" strokeWidth="1.5" strokeLinecap="round" />
    </svg>
  );
}
