import { useBench } from '../../../store/bench.ts';
import { useHost } from '../../../store/hosts.ts';
import { keymapFile, worksheetCsvFile, worksheetMarkdownFile } from '../../board/export/export-files.ts';
import { ExportWay } from '../../board/export/export-way.tsx';
import { Dialog } from '../../widgets/dialog.tsx';
import styles from './export-dialog.module.css';
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
        <ExportWay
          title="Neutral keymap"
          about="JSON: the whole design, and what Import reads"
          file={keymapFile(keymap)}
        />
        <LinkWay keymap={keymap} />
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
      <p className={styles.schema}>
        The keymap's format is open: <a href={SCHEMA}>JSON Schema of the neutral keymap</a>.
      </p>
    </Dialog>
  );
}
