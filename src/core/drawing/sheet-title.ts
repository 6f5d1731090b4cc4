import type { Host } from '../keymap/types.ts';
import { fitLines } from './fit-lines.ts';
import { charactersOf, MM_OF_POINT, textMm } from './set-text.ts';
import { SMALL_LOOK } from './sheet-blocks.ts';
import { LEAST_PT, type Mark, textAt } from './sheet-marks.ts';
import { MARGIN_MM, type PaperSize } from './sheet-paper.ts';
import type { SheetSource } from './sheet-source.ts';
import type { FaceName, SheetType } from './sheet-type.ts';

/** From the upper margin to what stands under the title, mm. */
export const TITLE_MM = 15;

const MOST_TITLE_PT = 18;

/** The head of a sheet: what it is called, and under it board and computer. */
export function titleMarks(source: SheetSource, page: PaperSize): readonly Mark[] {
  const { keymap, type } = source;
  const width = page.width - 2 * MARGIN_MM;
  const space = { width, height: 9, mostPt: MOST_TITLE_PT, mostLines: 1 };
  const fitted = fitLines(type, 'serif', [keymap.name], space);
  const sizePt = fitted?.sizePt ?? LEAST_PT;
  const name = fitted?.lines[0] ?? shortened(type, 'serif', sizePt, keymap.name, width);
  const about = `${keymap.board.name}; characters as on ${hostWords(keymap.hosts[0])}`;
  return [
    textAt(name, MARGIN_MM, MARGIN_MM + 5.2, { face: 'serif', sizePt, ink: 'ink' }),
    textAt(shortened(type, 'italic', 8.5, about, width), MARGIN_MM, MARGIN_MM + 10, {
      ...SMALL_LOOK,
      sizePt: 8.5,
    }),
  ];
}

function hostWords(host: Host | undefined): string {
  if (host === undefined) return 'no host';
  return `${[host.layout, host.variant].join(' ').trim()} under ${SYSTEMS[host.system]}`;
}

const SYSTEMS = { linux: 'Linux', windows: 'Windows', macos: 'macOS' } as const;

/** The foot of a page: which of how many; from the second page on also what sheet it belongs to. */
export function footMarks(source: SheetSource, page: PaperSize, at: number, pages: number): readonly Mark[] {
  if (pages === 1) return [];
  const { type, keymap } = source;
  const y = page.height - MARGIN_MM + 5.5;
  const number = `${at + 1} of ${pages}`;
  const wide = textMm(type, SMALL_LOOK.face, SMALL_LOOK.sizePt, number);
  const right = page.width - MARGIN_MM;
  const name = shortened(type, SMALL_LOOK.face, SMALL_LOOK.sizePt, keymap.name, right - MARGIN_MM - wide - 5);
  return [
    textAt(number, right - wide, y, SMALL_LOOK),
    ...(at > 0 ? [textAt(name, MARGIN_MM, y, SMALL_LOOK)] : []),
  ];
}

/** A text that loses its end to an ellipsis where it is wider than it may be. */
function shortened(type: SheetType, face: FaceName, sizePt: number, text: string, widthMm: number): string {
  if (textMm(type, face, sizePt, text) <= widthMm) return text;
  const room = widthMm - textMm(type, face, sizePt, '…') - 0.1 * MM_OF_POINT;
  let kept = '';
  for (const char of charactersOf(text)) {
    if (textMm(type, face, sizePt, kept + char) > room) break;
    kept += char;
  }
  return `${kept.trimEnd()}…`;
}
