import { paperOf } from '../../../../core/board/paper.ts';
import { LEAST_PT } from '../../../../core/drawing/sheet-marks.ts';
import type { SheetOptions } from '../../../../core/drawing/sheet-paper.ts';
import { fileStem } from '../../../board/export/export-files.ts';

/** How many pages it comes to, and how small its letters are. */
export function sheetSentence(pages: number, { paper, turn }: SheetOptions): string {
  const count = pages === 1 ? 'One page' : `${pages} pages`;
  const small = (LEAST_PT * 0.8).toFixed(1);
  return (
    `${count} of ${paperOf(paper).title}, ${turn}. No letters are smaller than ${LEAST_PT} pt; ` +
    `copied down to 80 % they are ${small} pt, which can still be read.`
  );
}

/** The name of a page's file: the first by the design's name alone, further ones numbered. */
export function pageFileName(name: string, at: number, ending: 'svg' | 'png'): string {
  return `${fileStem(name)}.sheet${at === 0 ? '' : `-${at + 1}`}.${ending}`;
}
