import { boardExtent } from '../board/caps.ts';
import { chordsOf } from '../keymap/timing.ts';
import type { ChordId } from '../keymap/types.ts';
import { onCap, textBox } from './place-marks.ts';
import { chordMarks, type TagGround } from './sheet-chords.ts';
import { keyMarks } from './sheet-key.ts';
import type { Mark } from './sheet-marks.ts';
import type { NoteBook } from './sheet-notes.ts';
import type { PlacedCap } from './sheet-outlines.ts';
import type { PaperSize } from './sheet-paper.ts';
import type { BoardPlan, SheetPlan } from './sheet-plan.ts';
import type { SheetSource } from './sheet-source.ts';

/** A board as it was drawn on a page. */
export interface DrawnBoard {
  readonly marks: readonly Mark[];
  /** Height on the page, mm. */
  readonly height: number;
  /** Chords of which an outline has no number, because there was no room for one. */
  readonly unnumbered: ReadonlySet<ChordId>;
}

/** Draws a board with its upper edge at `top`, in the middle of the page's width; chords stand on the first one. */
export function drawBoard(
  plan: SheetPlan,
  board: BoardPlan,
  top: number,
  page: PaperSize,
  source: SheetSource,
  notes: NoteBook,
): DrawnBoard {
  const { caps, height } = placedCaps(plan, board.scale, top, page);
  const keys = plan.board.keys.flatMap((key, at) => {
    const cap = caps[at];
    return cap === undefined ? [] : onCap(keyMarks(key, cap, board.manner, source, notes), cap);
  });
  if (!board.manner.isFirst) return { marks: keys, height, unnumbered: new Set() };
  const chords = drawChords(keys, caps, page, source);
  return { marks: [...keys, ...chords.marks], height, unnumbered: chords.unnumbered };
}

function placedCaps(plan: SheetPlan, scale: number, top: number, page: PaperSize) {
  const { minX, minY, maxX, maxY } = boardExtent(plan.board);
  const left = (page.width - (maxX - minX) * scale) / 2;
  const caps = plan.board.keys.map(
    (key): PlacedCap => ({
      id: key.id,
      hand: key.hand,
      x: left + (key.x - minX) * scale,
      y: top + (key.y - minY) * scale,
      width: key.width * scale,
      height: key.height * scale,
      rotation: key.rotation,
    }),
  );
  return { caps, height: (maxY - minY) * scale };
}

function drawChords(keys: readonly Mark[], caps: readonly PlacedCap[], page: PaperSize, source: SheetSource) {
  const texts = keys.flatMap((mark) => (mark.mark === 'text' ? [textBox(source.type, mark)] : []));
  const ground: TagGround = { type: source.type, taken: texts, page };
  const drawn = chordsOf(source.keymap).map((chord, at) => ({
    chord,
    ...chordMarks(chord, at + 1, caps, ground),
  }));
  const bare = drawn.filter(({ isNumbered }) => !isNumbered).map(({ chord }) => chord.id);
  return {
    marks: [...drawn.flatMap(({ outlines }) => outlines), ...drawn.flatMap(({ tags }) => tags)],
    unnumbered: new Set(bare),
  };
}
