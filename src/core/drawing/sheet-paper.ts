/** Papers that a sheet is laid out for. */
export type Paper = 'a4' | 'letter';
/** How the paper lies. */
export type Turn = 'portrait' | 'landscape';
/** Whether the layers have their colours, or everything is black. */
export type InkChoice = 'colour' | 'black';

/** What is chosen for a sheet. */
export interface SheetOptions {
  readonly paper: Paper;
  readonly turn: Turn;
  readonly ink: InkChoice;
}

/** A size on paper, mm. */
export interface PaperSize {
  readonly width: number;
  readonly height: number;
}

/** Portrait sizes, mm: A4 as ISO 216 has it, Letter of 8.5 by 11 inches (ANSI/ASME Y14.1, size A). */
const PAPERS: Readonly<Record<Paper, PaperSize>> = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
};

/** The size of a page as it lies. */
export function paperSize({ paper, turn }: Pick<SheetOptions, 'paper' | 'turn'>): PaperSize {
  const { width, height } = PAPERS[paper];
  return turn === 'portrait' ? { width, height } : { width: height, height: width };
}

/** Free along every edge, mm: home printers leave 3 to 6 mm white (common practice, no source), and a page wants air. */
export const MARGIN_MM = 11;
