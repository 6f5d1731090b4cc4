import { type FormEvent, useState } from 'react';
import { LIMITS } from '../../../core/keymap/limits.ts';
import type { Keymap } from '../../../core/keymap/types.ts';
import { versions } from '../../../store/versions/versions.ts';
import { Button } from '../../widgets/button.tsx';
import { TextField } from '../../widgets/text-field.tsx';
import styles from './versions.module.css';

/** Keeps the design as it is now, under a name. */
export function KeepVersion({ designId, keymap }: { readonly designId: string; readonly keymap: Keymap }) {
  const [name, setName] = useState('');
  const [problem, setProblem] = useState('');
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    const wanted = name.trim();
    if (wanted === '') return setProblem('A version needs a name to be found by.');
    try {
      const isKept = await versions.getState().keep(designId, keymap, wanted);
      setProblem(isKept ? '' : 'There are as many named versions as can be kept. Delete one first.');
      if (isKept) setName('');
    } catch (error) {
      setProblem(`It could not be kept: ${error instanceof Error ? error.message : String(error)}`);
    }
  };
  return (
    <form className={styles.keep} onSubmit={(event) => void keep(event)}>
      <TextField
        label="Keep the design as it is now, as"
        value={name}
        onChange={setName}
        maxLength={LIMITS.nameLength}
        error={problem === '' ? undefined : problem}
      />
      <Button type="submit" tone="accent">
        Keep
      </Button>
    </form>
  );
}
