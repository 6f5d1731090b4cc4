import { keyName } from '../../../core/board/key-name.ts';
import type { ChordChange } from '../../../core/keymap/edit.ts';
import { LIMITS } from '../../../core/keymap/limits.ts';
import { layersOfChord } from '../../../core/keymap/timing.ts';
import type { Chord, LayerId } from '../../../core/keymap/types.ts';
import { useBench } from '../../../store/bench.ts';
import { useHost } from '../../../store/hosts.ts';
import { Button } from '../../widgets/button.tsx';
import { CommitField } from '../../widgets/commit-field.tsx';
import { NumberField } from '../../widgets/number-field.tsx';
import { CHORD_KEYS } from '../new-chord.ts';
import { ActionEditor } from './action-editor.tsx';
import styles from './cards.module.css';
import { ChordSides } from './chord-sides.tsx';
import { ChordWindow } from './chord-window.tsx';
import { LONGEST_MS } from './timing-choices.tsx';

interface ChordFieldsProps {
  /** Without an id it is still being made. */
  readonly chord: Omit<Chord, 'id'> & { readonly id?: string };
  readonly onChange: (to: ChordChange) => void;
}

/** Everything about a chord but its making and its end: what it gives, its window, its keys, where it is live. */
export function ChordFields({ chord, onChange }: ChordFieldsProps) {
  const keymap = useBench((bench) => bench.keymap);
  const { host } = useHost(keymap);
  const isEmpty = chord.action.do === 'nothing';
  return (
    <div className={styles.fields}>
      <ActionEditor
        keymap={keymap}
        host={host}
        side="tap"
        action={isEmpty ? undefined : chord.action}
        noneWords="choose what it gives"
        onChange={(action) => onChange({ action })}
      />
      <ChordWindow chord={chord} onChange={(windowMs) => onChange({ windowMs })} />
      <ChordLayers chord={chord} onChange={onChange} />
      <ChordKeys chord={chord} onChange={onChange} />
      <ChordSides keymap={keymap} host={host} chord={chord} onChange={onChange} />
      <div className={styles.pair}>
        <NumberField
          label="Quiet before"
          unit="ms"
          value={chord.quietBeforeMs ?? 0}
          min={0}
          max={LONGEST_MS}
          step={5}
          onCommit={(quietBeforeMs) =>
            onChange({ quietBeforeMs: quietBeforeMs === 0 ? null : quietBeforeMs })
          }
        />
        <CommitField
          label="Name"
          value={chord.name ?? ''}
          maxLength={LIMITS.nameLength}
          onCommit={(name) => onChange({ name: name === '' ? null : name })}
        />
        <p className={`${styles.reason} ${styles.whole}`}>
          Quiet before: the chord counts only if no other key went down for so long, so that quick typing does
          not set it off. 0 asks for no quiet.
        </p>
      </div>
    </div>
  );
}

function ChordKeys({ chord, onChange }: ChordFieldsProps) {
  const board = useBench((bench) => bench.keymap.board);
  const selected = useBench((bench) => bench.selectedKeys);
  const isOther = selected.some((key) => !chord.keys.includes(key)) || selected.length < chord.keys.length;
  const canTake = isOther && selected.length >= CHORD_KEYS.least && selected.length <= CHORD_KEYS.most;
  return (
    <fieldset className={styles.set}>
      <legend>Keys</legend>
      <ul className={styles.keys}>
        {chord.keys.map((key) => (
          <li key={key}>
            {keyName(board, key)}
            <Button
              tone="quiet"
              aria-label={`Take ${keyName(board, key)} out of the chord`}
              disabled={chord.keys.length <= CHORD_KEYS.least}
              onClick={() => onChange({ keys: chord.keys.filter((each) => each !== key) })}
            >
              ×
            </Button>
          </li>
        ))}
      </ul>
      {canTake && (
        <Button onClick={() => onChange({ keys: selected })}>Take the {selected.length} selected keys</Button>
      )}
    </fieldset>
  );
}

function ChordLayers({ chord, onChange }: ChordFieldsProps) {
  const keymap = useBench((bench) => bench.keymap);
  const live = layersOfChord(keymap, { ...chord, id: '' });
  const toggle = (layer: LayerId, on: boolean) => {
    const layers = keymap.layers.map(({ id }) => id).filter((id) => (id === layer ? on : live.includes(id)));
    onChange({ layers });
  };
  return (
    <fieldset className={styles.set}>
      <legend>Live on</legend>
      <label className={styles.whole}>
        <input
          type="checkbox"
          checked={chord.layers === undefined}
          onChange={(event) => onChange({ layers: event.target.checked ? null : live })}
        />
        every layer, new ones too
      </label>
      {chord.layers !== undefined &&
        keymap.layers.map((layer) => (
          <label key={layer.id}>
            <input
              type="checkbox"
              checked={live.includes(layer.id)}
              // A chord lives on one layer at least.
              disabled={live.length === 1 && live.includes(layer.id)}
              onChange={(event) => toggle(layer.id, event.target.checked)}
            />
            {layer.name}
          </label>
        ))}
      {chord.layers !== undefined && live.length === 1 && (
        <p className={`${styles.reason} ${styles.whole}`}>
          It must be live on one layer at least: choose another before this one goes.
        </p>
      )}
    </fieldset>
  );
}
