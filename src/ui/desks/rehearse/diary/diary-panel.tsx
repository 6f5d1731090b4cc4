import { useState } from 'react';
import { chordsOf } from '../../../../core/keymap/timing.ts';
import type { Names } from '../../../../core/rehearse/key-words.ts';
import { stateAt } from '../../../../core/rehearse/state-at.ts';
import { useBench } from '../../../../store/bench.ts';
import { useRehearsal } from '../../../../store/rehearse/rehearsal.ts';
import { usePlayed } from '../../../../store/rehearse/use-runs.ts';
import { Button, IconButton } from '../../../widgets/button.tsx';
import { CrossIcon } from '../../../widgets/icons.tsx';
import { Select } from '../../../widgets/select.tsx';
import { TextField } from '../../../widgets/text-field.tsx';
import styles from '../rehearse.module.css';
import { aboutWords, newNote, pinOptions, pinsOf, whenWords } from './diary-words.ts';

/** "This annoyed me", in one line: pinned to what it is about, open until it is ticked off. */
export function DiaryPanel({ names }: { readonly names: Names }) {
  const keymap = useBench((bench) => bench.keymap);
  const edit = useBench((bench) => bench.edit);
  const readOnly = useBench((bench) => bench.readOnly);
  const cursorMs = useRehearsal((state) => state.cursorMs);
  const played = usePlayed();
  const [text, setText] = useState('');
  const [about, setAbout] = useState('design');
  const down = played?.ok && cursorMs !== null ? stateAt(played.value, cursorMs).keysDown : [];
  const options = pinOptions(keymap, down, names);
  const chosen = options.some(({ value }) => value === about) ? about : 'design';
  const write = () => {
    edit({
      edit: 'add-diary-note',
      note: newNote(keymap, text.trim(), pinsOf(chosen, down), new Date().toISOString()),
    });
    setText('');
  };
  const notes = (keymap.diary ?? []).toReversed();
  return (
    <>
      <form
        className={styles.panelPart}
        onSubmit={(event) => {
          event.preventDefault();
          if (text.trim() !== '') write();
        }}
      >
        <TextField
          label="What annoyed you, in one line"
          value={text}
          maxLength={400}
          onChange={setText}
          placeholder="The comma is too far for the little finger"
        />
        <Select label="About" value={chosen} options={options} onChange={setAbout} />
        <div className={styles.buttons}>
          <Button type="submit" tone="accent" disabled={text.trim() === '' || readOnly}>
            Note it
          </Button>
        </div>
      </form>
      <p className={styles.hint}>
        {chordsOf(keymap).length > 0 || down.length > 0
          ? 'Put the cursor of the time line where keys are down to note something about them.'
          : 'Notes stay with the design; open ones stand in its findings and on its board.'}
      </p>
      {notes.length === 0 && <p className={styles.hint}>No note yet.</p>}
      <ul className={styles.list}>
        {notes.map((note) => (
          <li key={note.id} className={styles.row}>
            <div className={styles.rowHead}>
              <label className={styles.tick}>
                <input
                  type="checkbox"
                  checked={note.tickedOff}
                  disabled={readOnly}
                  onChange={({ target }) =>
                    edit({ edit: 'tick-diary-note', note: note.id, tickedOff: target.checked })
                  }
                />
                <span data-done={note.tickedOff}>{note.text}</span>
              </label>
              <IconButton
                label={`Delete the note ${note.text}`}
                disabled={readOnly}
                onClick={() => edit({ edit: 'delete-diary-note', note: note.id })}
              >
                <CrossIcon />
              </IconButton>
            </div>
            <span className={styles.hint}>
              {aboutWords(note, names)}, {whenWords(note, keymap)}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}
