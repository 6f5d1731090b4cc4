import { worksheetCsv, worksheetMarkdown } from '../../../core/drawing/worksheet.ts';
import type { HostLayout } from '../../../core/host/host-layout.ts';
import type { Keymap } from '../../../core/keymap/types.ts';
import { writeKeymap } from '../../../core/keymap/write.ts';
import type { OutgoingFile } from '../../widgets/save-file.ts';

/** A name for files that every system takes: letters and figures of any script, the rest as single hyphens. */
export function fileStem(name: string): string {
  const stem = name
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  return stem === '' ? 'keymap' : stem;
}

/** The design as a neutral keymap; it reads back equal. */
export function keymapFile(keymap: Keymap): OutgoingFile {
  return {
    name: `${fileStem(keymap.name)}.keymap.json`,
    type: 'application/json',
    text: writeKeymap(keymap),
  };
}

/** The worksheet as Markdown, for reading and printing. */
export function worksheetMarkdownFile(keymap: Keymap, host: HostLayout): OutgoingFile {
  return {
    name: `${fileStem(keymap.name)}.worksheet.md`,
    type: 'text/markdown',
    text: worksheetMarkdown(keymap, host),
  };
}

/** The worksheet as CSV, for a spreadsheet. */
export function worksheetCsvFile(keymap: Keymap, host: HostLayout): OutgoingFile {
  return {
    name: `${fileStem(keymap.name)}.worksheet.csv`,
    type: 'text/csv',
    text: worksheetCsv(keymap, host),
  };
}
