import { samePlain } from '../../core/base/same-plain.ts';
import { boardExtent } from '../../core/board/caps.ts';
import type { KeyId } from '../../core/keymap/types.ts';
import { type ChordScene, chordScenes } from './chord-scene.ts';
import { keyLabel } from './key-label.ts';
import { type KeyScene, type KeySceneSource, keyScene } from './key-scene.ts';

/** A rectangle of the board that a drawing shows, mm. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A whole board as it is drawn: plain data, from the keymap and the layer in front alone. */
export interface BoardScene {
  readonly keys: readonly (KeyScene & { readonly label: string })[];
  readonly chords: readonly ChordScene[];
  /** The caps and some air around them. */
  readonly frame: Frame;
}

const AIR_MM = 8;

/** Everything that is drawn of a design with one layer in front. */
export function boardScene(source: KeySceneSource): BoardScene {
  const { board } = source.keymap;
  const extent = boardExtent(board);
  return {
    keys: board.keys.map((key) => ({ ...keyScene(key, source), label: keyLabel(key.id, source) })),
    chords: chordScenes(source),
    frame: {
      x: extent.minX - AIR_MM,
      y: extent.minY - AIR_MM,
      width: extent.maxX - extent.minX + 2 * AIR_MM,
      height: extent.maxY - extent.minY + 2 * AIR_MM,
    },
  };
}

/** The keys whose middles lie in a rectangle, in the board's order. */
export function keysInFrame(
  keys: readonly { readonly id: KeyId; readonly x: number; readonly y: number }[],
  frame: Frame,
): readonly KeyId[] {
  return keys
    .filter(
      ({ x, y }) => x >= frame.x && x <= frame.x + frame.width && y >= frame.y && y <= frame.y + frame.height,
    )
    .map((key) => key.id);
}

/** The scene with every part of the one before that has the same content, so that a part is new only if it changed. */
export function keptScene(before: BoardScene | null, now: BoardScene): BoardScene {
  if (before === null) return now;
  const keys = new Map(before.keys.map((key) => [key.id, key]));
  const chords = new Map(before.chords.map((chord) => [chord.id, chord]));
  return {
    keys: now.keys.map((key) => keptPart(keys.get(key.id), key)),
    chords: now.chords.map((chord) => keptPart(chords.get(chord.id), chord)),
    frame: keptPart(before.frame, now.frame),
  };
}

function keptPart<Part>(before: Part | undefined, now: Part): Part {
  return before !== undefined && samePlain(before, now) ? before : now;
}
