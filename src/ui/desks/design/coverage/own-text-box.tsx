import { type DragEvent, type ReactNode, useRef, useState } from 'react';
import { type GatheredFiles, gatherChosen, gatherDrop } from '../../../../store/own-text/gather-files.ts';
import type { OwnText } from '../../../../store/own-text/kept-text.ts';
import { useOwnText } from '../../../../store/own-text/own-text.ts';
import { Button } from '../../../widgets/button.tsx';
import styles from './own-text-box.module.css';
import { countingShare, countingWords, textWords } from './own-text-words.ts';

/** Where the typist's own files are dropped or chosen, and what was counted of them. */
export function OwnTextBox() {
  const text = useOwnText((state) => state.text);
  const counting = useOwnText((state) => state.counting);
  const cancel = useOwnText((state) => state.cancel);
  const count = useOwnText((state) => state.count);
  const busy = counting.state === 'gathering' || counting.state === 'counting';
  return (
    <DropZone onFiles={(files) => void count(files)}>
      {text === null ? <Invitation /> : <Kept text={text} />}
      <p role="status" className={counting.state === 'failed' ? styles.failed : styles.status}>
        {countingWords(counting)}
      </p>
      {busy ? (
        <div className={styles.buttons}>
          <progress aria-label="Counting" max={1} value={countingShare(counting) ?? undefined} />
          <Button onClick={cancel}>Cancel</Button>
        </div>
      ) : (
        <div className={styles.buttons}>
          <FileButton label="Choose a folder…" folder onFiles={(files) => void count(files)} />
          <FileButton label="Choose files…" onFiles={(files) => void count(files)} />
        </div>
      )}
    </DropZone>
  );
}

function Invitation() {
  return (
    <p>
      <b>Drop what you have typed here</b>, source code or letters, files or folders: then everything below is
      weighted by it. It is counted in this page and goes nowhere; only the counts are kept, in this browser.
    </p>
  );
}

function Kept({ text }: { readonly text: OwnText }) {
  const forget = useOwnText((state) => state.forget);
  return (
    <>
      <p className={styles.kept}>
        <span>{textWords(text)}</span>
        <Button tone="quiet" onClick={() => void forget()}>
          Forget it
        </Button>
      </p>
      {text.notes.map((note) => (
        <p key={note} className={styles.status}>
          {note}
        </p>
      ))}
    </>
  );
}

type OnFiles = (files: Promise<GatheredFiles>) => void;

/** Files that are let go here are counted and not imported as a keymap, so the page's own drop must not hear of them. */
function DropZone({ onFiles, children }: { readonly onFiles: OnFiles; readonly children: ReactNode }) {
  const [isOver, setOver] = useState(false);
  const mine = (event: DragEvent, over: boolean) => {
    event.preventDefault();
    event.stopPropagation();
    setOver(over);
  };
  return (
    <section
      className={styles.zone}
      data-takes-files
      data-over={isOver}
      aria-label="Your text"
      onDragOver={(event) => mine(event, true)}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        mine(event, false);
        onFiles(gatherDrop(event.dataTransfer));
      }}
    >
      {children}
    </section>
  );
}

function FileButton({
  label,
  folder = false,
  onFiles,
}: {
  readonly label: string;
  readonly folder?: boolean;
  readonly onFiles: OnFiles;
}) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <Button onClick={() => input.current?.click()}>{label}</Button>
      <input
        ref={(element) => {
          input.current = element;
          if (element !== null) element.webkitdirectory = folder;
        }}
        type="file"
        multiple
        hidden
        data-chooses={folder ? 'folder' : 'files'}
        onChange={({ target }) => {
          onFiles(Promise.resolve(gatherChosen(target.files ?? [])));
          target.value = '';
        }}
      />
    </>
  );
}
