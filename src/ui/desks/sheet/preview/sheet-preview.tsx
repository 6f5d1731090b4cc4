import { useState } from 'react';
import { createPortal } from 'react-dom';
import { Choice } from '../../../widgets/choice.tsx';
import type { SheetState } from '../use-sheet.ts';
import styles from './sheet-preview.module.css';

const SIZES = [
  { value: 'fit', label: 'Fit' },
  { value: 'true', label: 'Size on paper' },
] as const;

/** The pages as they come out of the printer. */
export function SheetPreview({ sheet }: { readonly sheet: SheetState }) {
  const [size, setSize] = useState<(typeof SIZES)[number]['value']>('fit');
  if (sheet.state === 'loading') return <p className={styles.word}>Setting the letters…</p>;
  if (sheet.state === 'missing') {
    return (
      <p className={styles.word} role="alert">
        The letters of the sheet could not be loaded ({sheet.why}). The worksheet and the exports work all the
        same; come back to this desk to try again.
      </p>
    );
  }
  const count = sheet.pages.length;
  return (
    <div className={styles.view}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and holds nothing else that the keyboard could reach */}
      <section className={styles.pages} data-size={size} tabIndex={0} aria-label="Pages of the sheet">
        {sheet.pages.map(({ address }, at) => (
          <img
            key={address}
            className={styles.page}
            src={address}
            alt={`Sheet, page ${at + 1} of ${count}`}
            width={sheet.size.width * 4}
            height={sheet.size.height * 4}
            data-paper={`${sheet.options.paper}-${sheet.options.turn}`}
          />
        ))}
      </section>
      <div className={styles.sizes}>
        <Choice label="Size of the preview" hideLabel value={size} options={SIZES} onChange={setSize} />
      </div>
      <PrintedPages sheet={sheet} />
    </div>
  );
}

/** The same pages for the printer: beside the page's own content, which is left out when it is printed. */
function PrintedPages({ sheet }: { readonly sheet: Extract<SheetState, { state: 'ready' }> }) {
  return createPortal(
    <div className={styles.printed} aria-hidden="true">
      {sheet.pages.map(({ address }) => (
        <img
          key={address}
          className={styles.sheet}
          src={address}
          alt=""
          data-paper={`${sheet.options.paper}-${sheet.options.turn}`}
        />
      ))}
    </div>,
    document.body,
  );
}
