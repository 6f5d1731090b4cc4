import { useMemo, useState } from 'react';
import { ARRANGEMENTS } from '../../../../core/board/arrangements.ts';
import { layArrangement, layLines, type Taps } from '../../../../core/board/lay-rows.ts';
import { layerById } from '../../../../core/keymap/lookup.ts';
import type { Keymap, LayerId } from '../../../../core/keymap/types.ts';
import { useBench } from '../../../../store/bench.ts';
import { Button } from '../../../widgets/button.tsx';
import { Choice } from '../../../widgets/choice.tsx';
import { Dialog } from '../../../widgets/dialog.tsx';
import styles from './fill.module.css';
import { WalkKeys } from './walk-keys.tsx';

type Way = 'arrangement' | 'lines' | 'walk';

const WAYS: readonly { readonly value: Way; readonly label: string }[] = [
  { value: 'arrangement', label: 'A standard arrangement' },
  { value: 'lines', label: 'Lines of characters' },
  { value: 'walk', label: 'Key by key' },
];

/** Letters belong on the base layer; any other is rather filled with signs or figures. */
function firstWay({ layers }: Keymap, layer: LayerId): Way {
  return layers[0]?.id === layer ? 'arrangement' : 'lines';
}

/** Puts what a layer types onto the board in one go: one undoable step. */
export function FillDialog({ onClose }: { readonly onClose: () => void }) {
  const keymap = useBench((bench) => bench.keymap);
  const frontLayer = useBench((bench) => bench.frontLayer);
  const edit = useBench((bench) => bench.edit);
  const [way, setWay] = useState<Way>(() => firstWay(keymap, frontLayer));
  const name = layerById(keymap, frontLayer)?.name ?? frontLayer;
  const fill = (taps: Taps) => {
    edit({ edit: 'fill-layer', layer: frontLayer, taps });
    onClose();
  };
  return (
    <Dialog title={`Fill ${name}`} onClose={onClose} width="wide">
      <div className={styles.dialog}>
        <Choice label="How" hideLabel value={way} options={WAYS} onChange={setWay} />
        {way === 'arrangement' && <ByArrangement onFill={fill} />}
        {way === 'lines' && <ByLines onFill={fill} />}
        {way === 'walk' && <WalkKeys onFill={fill} />}
      </div>
    </Dialog>
  );
}

interface FillProps {
  readonly onFill: (taps: Taps) => void;
}

function ByArrangement({ onFill }: FillProps) {
  const board = useBench((bench) => bench.keymap.board);
  return (
    <div className={styles.arrangements}>
      {ARRANGEMENTS.map((arrangement) => (
        <button
          key={arrangement.id}
          type="button"
          className={styles.arrangement}
          aria-label={`Fill with ${arrangement.title}`}
          onClick={() => onFill(layArrangement(board, arrangement))}
        >
          <span className={styles.title}>{arrangement.title}</span>
          {arrangement.rows.map((row) => (
            <span key={row} className={styles.row}>
              {`${[...row.slice(0, 5)].join(' ')}   ${[...row.slice(5)].join(' ')}`}
            </span>
          ))}
        </button>
      ))}
    </div>
  );
}

function ByLines({ onFill }: FillProps) {
  const board = useBench((bench) => bench.keymap.board);
  const [text, setText] = useState('');
  const laid = useMemo(() => layLines(board, text), [board, text]);
  const taps = laid.ok ? laid.value : {};
  return (
    <form
      className={styles.lines}
      onSubmit={(event) => {
        event.preventDefault();
        if (laid.ok) onFill(laid.value);
      }}
    >
      <label>
        <span>
          One line for each row of the board from the top, thumb keys last. With spaces between characters, --
          leaves a key as it is.
        </span>
        <textarea
          rows={5}
          spellCheck={false}
          value={text}
          onChange={(event) => setText(event.target.value)}
          aria-invalid={!laid.ok && text !== ''}
          aria-describedby="fill-about"
        />
      </label>
      <p id="fill-about" role="status" className={!laid.ok && text !== '' ? styles.problem : styles.about}>
        {text === '' ? ' ' : laid.ok ? `${Object.keys(taps).length} keys will be filled.` : laid.problem}
      </p>
      <Button type="submit" tone="accent" disabled={!laid.ok}>
        Fill the layer
      </Button>
    </form>
  );
}
