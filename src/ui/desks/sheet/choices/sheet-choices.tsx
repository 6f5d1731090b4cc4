import { useBench } from '../../../../store/bench.ts';
import { useSettings } from '../../../../store/settings/use-settings.ts';
import { Button } from '../../../widgets/button.tsx';
import { CheckList } from '../../../widgets/check-list.tsx';
import { Choice } from '../../../widgets/choice.tsx';
import { saveBlob, saveFile } from '../../../widgets/save-file.ts';
import type { SheetState } from '../use-sheet.ts';
import { pictureOf } from './picture-of.ts';
import styles from './sheet-choices.module.css';
import { pageFileName, sheetSentence } from './sheet-words.ts';

const PAPERS = [
  { value: 'a4', label: 'A4' },
  { value: 'letter', label: 'Letter' },
] as const;
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
      <Choice label="Paper" value={settings.paper} options={PAPERS} onChange={(paper) => settle({ paper })} />
      <Choice label="Turn" value={settings.turn} options={TURNS} onChange={(turn) => settle({ turn })} />
      <Choice label="Ink" value={settings.ink} options={INKS} onChange={(ink) => settle({ ink })} />
      <Choice
        label="Legends"
        value={settings.legends}
        options={LEGENDS}
        onChange={(legends) => settle({ legends })}
      />
      <Rungs />
      {sheet.state === 'ready' && (
        <p className={styles.about}>{sheetSentence(sheet.pages.length, sheet.options)}</p>
      )}
      <Out sheet={sheet} />
    </div>
  );
}

/** Which layers have a rung; the same ladder stands on the board of the design desk. */
function Rungs() {
  const layers = useBench((bench) => bench.keymap.layers);
  const { hiddenRungs, settle } = useSettings();
  const upper = layers
    .map(({ id, name }, number) => ({ value: id, label: `${number} ${name}`, number }))
    .slice(1);
  if (upper.length === 0) return null;
  const shown = upper.filter(({ number }) => !hiddenRungs.includes(number)).map(({ value }) => value);
  const changed = (values: readonly string[]) => {
    const beyond = hiddenRungs.filter((number) => number >= layers.length);
    const hidden = upper.filter(({ value }) => !values.includes(value)).map(({ number }) => number);
    settle({ hiddenRungs: [...hidden, ...beyond] });
  };
  return <CheckList label="Rungs of the ladder" values={shown} options={upper} onChange={changed} />;
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
