import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { type BoardPage, boardPages } from '../../../src/core/board/board-pages.ts';
import { capCorners } from '../../../src/core/board/caps.ts';
import { PAPERS, type Paper, paperFor } from '../../../src/core/board/paper.ts';
import { type PaperMark, pageMarks, pageSvg, RULE_MM } from '../../../src/core/board/paper-marks.ts';
import { parametricBoard } from '../../../src/core/board/parametric.ts';
import type { Board } from '../../../src/core/keymap/types.ts';
import { cap, FAMILY, readyBoard, sensibleBoards } from './boards.ts';

function paper(id: Paper['id']): Paper {
  const found = PAPERS.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no paper ${id}`);
  return found;
}

const parts = (pages: readonly BoardPage[]) => pages.map(({ part, lies }) => `${part ?? 'whole'} ${lies}`);

/** Whether every corner of a key's cap lies on a page, within what printers leave white at the least. */
function isWhollyOn(page: BoardPage, id: string): boolean {
  const key = page.keys.find((each) => each.id === id);
  if (key === undefined) return false;
  return capCorners(key).every(({ x, y }) => {
    const [across, down] = [x + page.offset.x, y + page.offset.y];
    return across >= 10 && across <= page.widthMm - 10 && down >= 10 && down <= page.heightMm - 10;
  });
}

describe('papers', () => {
  // ISO 216: A-sizes halve, the sides as 1 to the root of 2, A0 is 1 m²; ANSI/ASME Y14.1 size A is 8.5 by 11 inches.
  test('have the sizes of their standards', () => {
    const a4 = paper('a4');
    expect(a4.heightMm / a4.widthMm).toBeCloseTo(Math.SQRT2, 2);
    expect((a4.widthMm * a4.heightMm * 16) / 1e6).toBeCloseTo(1, 2);
    expect(paper('letter').widthMm).toBeCloseTo(8.5 * 25.4, 9);
    expect(paper('letter').heightMm).toBeCloseTo(11 * 25.4, 9);
  });

  test.each([
    ['en-US', 'letter'],
    ['fr-CA', 'letter'],
    ['pt-PT', 'a4'],
    ['de', 'a4'],
    ['', 'a4'],
  ])('a language of %o is printed on %s', (language, id) => {
    expect(paperFor(language)).toBe(id);
  });
});

describe('pages of a board', () => {
  test('one where the board fits, across before upright', () => {
    expect(parts(boardPages(readyBoard('split-36'), paper('a4')))).toEqual(['whole across']);
    const tall: Board = { name: 'tall', keys: [cap('A', 0, 0), cap('B', 0, 200)] };
    expect(parts(boardPages(tall, paper('a4')))).toEqual(['whole upright']);
  });

  test('a half on each where it does not, or on wish', () => {
    expect(parts(boardPages(readyBoard('split-42'), paper('letter')))).toEqual([
      'Left half across',
      'Right half across',
    ]);
    expect(boardPages(readyBoard('one-piece-36'), paper('a4'), 'apart')).toHaveLength(2);
  });

  test('several for a half that is too large, which share enough to be laid on each other', () => {
    const wide: Board = {
      name: 'wide',
      keys: Array.from({ length: 30 }, (_, at) => cap(`K${at}`, at * 19, 0)),
    };
    const pages = boardPages(wide, paper('a4'));
    expect(parts(pages)).toEqual([
      'Page 1 of 3, row 1, column 1 across',
      'Page 2 of 3, row 1, column 2 across',
      'Page 3 of 3, row 1, column 3 across',
    ]);
    // Each seam stands on the two pages that it joins.
    expect(pages.map(({ seams }) => seams.length)).toEqual([1, 2, 1]);
  });

  test.prop(
    [sensibleBoards, fc.constantFrom(...PAPERS), fc.constantFrom('together' as const, 'apart' as const)],
    {
      numRuns: 60,
    },
  )('every cap of any board lies wholly on a page, at its true size', (madeFrom, on, halves) => {
    const board = parametricBoard(madeFrom, 'any');
    const pages = boardPages(board, on, halves);
    for (const { id } of board.keys)
      expect([id, pages.some((page) => isWhollyOn(page, id))]).toEqual([id, true]);
    for (const { lies, widthMm } of pages) {
      expect(widthMm).toBe(lies === 'upright' ? on.widthMm : on.heightMm);
    }
  });

  test.each(FAMILY)('$title takes two pages at the most', ({ board }) => {
    for (const each of PAPERS) expect(boardPages(board, each).length).toBeLessThanOrEqual(2);
  });
});

function all(marks: readonly PaperMark[]): readonly PaperMark[] {
  return marks.flatMap((mark) => [mark, ...all(mark.marks ?? [])]);
}

describe('what stands on a page', () => {
  const board = readyBoard('split-36');
  const [page] = boardPages(board, paper('a4'));
  if (page === undefined) throw new Error('no page');

  test('a rule of 100 mm, and a cap for every key', () => {
    const marks = all(pageMarks(board, page));
    const rule = marks.find(({ attributes }) => attributes['data-rule'] === 'length');
    expect(rule?.attributes.d).toBe(`M0 0H${RULE_MM}`);
    expect(RULE_MM).toBe(100);
    const words = marks.flatMap(({ text }) => text ?? []);
    for (const { id, home } of board.keys) expect(words).toContain(home ? `home · ${id}` : id);
  });

  test('as a file its size is in mm, and the sides of its caps are as long as the keys say', () => {
    const svg = pageSvg(board, page);
    expect(svg).toContain('width="297mm" height="210mm" viewBox="0 0 297 210"');
    const path = /d="M(-?[\d.]+) (-?[\d.]+)L(-?[\d.]+) (-?[\d.]+)L(-?[\d.]+) (-?[\d.]+)L/.exec(svg);
    const [x1 = 0, y1 = 0, x2 = 0, , , y3 = 0] = (path ?? []).slice(1).map(Number);
    expect([x2 - x1, y3 - y1]).toEqual([board.keys[0]?.width, board.keys[0]?.height]);
  });

  test('a name is text, whatever stands in it', () => {
    const svg = pageSvg({ ...board, name: '<b a="1">&</b>' }, page);
    expect(svg).toContain('&lt;b a=&quot;1&quot;&gt;&amp;&lt;/b&gt;');
    expect(svg).not.toContain('<b ');
  });
});
