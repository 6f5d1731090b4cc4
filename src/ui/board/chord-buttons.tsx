import type { ChordId } from '../../core/keymap/types.ts';
import type { BoardScene } from './board-scene.ts';
import { ChordButton } from './chord-drawing.tsx';

/** The buttons on the tags of the live chords; one tab stop for all of them. */
export function ChordButtons({
  scene,
  onLook,
}: {
  readonly scene: BoardScene;
  readonly onLook: (chord: ChordId | null) => void;
}) {
  const live = scene.chords.filter((chord) => chord.live);
  return live.map((chord) =>
    chord.tag === null ? null : (
      <ChordButton
        key={chord.id}
        scene={chord}
        tag={chord.tag}
        tabStop={chord.id === live[0]?.id}
        onLook={onLook}
      />
    ),
  );
}
