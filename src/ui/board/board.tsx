import { useDndContext } from '@dnd-kit/core';
import { type FocusEvent, useMemo, useRef, useState } from 'react';
import type { ChordId } from '../../core/keymap/types.ts';
import { useBench } from '../../store/bench.ts';
import type { Carried } from '../../store/bench-state.ts';
import { useHost } from '../../store/hosts.ts';
import { useSettings } from '../../store/settings/use-settings.ts';
import styles from './board.module.css';
import { BoardDrawing } from './board-drawing.tsx';
import { BoardKey } from './board-key.tsx';
import { type BoardScene, boardScene, keptScene } from './board-scene.ts';
import { BoardCard } from './cards/board-card.tsx';
import { ChordButtons } from './chord-buttons.tsx';
import { SelectionBar } from './selection-bar.tsx';
import { tabStopOf } from './tab-stop.ts';
import { useBoardCommands } from './use-board-commands.ts';
import { useBoardGestures } from './use-board-gestures.ts';
import { useCamera } from './use-camera.ts';
import { useFocusRequest } from './use-focus-request.ts';
import { ZoomButtons } from './zoom-buttons.tsx';

/** The board of the open design, to be looked at and worked on. Fills what it is put into. */
export function Board() {
  const svg = useRef<SVGSVGElement>(null);
  const [spoken, say] = useState('');
  const [lookedAt, setLookedAt] = useState<ChordId | null>(null);
  const scene = useBoardScene();
  const camera = useCamera(svg, scene.frame);
  const { lasso, handlers } = useBoardGestures(svg, scene, camera);
  const { focusRequest, opening } = useFocusRequest();
  const commands = useBoardCommands(svg, { opening, say });
  const carried = useBench((bench) => bench.carried);
  const isTaking = useDndContext().active !== null || carried !== null;
  const { x, y, width, height } = camera.frame;
  const name = useBench((bench) => bench.keymap.board.name);

  const focused = (event: FocusEvent<SVGSVGElement>) => {
    const id = event.target.getAttribute('data-key');
    const key = scene.keys.find((each) => each.id === id);
    if (key === undefined) return;
    useBench.getState().focusKey(key.id);
    camera.show(key);
  };

  return (
    <div className={styles.frame}>
      {/* biome-ignore lint/a11y/useSemanticElements: a drawing is no fieldset */}
      <svg
        ref={svg}
        className={styles.svg}
        viewBox={`${x} ${y} ${width} ${height}`}
        data-zoomed={camera.zoomed}
        data-taking={isTaking}
        role="group"
        aria-label={`Board: ${name}`}
        onFocus={focused}
        {...handlers}
        {...commands}
      >
        <BoardDrawing scene={scene} lookedAt={lookedAt} />
        <BoardKeys scene={scene} />
        <ChordButtons scene={scene} onLook={setLookedAt} />
        {lasso !== null && <rect className={styles.lasso} {...lasso} />}
      </svg>
      <CarryHint carried={carried} />
      <ZoomButtons camera={camera} />
      <SelectionBar />
      <BoardCard svg={svg} focusRequest={focusRequest} />
      <output className={styles.spoken}>{spoken}</output>
    </div>
  );
}

/** What to do with what is in the hand. Its place is always there, so that its words are read out when they come. */
function CarryHint({ carried }: { readonly carried: Carried | null }) {
  return (
    <div role="status">
      {carried !== null && (
        <p className={styles.hint}>
          {carried.label}: press a key to put it down.
          <span className={styles.hintByKeys}> Enter: tap, Shift and Enter: hold, Escape: drop it.</span>
        </p>
      )}
    </div>
  );
}

/** The scene of the open design; parts that did not change stay the very same. */
function useBoardScene(): BoardScene {
  const keymap = useBench((bench) => bench.keymap);
  const frontLayer = useBench((bench) => bench.frontLayer);
  const { host } = useHost(keymap);
  const legends = useSettings((settings) => settings.legends);
  const hiddenRungs = useSettings((settings) => settings.hiddenRungs);
  const before = useRef<BoardScene | null>(null);
  return useMemo(() => {
    before.current = keptScene(
      before.current,
      boardScene({ keymap, frontLayer, host: legends === 'codes' ? null : host, hiddenRungs }),
    );
    return before.current;
  }, [keymap, frontLayer, host, legends, hiddenRungs]);
}

/** The keys that can be focused, pressed and dropped on; they have no looks of their own but the focus ring. */
function BoardKeys({ scene }: { readonly scene: BoardScene }) {
  const board = useBench((bench) => bench.keymap.board);
  const frontLayer = useBench((bench) => bench.frontLayer);
  const focusedKey = useBench((bench) => bench.focusedKey);
  const selected = useBench((bench) => bench.selectedKeys);
  const tabStop = tabStopOf(board, focusedKey);
  return (
    <g role="listbox" aria-multiselectable="true" aria-label="Keys">
      {scene.keys.map((key) => (
        <BoardKey
          key={key.id}
          scene={key}
          board={board}
          frontLayer={frontLayer}
          tabStop={key.id === tabStop}
          selected={selected.includes(key.id)}
        />
      ))}
    </g>
  );
}
