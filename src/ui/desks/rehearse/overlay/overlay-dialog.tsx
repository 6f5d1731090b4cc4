import { useState } from 'react';
import { keyName } from '../../../../core/board/key-name.ts';
import type { Overlay } from '../../../../core/board/overlay.ts';
import { boardRows } from '../../../../core/board/rows.ts';
import { codeName } from '../../../../core/host/code-names.ts';
import { isCode } from '../../../../core/keymap/codes.ts';
import type { KeyId } from '../../../../core/keymap/types.ts';
import { useBench } from '../../../../store/bench.ts';
import { useChosenOverlay, useKeptOverlays } from '../../../../store/rehearse/kept-overlays.ts';
import { RecordKey } from '../../../board/cards/record-key.tsx';
import { Button } from '../../../widgets/button.tsx';
import { Dialog } from '../../../widgets/dialog.tsx';
import { Select } from '../../../widgets/select.tsx';
import { TextField } from '../../../widgets/text-field.tsx';
import styles from './overlay.module.css';
import { OverlayBoard } from './overlay-board.tsx';
import { withCode, withoutKey } from './overlay-edits.ts';

/** Which key of the keyboard at hand stands for which of the board; what is changed is kept as one's own. */
export function OverlayDialog({
  overlay,
  onClose,
}: {
  readonly overlay: Overlay;
  readonly onClose: () => void;
}) {
  const board = useBench((bench) => bench.keymap.board);
  const kept = useKeptOverlays();
  const { choose } = useChosenOverlay(board);
  const isOwn = kept.things.some(({ id }) => id === overlay.id);
  const [title, setTitle] = useState(isOwn ? overlay.title : `${overlay.title}, my own`);
  const [keys, setKeys] = useState(overlay.keys);
  const order = boardRows(board).flat();
  const [picked, setPicked] = useState<KeyId>(order[0] ?? '');
  const code = Object.keys(keys).find((each) => keys[each] === picked);
  const save = async () => {
    choose(await kept.keep({ title: title.trim(), keys }, isOwn ? overlay.id : undefined));
    onClose();
  };
  return (
    <Dialog
      title="Which key is which"
      width="wide"
      onClose={onClose}
      footer={
        <>
          {isOwn && (
            <Button
              tone="danger"
              onClick={() => {
                void kept.remove(overlay.id);
                onClose();
              }}
            >
              Delete
            </Button>
          )}
          <Button onClick={onClose}>Cancel</Button>
          <Button tone="accent" disabled={title.trim() === ''} onClick={() => void save()}>
            Keep
          </Button>
        </>
      }
    >
      <div className={styles.pick}>
        <TextField label="Name" value={title} maxLength={80} onChange={setTitle} />
        <OverlayBoard board={board} overlay={{ ...overlay, keys }} picked={picked} onPick={setPicked} />
        <Select
          label="Key of the board"
          value={picked}
          options={order.map((id) => ({ value: id, label: keyName(board, id) }))}
          onChange={setPicked}
        />
        <p>
          {code !== undefined && isCode(code)
            ? `${codeName(code)} on the keyboard at hand stands for it.`
            : 'No key of the keyboard at hand stands for it.'}
        </p>
        <RecordKey
          onRecord={(pressed) => {
            setKeys(withCode(keys, pressed, picked));
            setPicked(order[(order.indexOf(picked) + 1) % order.length] ?? picked);
          }}
        />
        {code !== undefined && (
          <Button tone="quiet" onClick={() => setKeys(withoutKey(keys, picked))}>
            Let no key stand for it
          </Button>
        )}
      </div>
    </Dialog>
  );
}
