import { useBench } from '../../../../store/bench.ts';
import { useHost } from '../../../../store/hosts.ts';
import { keymapFile, worksheetCsvFile, worksheetMarkdownFile } from '../../../board/export/export-files.ts';
import { ExportWay } from '../../../board/export/export-way.tsx';
import styles from './exports.module.css';

/** The ways out beside paper: for programs, and for entering the design elsewhere by hand. */
export function Exports() {
  const keymap = useBench((bench) => bench.keymap);
  const { host } = useHost(keymap);
  return (
    <section className={styles.exports} aria-label="Exports">
      <h2>For programs</h2>
      <ul>
        <ExportWay
          title="Neutral keymap"
          about="JSON: the whole design, and what Import reads"
          file={keymapFile(keymap)}
        />
      </ul>
      <p className={styles.about}>
        Nothing in it belongs to any firmware; its format is open:{' '}
        <a href="./neutral-keymap.schema.json">JSON Schema</a>,{' '}
        <a href="./neutral-keymap.md">described in words</a>.
      </p>
      <h2>For entering it by hand</h2>
      <ul>
        <ExportWay
          title="Worksheet, Markdown"
          about="every key, layer and chord, to read or print"
          file={worksheetMarkdownFile(keymap, host)}
        />
        <ExportWay
          title="Worksheet, CSV"
          about="the same as a table for a spreadsheet"
          file={worksheetCsvFile(keymap, host)}
        />
      </ul>
    </section>
  );
}
