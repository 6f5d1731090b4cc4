import { useState } from 'react';
import { useBench } from '../../../store/bench.ts';
import { useHost } from '../../../store/hosts.ts';
import { Button } from '../../widgets/button.tsx';
import { Dialog } from '../../widgets/dialog.tsx';
import { type OutgoingFile, saveFile } from '../../widgets/save-file.ts';
import styles from './export-dialog.module.css';
import { keymapFile, worksheetCsvFile, worksheetMarkdownFile } from './export-files.ts';
import { LinkWay } from './link-way.tsx';

/** Where the format is described for programs; it lies beside the page. */
const SCHEMA = './neutral-keymap.schema.json';

/** The ways out: the keymap for programs, the worksheet for people. */
export function ExportDialog({ onClose }: { readonly onClose: () => void }) {
  const keymap = useBench((bench) => bench.keymap);
  const { host } = useHost(keymap);
  return (
    <Dialog title="Export" onClose={onClose}>
      <ul className={styles.ways}>
        <Way
          title="Neutral keymap"
          about="JSON: the whole design, and what Import reads"
          file={keymapFile(keymap)}
        />
        <LinkWay keymap={keymap} />
        <Way
          title="Worksheet, Markdown"
          about="every key, layer and chord, to read or print"
          file={worksheetMarkdownFile(keymap, host)}
        />
        <Way
          title="Worksheet, CSV"
          about="the same as a table for a spreadsheet"
          file={worksheetCsvFile(keymap, host)}
        />
      </ul>
      <p className={styles.schema}>
        The keymap's format is open: <a href={SCHEMA}>JSON Schema of the neutral keymap</a>.
      </p>
    </Dialog>
  );
}

function Way({
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
