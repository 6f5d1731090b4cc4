import { useMemo, useState } from 'react';
import { createPortal } from 'react-dom';
import { CAUTION } from '../../../../core/base/care.ts';
import { type BoardPage, boardPages, type HalvesOnPaper } from '../../../../core/board/board-pages.ts';
import { PAPER_OPTIONS, paperOf } from '../../../../core/board/paper.ts';
import { pageSvg } from '../../../../core/board/paper-marks.ts';
import type { Board } from '../../../../core/keymap/types.ts';
import { useSettings } from '../../../../store/settings/use-settings.ts';
import { Button } from '../../../widgets/button.tsx';
import { Choice } from '../../../widgets/choice.tsx';
import { Dialog } from '../../../widgets/dialog.tsx';
import { saveFile } from '../../../widgets/save-file.ts';
import styles from './paper.module.css';
import { PaperPage } from './paper-page.tsx';

const HALVES: readonly { readonly value: HalvesOnPaper; readonly label: string }[] = [
  { value: 'together', label: 'On one page if they fit' },
  { value: 'apart', label: 'Each on its own page' },
];

/** The board on paper at its true size, to lay the hand on before anything is built. */
export function PaperDialog({ board, onClose }: { readonly board: Board; readonly onClose: () => void }) {
  const paper = useSettings((settings) => settings.paper);
  const settle = useSettings((settings) => settings.settle);
  const [halves, setHalves] = useState<HalvesOnPaper>('together');
  const pages = useMemo(() => boardPages(board, paperOf(paper), halves), [board, paper, halves]);
  return (
    <Dialog
      title="Print at true size"
      width="wide"
      onClose={onClose}
      footer={
        <>
          <Button onClick={onClose}>Close</Button>
          <Button tone="accent" onClick={() => window.print()}>
            Print {pages.length === 1 ? 'the page' : `${pages.length} pages`}…
          </Button>
        </>
      }
    >
      <p>
        Lay your hands on the paper before you build or buy anything. In the print window choose 100 % and not
        “fit to page”; a line on each page says whether it came out right.
      </p>
      <p className={styles.care}>{CAUTION}</p>
      <Choice
        label="Paper"
        value={paper}
        options={PAPER_OPTIONS}
        onChange={(chosen) => settle({ paper: chosen })}
      />
      <Choice label="Halves" value={halves} options={HALVES} onChange={setHalves} />
      <ul className={styles.previews}>
        {pages.map((page, index) => (
          <li key={page.part ?? 'whole'}>
            <PaperPage board={board} page={page} className={styles.preview} />
            <Button tone="quiet" onClick={() => save(board, page, index, pages.length)}>
              Save as SVG{pages.length > 1 ? `, page ${index + 1}` : ''}
            </Button>
          </li>
        ))}
      </ul>
      <PrintedPages board={board} pages={pages} />
    </Dialog>
  );
}

/** What the printer gets: nothing but the pages, which the screen does not show. */
function PrintedPages({ board, pages }: { readonly board: Board; readonly pages: readonly BoardPage[] }) {
  return createPortal(
    <div className={styles.printed} data-print-only="" aria-hidden="true">
      {pages.map((page) => (
        <PaperPage key={page.part ?? 'whole'} board={board} page={page} className={styles.page} />
      ))}
    </div>,
    document.body,
  );
}

function save(board: Board, page: BoardPage, index: number, count: number): void {
  const name = count > 1 ? `board-true-size-${index + 1}.svg` : 'board-true-size.svg';
  saveFile({ name, type: 'image/svg+xml', text: pageSvg(board, page) });
}
