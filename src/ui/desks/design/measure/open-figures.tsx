import { useState } from 'react';
import { MEASURED_LIMITS, type MeasuredFile } from '../../../../core/typist/measured-file.ts';
import { measured } from '../../../../store/typist.ts';
import { Button } from '../../../widgets/button.tsx';
import styles from './measure.module.css';
import { fileWords } from './measure-words.ts';
import { sayNotKept } from './not-kept.ts';
import { readFigures } from './read-figures.ts';

interface OpenFiguresProps {
  /** Whether there are figures already, to which a file's may be added. */
  readonly known: boolean;
  readonly onOpened: () => void;
}

/** The way back in for a file of figures; beside figures that are there it is asked what becomes of them. */
export function OpenFigures({ known, onOpened }: OpenFiguresProps) {
  const [problems, setProblems] = useState<readonly string[]>([]);
  const [asked, setAsked] = useState<MeasuredFile | null>(null);
  const take = async (file: MeasuredFile, how: 'add' | 'replace') => {
    const fits = await measured
      .getState()
      .open(file, how)
      .catch(() => {
        sayNotKept();
        return true;
      });
    if (!fits) return setProblems([TOO_MUCH]);
    setAsked(null);
    onOpened();
  };
  const chosen = async (file: File) => {
    setAsked(null);
    const read = await readFigures(file);
    setProblems(read.ok ? [] : read.problem);
    if (!read.ok) return;
    if (known) setAsked(read.value);
    else await take(read.value, 'replace');
  };
  return (
    <div className={styles.open}>
      <label className={styles.file}>
        Open a file of figures…
        <input
          type="file"
          accept=".json,application/json"
          onChange={({ target }) => {
            const [file] = target.files ?? [];
            if (file !== undefined) void chosen(file);
            target.value = '';
          }}
        />
      </label>
      {asked !== null && (
        <section className={styles.asking} aria-label="What becomes of the figures that are here">
          <p role="status">{fileWords(asked)} There are figures here already.</p>
          <Button tone="accent" onClick={() => void take(asked, 'add')}>
            Add it to them
          </Button>
          <Button onClick={() => void take(asked, 'replace')}>Put it in their place</Button>
          <Button tone="quiet" onClick={() => setAsked(null)}>
            Leave them as they are
          </Button>
        </section>
      )}
      {problems.length > 0 && (
        <div role="alert" className={styles.warning}>
          <p>The file was not opened, and what was here stays.</p>
          {problems.slice(0, 5).map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </div>
      )}
    </div>
  );
}

const TOO_MUCH = `Both together are more than can be kept: ${MEASURED_LIMITS.times.toLocaleString('en')} times of a kind and ${MEASURED_LIMITS.chords.toLocaleString('en')} chords.`;
