import { designFacts } from '../findings/facts.ts';
import type { HostLayout } from '../host/host-layout.ts';
import type { ChordId, Keymap, LayerId } from '../keymap/types.ts';
import { drawBoard } from './sheet-boards.ts';
import { flow, type LaneAt } from './sheet-flow.ts';
import type { Mark } from './sheet-marks.ts';
import { NoteBook } from './sheet-notes.ts';
import { MARGIN_MM, type PaperSize, paperSize, type SheetOptions } from './sheet-paper.ts';
import { type SheetPlan, sheetPlan } from './sheet-plan.ts';
import { readingBlocks } from './sheet-reading.ts';
import { chordBlocks, ladderBlocks, noteBlocks } from './sheet-sections.ts';
import type { SheetSource } from './sheet-source.ts';
import { pageSvg } from './sheet-svg.ts';
import { footMarks, TITLE_MM, titleMarks } from './sheet-title.ts';
import type { SheetType } from './sheet-type.ts';

/** One page of a sheet, as marks; sizes in mm. */
export interface SheetPage extends PaperSize {
  readonly marks: readonly Mark[];
}

/** What a sheet is made of. */
export interface SheetWish extends SheetOptions {
  readonly keymap: Keymap;
  readonly host: HostLayout;
  readonly type: SheetType;
  /** The layers whose rungs are shown; every layer where it is left out. */
  readonly layers?: readonly LayerId[];
  /** Legends by the names of the keys that are sent, instead of by the characters the computer makes of them. */
  readonly byCode?: boolean;
}

/** The pages of a sheet as self-contained SVG, in order. The same design and choices give the same text. */
export function sheetSvgs(wish: SheetWish): readonly string[] {
  const pages = sheetPages(wish);
  return pages.map(({ marks, width, height }, at) => {
    const title =
      pages.length === 1 ? wish.keymap.name : `${wish.keymap.name}, page ${at + 1} of ${pages.length}`;
    const description = `Sheet of a keyboard design: ${wish.keymap.board.name}, ${wish.keymap.layers.length} layers`;
    return pageSvg(marks, { width, height }, { title, description }, wish.type, wish.ink);
  });
}

/** The pages of a sheet as marks, before they are written as SVG. */
export function sheetPages(wish: SheetWish): readonly SheetPage[] {
  const size = paperSize(wish);
  const source = sourceOf(wish);
  const room = { width: size.width - 2 * MARGIN_MM, height: size.height - 2 * MARGIN_MM - TITLE_MM };
  const plan = sheetPlan(source, room);
  const notes = new NoteBook();
  const { pages, tops, unnumbered } = boardPages(plan, size, source, notes);
  const width = columnWidth(size);
  const setting = { type: wish.type, width };
  const sections = [
    ladderBlocks(source, setting),
    chordBlocks(source, setting, unnumbered),
    readingBlocks(source, setting),
    noteBlocks(notes.notes, setting),
  ];
  for (const { page, marks } of flow(sections, lanesOf(size, width, tops))) {
    const onPage = pages[page] ?? [];
    onPage.push(...marks);
    pages[page] = onPage;
  }
  return Array.from(pages, (marks = [], at) => ({
    ...size,
    marks: [...marks, ...footMarks(source, size, at, pages.length)],
  }));
}

function sourceOf(wish: SheetWish): SheetSource {
  const { keymap, host, type, layers, byCode = false } = wish;
  const numbers = keymap.layers.map((_, number) => number).slice(1);
  const rungs = numbers.filter((number) => layers?.includes(keymap.layers[number]?.id ?? '') ?? true);
  return { keymap, host: byCode ? null : host, type, rungs, facts: designFacts(keymap, host) };
}

/** Between two boards on a page, and between a board and what stands under it, mm. */
const UNDER_BOARD_MM = 7;

/** The pages with the title and the boards on them, and how far down each is filled. */
function boardPages(plan: SheetPlan, size: PaperSize, source: SheetSource, notes: NoteBook) {
  const pages: Mark[][] = [[...titleMarks(source, size)]];
  const tops: number[] = [MARGIN_MM + TITLE_MM];
  let unnumbered: ReadonlySet<ChordId> = new Set();
  plan.boards.forEach((board, at) => {
    const page = Math.floor(at / plan.perPage);
    const top = tops[page] ?? MARGIN_MM;
    const drawn = drawBoard(plan, board, top, size, source, notes);
    pages[page] = [...(pages[page] ?? []), ...drawn.marks];
    tops[page] = top + drawn.height + UNDER_BOARD_MM;
    if (board.manner.isFirst) unnumbered = drawn.unnumbered;
  });
  return { pages, tops, unnumbered };
}

const GUTTER_MM = 7;
/** Columns are about as wide as 45 characters of their text. */
const COLUMN_MM = 58;

function columnWidth({ width }: PaperSize): number {
  const room = width - 2 * MARGIN_MM;
  const columns = Math.max(1, Math.floor((room + GUTTER_MM) / (COLUMN_MM + GUTTER_MM)));
  return (room - (columns - 1) * GUTTER_MM) / columns;
}

/** Column after column under the boards of each page, then whole pages. */
function lanesOf(size: PaperSize, width: number, tops: readonly number[]): LaneAt {
  const columns = Math.round((size.width - 2 * MARGIN_MM + GUTTER_MM) / (width + GUTTER_MM));
  const bottom = size.height - MARGIN_MM;
  return (index) => {
    const page = Math.floor(index / columns);
    const x = MARGIN_MM + (index % columns) * (width + GUTTER_MM);
    return { page, x, top: tops[page] ?? MARGIN_MM, bottom };
  };
}
