/**
 * A text from a file as plain text in Markdown: what could be read as markup is escaped (CommonMark lets a backslash
 * stand before any ASCII punctuation), and a line break becomes a space.
 */
export function markdownText(text: string): string {
  return text
    .replace(/\s*[\r\n]+\s*/g, ' ')
    .replace(/[\\`*_[\]<>|~&$#]/g, '\\$&')
    .replace(/^(\s*)([-+=])/, '$1\\$2')
    .replace(/^(\s*\d+)([.)])/, '$1\\$2');
}

/** A table with a heading row; every cell is escaped. */
export function markdownTable(heading: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.map(markdownText).join(' | ')} |`;
  return [line(heading), `|${heading.map(() => ' --- |').join('')}`, ...rows.map(line)].join('\n');
}
