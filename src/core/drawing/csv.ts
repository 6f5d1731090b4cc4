/** A spreadsheet would take a cell that begins like this for a formula. */
const FORMULA = /^[=+\-@\t\r]/;

/**
 * Cells as CSV of RFC 4180: lines end in CR LF, and a cell with a comma, a quote or a line break stands in quotes.
 * A cell that begins with `=`, `+`, `-` or `@` gets an apostrophe before it, so that no spreadsheet runs what a file
 * says: a key that types a minus reads `'-`.
 */
export function csvText(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}

function csvCell(text: string): string {
  const guarded = FORMULA.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded;
}
