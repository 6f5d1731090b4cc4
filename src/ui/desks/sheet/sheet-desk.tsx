import { usePageView } from '../../../store/page.ts';
import { Choice } from '../../widgets/choice.tsx';
import { DeskFrame } from '../../widgets/desk-frame.tsx';
import { SheetChoices } from './choices/sheet-choices.tsx';
import { Exports } from './exports/exports.tsx';
import { SheetPreview } from './preview/sheet-preview.tsx';
import styles from './sheet-desk.module.css';
import { useSheet } from './use-sheet.ts';
import { WorksheetView } from './worksheet/worksheet-view.tsx';

const SHOWN = [
  { value: 'sheet', label: 'Sheet' },
  { value: 'worksheet', label: 'Worksheet' },
] as const;
const VIEWS = SHOWN.map(({ value }) => value);

/** The sheet desk: what lies beside the keyboard, and every way out of the page. */
export function SheetDesk() {
  const [shown, setShown] = usePageView('sheet desk', VIEWS, 'sheet');
  const sheet = useSheet();
  return (
    <DeskFrame
      left={<SheetChoices sheet={sheet} />}
      leftLabel="Paper and ink"
      main={
        <div className={styles.main}>
          <div className={styles.bar}>
            <Choice label="Shown" hideLabel value={shown} options={SHOWN} onChange={setShown} />
          </div>
          {shown === 'sheet' ? <SheetPreview sheet={sheet} /> : <WorksheetView />}
        </div>
      }
      right={<Exports />}
      rightLabel="Ways out"
    />
  );
}
