import { PAPER_OPTIONS } from '../../../../core/board/paper.ts';
import { useBench } from '../../../../store/bench.ts';
import { useSettings } from '../../../../store/settings/use-settings.ts';
import { RungChoice } from '../../../board/rung-choice.tsx';
import { Button } from '../../../widgets/button.tsx';
import { Choice } from '../../../widgets/choice.tsx';
import { saveBlob, saveFile } from '../../../widgets/save-file.ts';
import type { SheetState } from '../use-sheet.ts';
import { pictureOf } from './picture-of.ts';
import styles from './sheet-choices.module.css';
import { pageFileName, sheetSentence } from './sheet-words.ts';

const TURNS = [
  { value: 'portrait', label: 'Portrait' },
  { value: 'landscape', label: 'Landscape' },
] as const;
const INKS = [
  { value: 'colour', label: 'Colour' },
  { value: 'black', label: 'Black' },
] as const;
const LEGENDS = [
  { value: 'characters', label: 'Characters' },
  { value: 'codes', label: 'Key names' },
] as const;

/** What the sheet is laid out for, and how it leaves the page. */
export function SheetChoices({ sheet }: { readonly sheet: SheetState }) {
  const settings = useSettings();
  const { settle } = settings;
  return (
    <div className={styles.choices}>
      <Choice
        label="Paper"
        value={settings.paper}
        options={PAPER_OPTIONS}
        onChange={(paper) => settle({ paper })}
      />
      <Choice label="Turn" value={settings.turn} options={TURNS} onChange={(turn) => settle({ turn })} />
      <Choice label="Ink" value={settings.ink} options={INKS} onChange={(ink) => settle({ ink })} />
      <Choice
        label="Legends"
        value={settings.legends}
        options={LEGENDS}
        onChange={(legends) => settle({ legends })}
      />
      <RungChoice />
      {sheet.state === 'ready' && (
        <p className={styles.about}>{sheetSentence(sheet.pages.length, sheet.options)}</p>
      )}
      <Out sheet={sheet} />
    </div>
  );
}

function Out({ sheet }: { readonly sheet: SheetState }) {
  const name = useBench((bench) => bench.keymap.name);
  const notify = useBench((bench) => bench.notify);
  const isReady = sheet.state === 'ready';
  const saveSvg = () => {
    if (!isReady) return;
    for (const [at, { svg }] of sheet.pages.entries()) {
      saveFile({ name: pageFileName(name, at, 'svg'), type: 'image/svg+xml', text: svg });
    }
  };
  const savePng = async () => {
    if (!isReady) return;
    try {
      for (const [at, { address }] of sheet.pages.entries()) {
        saveBlob(pageFileName(name, at, 'png'), await pictureOf(address, sheet.size));
      }
    } catch (error) {
      notify({ tone: 'refused', text: `The picture could not be made: ${String(error)}`, canUndo: false });
    }
  };
  return (
    <div className={styles.out}>
      <Button tone="accent" disabled={!isReady} onClick={() => window.print()}>
        Print, or save as PDF…
      </Button>
      <Button disabled={!isReady} onClick={saveSvg}>
        Download SVG
      </Button>
      <Button disabled={!isReady} onClick={() => void savePng()}>
        Download PNG
      </Button>
    </div>
  );
}
