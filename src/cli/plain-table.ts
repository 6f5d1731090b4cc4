/** Control characters would be obeyed by a terminal; shown as � instead. Bidirectional overrides likewise. */
export function shown(text: string): string {
  return text.replace(/[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu, '\ufffd');
}

const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });

function widthOf(text: string): number {
  return [...segmenter.segment(text)].length;
}

/** Rows as columns of equal width, two spaces between; the last column is not padded. */
export function plainTable(rows: readonly (readonly string[])[]): string {
  const safe = rows.map((row) => row.map(shown));
  const columns = Math.max(0, ...safe.map((row) => row.length));
  const widths = Array.from({ length: columns }, (_, at) =>
    Math.max(...safe.map((row) => widthOf(row[at] ?? ''))),
  );
  const pad = (cell: string, at: number) => cell + ' '.repeat((widths[at] ?? 0) - widthOf(cell));
  return safe.map((row) => row.map(pad).join('  ').trimEnd()).join('\n');
}
