import { createElement, type ReactNode } from 'react';
import type { BoardPage } from '../../../../core/board/board-pages.ts';
import { type PaperMark, pageMarks } from '../../../../core/board/paper-marks.ts';
import type { Board } from '../../../../core/keymap/types.ts';

/** A page of the board: at its true size, or as small as its class makes it. */
export function PaperPage({
  board,
  page,
  className,
}: {
  readonly board: Board;
  readonly page: BoardPage;
  readonly className: string | undefined;
}) {
  const { widthMm, heightMm } = page;
  return (
    <svg
      className={className}
      data-sheet={`${page.paper}-${page.lies}`}
      width={`${widthMm}mm`}
      height={`${heightMm}mm`}
      viewBox={`0 0 ${widthMm} ${heightMm}`}
      role="img"
      aria-label={page.part ?? board.name}
    >
      {pageMarks(board, page).map((mark, index) => drawn(mark, index))}
    </svg>
  );
}

function drawn({ tag, attributes, text, marks }: PaperMark, key: number): ReactNode {
  const props = Object.fromEntries(
    Object.entries(attributes).map(([name, value]) => [reactName(name), value]),
  );
  return createElement(tag, { key, ...props }, text, ...(marks ?? []).map(drawn));
}

/** `stroke-width` is `strokeWidth` to React; data attributes stay. */
function reactName(name: string): string {
  return name.startsWith('data-') ? name : name.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
}
