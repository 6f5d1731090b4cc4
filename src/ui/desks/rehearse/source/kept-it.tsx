import { useState } from 'react';
import type { ReadProblem } from '../../../../core/keymap/problem.ts';
import { readStream } from '../../../../core/rehearse/read-stream.ts';
import { STREAM_LIMITS, type Stream } from '../../../../core/rehearse/stream.ts';
import { writeStream } from '../../../../core/rehearse/write-stream.ts';
import { useBench } from '../../../../store/bench.ts';
import { useKeptStreams } from '../../../../store/rehearse/kept-streams.ts';
import { useRehearsal } from '../../../../store/rehearse/rehearsal.ts';
import { Button, IconButton } from '../../../widgets/button.tsx';
import { CommitField } from '../../../widgets/commit-field.tsx';
import { CrossIcon } from '../../../widgets/icons.tsx';
import { saveFile } from '../../../widgets/save-file.ts';
import styles from '../rehearse.module.css';
import { countsWords, fileNameOf } from './stream-words.ts';

/** Streams that are kept, and the ways in and out for files. */
export function KeptIt() {
  const stream = useRehearsal((state) => state.stream);
  const take = useRehearsal((state) => state.take);
  const kept = useKeptStreams();
  const designId = useBench((bench) => bench.designId);
  const [problems, setProblems] = useState<readonly Pick<ReadProblem, 'sentence'>[]>([]);
  const openFile = async (file: File) => {
    if (file.size > STREAM_LIMITS.fileBytes) {
      setProblems([{ sentence: `The file is larger than ${STREAM_LIMITS.fileBytes / 1024 / 1024} MiB.` }]);
      return;
    }
    const read = readStream(await file.text());
    if (read.ok) take(read.value);
    setProblems(read.ok ? [] : read.problem);
  };
  return (
    <>
      {stream !== null && (
        <Present stream={stream} onKeep={() => void kept.keep(stream, undefined, designId)} />
      )}
      <OpenFile onFile={(file) => void openFile(file)} />
      {problems.length > 0 && (
        <p className={styles.problem} role="alert">
          The file was not opened, and what was there stays.
        </p>
      )}
      {problems.slice(0, 5).map(({ sentence }) => (
        <p key={sentence} className={styles.problem}>
          {sentence}
        </p>
      ))}
      {kept.problem !== null && (
        <p className={styles.problem} role="alert">
          It could not be kept: {kept.problem}
        </p>
      )}
      <div>
        <h2 className={styles.heading}>Kept with this browser</h2>
        {kept.things.length === 0 && <p className={styles.hint}>None yet.</p>}
        <ul className={styles.list}>
          {kept.things.map(({ id, value }) => (
            <li key={id} className={styles.row}>
              <div className={styles.rowHead}>
                <button type="button" className={styles.plain} onClick={() => take(value)}>
                  {value.name}
                </button>
                <IconButton label={`Delete ${value.name}`} onClick={() => void kept.remove(id)}>
                  <CrossIcon />
                </IconButton>
              </div>
              <span className={styles.hint}>{countsWords(value)}</span>
            </li>
          ))}
        </ul>
      </div>
    </>
  );
}

function Present({ stream, onKeep }: { readonly stream: Stream; readonly onKeep: () => void }) {
  const rename = useRehearsal((state) => state.rename);
  const [said, setSaid] = useState('');
  const copy = async () => {
    const done = await navigator.clipboard.writeText(writeStream(stream)).then(
      () => 'Copied.',
      () => 'The browser did not allow it; save it as a file instead.',
    );
    setSaid(done);
  };
  return (
    <div className={styles.area}>
      <CommitField
        label="The stream on the time line"
        value={stream.name}
        maxLength={STREAM_LIMITS.nameLength}
        problemOf={(text) => (text === '' ? 'A stream needs a name.' : undefined)}
        onCommit={rename}
      />
      <span className={styles.hint}>{countsWords(stream)}</span>
      <div className={styles.buttons}>
        <Button
          tone="accent"
          onClick={() => {
            onKeep();
            setSaid('Kept with this browser.');
          }}
        >
          Keep
        </Button>
        <Button
          onClick={() =>
            saveFile({ name: fileNameOf(stream), type: 'application/json', text: writeStream(stream) })
          }
        >
          Save a file
        </Button>
        <Button onClick={() => void copy()}>Copy</Button>
      </div>
      <span className={styles.hint} role="status">
        {said}
      </span>
    </div>
  );
}

function OpenFile({ onFile }: { readonly onFile: (file: File) => void }) {
  return (
    <label className={styles.file}>
      Open a file of a stream…
      <input
        type="file"
        accept=".json,application/json"
        onChange={({ target }) => {
          const [file] = target.files ?? [];
          if (file !== undefined) onFile(file);
          target.value = '';
        }}
      />
    </label>
  );
}
