import { useState } from 'react';
import { LIMITS } from '../../../../core/keymap/limits.ts';
import { layerById } from '../../../../core/keymap/lookup.ts';
import type { Keymap, LayerId } from '../../../../core/keymap/types.ts';
import { useBench } from '../../../../store/bench.ts';
import { Button } from '../../../widgets/button.tsx';
import { Dialog } from '../../../widgets/dialog.tsx';
import { Switch } from '../../../widgets/switch.tsx';
import { TextField } from '../../../widgets/text-field.tsx';
import styles from './layers.module.css';

/** The layer in front: its name, the layers that turn it on together, and its deletion. */
export function LayerDialog({ onClose }: { readonly onClose: () => void }) {
  const keymap = useBench((bench) => bench.keymap);
  const id = useBench((bench) => bench.frontLayer);
  const edit = useBench((bench) => bench.edit);
  const layer = layerById(keymap, id);
  const [name, setName] = useState(layer?.name ?? '');
  if (layer === undefined) return null;
  const number = keymap.layers.indexOf(layer);
  const close = () => {
    const wanted = name.trim();
    if (wanted !== '' && wanted !== layer.name) edit({ edit: 'rename-layer', layer: id, name: wanted });
    onClose();
  };
  const remove = () => {
    onClose();
    edit({ edit: 'delete-layer', layer: id });
  };
  return (
    <Dialog
      title={`Layer ${layer.name}`}
      onClose={close}
      footer={
        <>
          {number > 0 && (
            <Button tone="danger" onClick={remove}>
              Delete this layer
            </Button>
          )}
          <Button tone="accent" onClick={close}>
            Done
          </Button>
        </>
      }
    >
      <div className={styles.form}>
        <TextField label="Name" value={name} onChange={setName} maxLength={LIMITS.nameLength} />
        {number > 1 && <OnWhile keymap={keymap} id={id} number={number} />}
        {number === 0 && <p>The base layer is always on and stays at the foot of the stack.</p>}
      </div>
    </Dialog>
  );
}

function OnWhile({
  keymap,
  id,
  number,
}: {
  readonly keymap: Keymap;
  readonly id: LayerId;
  readonly number: number;
}) {
  const edit = useBench((bench) => bench.edit);
  const now = keymap.layers[number]?.onWhile ?? [];
  const [chosen, setChosen] = useState<readonly LayerId[]>(now);
  const toggle = (lower: LayerId) => {
    const next = chosen.includes(lower) ? chosen.filter((one) => one !== lower) : [...chosen, lower];
    setChosen(next);
    if (next.length >= 2) edit({ edit: 'set-on-while', layer: id, onWhile: next });
    else if (now.length > 0) edit({ edit: 'set-on-while', layer: id, onWhile: null });
  };
  return (
    <fieldset className={styles.onWhile}>
      <legend>On by itself while all of these are on (two at least)</legend>
      {keymap.layers.slice(1, number).map((lower) => (
        <Switch
          key={lower.id}
          label={lower.name}
          on={chosen.includes(lower.id)}
          onChange={() => toggle(lower.id)}
        />
      ))}
    </fieldset>
  );
}
