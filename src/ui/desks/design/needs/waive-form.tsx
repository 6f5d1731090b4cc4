import { useState } from 'react';
import { useBench } from '../../../../store/bench.ts';
import { Button } from '../../../widgets/button.tsx';
import { TextField } from '../../../widgets/text-field.tsx';
import { waive } from './needs-edits.ts';
import styles from './waive-form.module.css';

/** Lets a need off: a button that first asks for the reason, which is kept with the design. */
export function WaiveForm({ need, name }: { readonly need: string; readonly name: string }) {
  const keymap = useBench((bench) => bench.keymap);
  const edit = useBench((bench) => bench.edit);
  const [why, setWhy] = useState<string | null>(null);
  if (why === null) {
    return (
      <Button tone="quiet" className={styles.open} onClick={() => setWhy('')}>
        Let off…
      </Button>
    );
  }
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        if (why.trim() !== '') edit(waive(keymap, need, why.trim()));
      }}
    >
      <TextField
        label={`Why ${name} need not be typed`}
        value={why}
        onChange={setWhy}
        maxLength={200}
        autoFocus
        onKeyDown={(event) => {
          if (event.key !== 'Escape') return;
          event.stopPropagation();
          setWhy(null);
        }}
      />
      <Button type="submit" disabled={why.trim() === ''}>
        Let off
      </Button>
      <Button tone="quiet" onClick={() => setWhy(null)}>
        Cancel
      </Button>
    </form>
  );
}
