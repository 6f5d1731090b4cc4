import { useState } from 'react';
import { NEED_LISTS } from '../../../../core/needs/need-lists.ts';
import { useBench } from '../../../../store/bench.ts';
import { Button } from '../../../widgets/button.tsx';
import { Dialog } from '../../../widgets/dialog.tsx';
import { Switch } from '../../../widgets/switch.tsx';
import { TextField } from '../../../widgets/text-field.tsx';
import { LanguageSearch } from './language-search.tsx';
import styles from './needs-dialog.module.css';
import { addOwn, askAgain, needsInForce, removeOwn, toggleList } from './needs-edits.ts';

/** What this typist types: ready lists, needs of one's own, and needs that are let off. */
export function NeedsDialog({ onClose }: { readonly onClose: () => void }) {
  const keymap = useBench((bench) => bench.keymap);
  const edit = useBench((bench) => bench.edit);
  const needs = needsInForce(keymap);
  return (
    <Dialog
      title="What you type"
      onClose={onClose}
      footer={
        <Button tone="accent" onClick={onClose}>
          Done
        </Button>
      }
    >
      <div className={styles.lists}>
        {NEED_LISTS.map((list) => (
          <Switch
            key={list.name}
            label={`${list.title} (${list.needs.length})`}
            on={needs.lists.includes(list.name)}
            onChange={() => edit(toggleList(keymap, list.name))}
          />
        ))}
      </div>
      <section className={styles.section}>
        <h3>Languages</h3>
        <LanguageSearch
          lists={needs.lists}
          onToggle={(list) => edit(toggleList(useBench.getState().keymap, list))}
        />
      </section>
      <OwnNeeds />
      {needs.waived.length > 0 && (
        <section className={styles.section}>
          <h3>Let off</h3>
          <ul className={styles.waived}>
            {needs.waived.map(({ need, why }) => (
              <li key={need}>
                <b>{need}</b> <span>{why}</span>
                <Button tone="quiet" onClick={() => edit(askAgain(keymap, need))}>
                  Ask for it again
                </Button>
              </li>
            ))}
          </ul>
        </section>
      )}
    </Dialog>
  );
}

function OwnNeeds() {
  const keymap = useBench((bench) => bench.keymap);
  const edit = useBench((bench) => bench.edit);
  const [text, setText] = useState('');
  const [problem, setProblem] = useState<string | undefined>();
  const own = needsInForce(keymap).own;
  const add = () => {
    const read = addOwn(keymap, text);
    setProblem(read.ok ? undefined : read.problem);
    if (!read.ok) return;
    edit(read.value);
    setText('');
  };
  return (
    <section className={styles.section}>
      <h3>Your own</h3>
      <form
        className={styles.add}
        onSubmit={(event) => {
          event.preventDefault();
          add();
        }}
      >
        <TextField
          label="Characters, key:CODE or shortcut:Control+CODE"
          value={text}
          onChange={setText}
          error={problem}
          placeholder="€ ≥ key:F5"
        />
        <Button type="submit">Add</Button>
      </form>
      <ul className={styles.own}>
        {own.map((need) => (
          <li key={need}>
            <Button tone="quiet" aria-label={`Remove ${need}`} onClick={() => edit(removeOwn(keymap, need))}>
              {need} <span aria-hidden="true">✕</span>
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
