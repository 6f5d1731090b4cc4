import { useState } from 'react';
import { Button } from '../../widgets/button.tsx';
import { type OutgoingFile, saveFile } from '../../widgets/save-file.ts';
import styles from './export-way.module.css';

/** One way out of the page: what it is, and the buttons that download or copy it. */
export function ExportWay({
  title,
  about,
  file,
}: {
  readonly title: string;
  readonly about: string;
  readonly file: OutgoingFile;
}) {
  const [copied, setCopied] = useState<'yes' | 'refused' | null>(null);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(file.text);
      setCopied('yes');
    } catch {
      setCopied('refused');
    }
  };
  return (
    <li className={styles.way}>
      <div className={styles.words}>
        <h3>{title}</h3>
        <p>{about}</p>
        <p className={styles.name}>{file.name}</p>
      </div>
      <Button aria-label={`Download: ${title}`} onClick={() => saveFile(file)}>
        Download
      </Button>
      <Button aria-label={`Copy: ${title}`} onClick={() => void copy()}>
        Copy
      </Button>
      <p role="status" className={styles.copied}>
        {copied === 'yes' && 'Copied.'}
        {copied === 'refused' &&
          'The browser does not let this page write to the clipboard. Download it instead.'}
      </p>
    </li>
  );
}
