import { useState } from 'react';
import { keyName } from '../../../core/board/key-name.ts';
import { actionInWords, type LegendSource } from '../../../core/host/legend.ts';
import { chordsOf } from '../../../core/keymap/timing.ts';
import type { KeyId, LayerId, Side } from '../../../core/keymap/types.ts';
import { useBench } from '../../../store/bench.ts';
import { useHost } from '../../../store/hosts.ts';
import { Button } from '../../widgets/button.tsx';
import { Disclosure } from '../../widgets/disclosure.tsx';
import { ActionEditor } from './action-editor.tsx';
import { ActionOnShift } from './action-on-shift.tsx';
import styles from './cards.module.css';
import { type LayerRow, layerRows } from './layer-rows.ts';
import { TimingFields } from './timing-fields.tsx';

/** One side of one layer, whose editor is open. */
interface Editing {
  readonly layer: LayerId;
  readonly side: Side;
}

/** What a key does on every layer, in words, each to be changed here; and the chords it takes part in. */
export function KeyCard({ keyId }: { readonly keyId: KeyId }) {
  const keymap = useBench((bench) => bench.keymap);
  const frontLayer = useBench((bench) => bench.frontLayer);
  const { host } = useHost(keymap);
  const [editing, setEditing] = useState<Editing | null>(null);
  const source = { keymap, host };
  return (
    <>
      <div className={styles.heads} aria-hidden="true">
        <span />
        <span>Layer</span>
        <span>Tap</span>
        <span>Hold</span>
      </div>
      <ul>
        {layerRows(keyId, source).map((row) => (
          <LayerPart
            key={row.layer}
            keyId={keyId}
            row={row}
            inFront={row.layer === frontLayer}
            source={source}
            editing={editing?.layer === row.layer ? editing.side : null}
            onEdit={(side) => setEditing(side === null ? null : { layer: row.layer, side })}
          />
        ))}
      </ul>
      <ChordsOfKey keyId={keyId} source={source} />
    </>
  );
}

interface LayerPartProps {
  readonly keyId: KeyId;
  readonly row: LayerRow;
  readonly inFront: boolean;
  readonly source: LegendSource;
  readonly editing: Side | null;
  readonly onEdit: (side: Side | null) => void;
}

function LayerPart({ keyId, row, inFront, source, editing, onEdit }: LayerPartProps) {
  const edit = useBench((bench) => bench.edit);
  const { keymap, host } = source;
  const place = { layer: row.layer, key: keyId };
  const { binding } = row;
  const hasBoth = binding?.tap !== undefined && binding.hold !== undefined;
  return (
    <li className={styles.layer} data-front={inFront}>
      <div className={styles.row}>
        <span className={styles.number} data-colour={row.number % 7}>
          {row.number}
        </span>
        <span className={styles.name}>{row.name}</span>
        {(['tap', 'hold'] as const).map((side) => (
          <button
            key={side}
            type="button"
            className={styles.side}
            data-empty={binding?.[side] === undefined}
            data-first={inFront && side === 'tap' ? true : undefined}
            aria-expanded={editing === side}
            aria-label={`${row.name}, ${side}: ${row[side]}`}
            onClick={() => onEdit(editing === side ? null : side)}
          >
            {row[side]}
          </button>
        ))}
      </div>
      {editing !== null && (
        <div className={styles.open}>
          <ActionEditor
            key={editing}
            keymap={keymap}
            host={host}
            side={editing}
            action={binding?.[editing]}
            noneWords={editing === 'tap' ? row.tap : 'no hold'}
            onChange={(action) => edit({ edit: 'bind', place, side: editing, action })}
            onNone={binding?.[editing] && (() => edit({ edit: 'unbind', place, side: editing }))}
          />
          {editing === 'tap' && binding?.tap !== undefined && (
            <ActionOnShift
              keymap={keymap}
              host={host}
              action={binding.onShift}
              onChange={(action) => edit({ edit: 'set-on-shift', place, action })}
            />
          )}
          {hasBoth && (
            <Disclosure title="Timing of this key">
              <TimingFields
                keymap={keymap}
                binding={binding}
                place={place}
                onChange={(timing) => edit({ edit: 'set-binding-timing', place, timing })}
              />
            </Disclosure>
          )}
          {binding !== undefined && <BindingButtons keyId={keyId} layer={row.layer} />}
        </div>
      )}
    </li>
  );
}

/** What can be done with a whole binding. */
function BindingButtons({ keyId, layer }: { readonly keyId: KeyId; readonly layer: LayerId }) {
  const board = useBench((bench) => bench.keymap.board);
  const { edit, carry, showLayer, openCardOf } = useBench.getState();
  const pickUp = () => {
    showLayer(layer);
    openCardOf(null);
    carry({ carry: 'binding', from: { layer, key: keyId }, label: keyName(board, keyId) });
  };
  return (
    <div className={styles.buttons}>
      <Button onClick={pickUp}>Move or swap</Button>
      <Button onClick={() => edit({ edit: 'unbind', place: { layer, key: keyId } })}>Clear</Button>
    </div>
  );
}

function ChordsOfKey({ keyId, source }: { readonly keyId: KeyId; readonly source: LegendSource }) {
  const openCardOf = useBench((bench) => bench.openCardOf);
  const { board } = source.keymap;
  const chords = chordsOf(source.keymap).filter((chord) => chord.keys.includes(keyId));
  if (chords.length === 0) return null;
  return (
    <section className={styles.chords} aria-label="Chords">
      <h3>Chords</h3>
      <ul>
        {chords.map((chord) => {
          const others = chord.keys.filter((key) => key !== keyId).map((key) => keyName(board, key));
          return (
            <li key={chord.id}>
              <Button tone="quiet" onClick={() => openCardOf({ card: 'chord', chord: chord.id })}>
                {actionInWords(chord.action, source)}, {chord.windowMs} ms
              </Button>
              <span className={styles.default}>with {others.join(', ')}</span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
