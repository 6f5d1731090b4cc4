import { fc, test as propertyTest } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { csvText } from '../../../src/core/drawing/csv.ts';

/** Reads CSV by the grammar of RFC 4180, section 2, written apart from the code under test. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at < text.length) {
    let cell = '';
    if (text[at] === '"') {
      at += 1;
      while (text[at] !== '"' || text[at + 1] === '"') {
        cell += text[at];
        at += text[at] === '"' ? 2 : 1;
      }
      at += 1;
    } else {
      while (text[at] !== ',' && text[at] !== '\r') {
        cell += text[at];
        at += 1;
      }
    }
    row.push(cell);
    if (text[at] === ',') at += 1;
    else {
      expect(text.slice(at, at + 2)).toBe('\r\n');
      rows.push(row);
      row = [];
      at += 2;
    }
  }
  return rows;
}

describe('CSV', () => {
  test('commas, quotes and line breaks stand in quotes, lines end in CR LF (RFC 4180)', () => {
    expect(csvText([['a', 'b,c', 'd"e', 'f\ng']])).toBe('a,"b,c","d""e","f\ng"\r\n');
  });

  test.each(['=1+1', '+', '-', '@x', '\t=1'])('%j is no formula any more', (cell) => {
    expect(readCsv(csvText([[cell]]))).toEqual([[`'${cell}`]]);
  });

  const cell = fc.string({ unit: fc.constantFrom('a', ',', '"', '\n', '\r', '=', '-', ' ', "'", 'é') });
  propertyTest.prop([
    fc.array(fc.array(cell, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 4 }),
  ])('what is written is read back, but for the apostrophe', (rows) => {
    const back = readCsv(csvText(rows));
    expect(back).toEqual(
      rows.map((row) => row.map((text) => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text))),
    );
  });
});
