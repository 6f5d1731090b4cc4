import { type Paper, paperOf } from '../board/paper.ts';

/** How the paper lies. */
export type Turn = 'portrait' | 'landscape';
/** Whether the layers have their colours, or everything is black. */
export type InkChoice = 'colour' | 'black';

/** What is chosen for a sheet. */
export interface SheetOptions {
  readonly paper: Paper['id'];
  readonly turn: Turn;
  readonly ink: InkChoice;
}

/** A size on paper, mm. */
export interface PaperSize {
  readonly width: number;
  readonly height: number;
}

/** The size of a page as it lies. */
export function paperSize({ paper, turn }: Pick<SheetOptions, 'paper' | 'turn'>): PaperSize {
  const { widthMm, heightMm } = paperOf(paper);
  return turn === 'portrait' ? { width: widthMm, height: heightMm } : { width: heightMm, height: widthMm };
}

/** Free along every edge, mm: home printers leave 3 to 6 mm white (common practice, no source), and a page wants air. */
export const MARGIN_MM = 11;
