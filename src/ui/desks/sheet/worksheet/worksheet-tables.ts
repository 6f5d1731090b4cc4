import { type WorksheetRow, worksheetRows } from '../../../../core/drawing/worksheet-rows.ts';
import type { HostLayout } from '../../../../core/host/host-layout.ts';
import type { Keymap } from '../../../../core/keymap/types.ts';

/** A table of the worksheet: a layer, or the chords. */
export interface WorksheetTable {
  readonly id: string;
  readonly title: string;
  readonly heads: readonly string[];
  readonly rows: readonly { readonly id: string; readonly cells: readonly string[] }[];
}

/** The worksheet's lines as tables, from the base layer up, then the chords; codes stand behind the words they are for. */
export function worksheetTables(keymap: Keymap, host: HostLayout): readonly WorksheetTable[] {
  const rows = worksheetRows(keymap, host);
  const keys = keymap.board.keys.length;
  const layers = keymap.layers.map((layer, at) => ({
    id: layer.id,
    title: `Layer ${at + 1}: ${layer.name}`,
    heads: ['Key', 'Tap', 'Hold', 'Timing'],
    rows: rows.slice(at * keys, (at + 1) * keys).map((row) => ({
      id: row.keys,
      cells: [`${row.keys}, ${row.where}`, sideText(row.tap), sideText(row.hold), row.timing],
    })),
  }));
  const chords = rows.filter(({ part }) => part === 'chord');
  if (chords.length === 0) return layers;
  const chordRows = chords.map((row, at) => ({
    id: String(at),
    cells: [row.where, givesText(row), row.layer, row.timing],
  }));
  return [
    ...layers,
    { id: 'chords', title: 'Chords', heads: ['Keys', 'Gives', 'On', 'Timing'], rows: chordRows },
  ];
}

function givesText(row: WorksheetRow): string {
  return row.hold.words === '' ? sideText(row.tap) : `${sideText(row.tap)}; held: ${sideText(row.hold)}`;
}

function sideText({ words, codes }: WorksheetRow['tap']): string {
  return codes === '' ? words : `${words} (${codes})`;
}
