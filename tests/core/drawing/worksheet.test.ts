import { describe, expect, test } from 'vitest';
import { worksheetCsv, worksheetMarkdown } from '../../../src/core/drawing/worksheet.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { smallDesign } from './small-design.ts';

const markdown = worksheetMarkdown(smallDesign, usHost);
const csv = worksheetCsv(smallDesign, usHost);

describe('the worksheet in Markdown', () => {
  test('what a file says is never markup', () => {
    expect(markdown.split('\n')[0]).toBe('# Seed drawer \\| \\*two\\*');
    expect(markdown).toContain('\n\nFirst paragraph, still the first.\n\n\\- not a list\n\n');
  });

  test('hosts, timing and layers stand at the top', () => {
    expect(markdown).toContain('| linux, us; macos, us mac |');
    expect(markdown).toContain('| hold after 210 ms, hold by a tap inside |');
    expect(markdown).toContain('| Base, Up, =Both |');
  });

  test('keys that the design reads otherwise on a host are listed with it', () => {
    const correction = { code: 'KeyQ', level: 'shift', gives: '' } as const;
    const hosts = [{ system: 'windows', layout: 'us', variant: '', corrections: [correction] }] as const;
    expect(worksheetMarkdown({ ...smallDesign, hosts }, usHost)).toContain(
      '| windows, us, corrected: KeyQ shift gives nothing |',
    );
  });

  test('each layer has a table of all keys, one with onWhile says what turns it on', () => {
    expect(markdown.match(/^## .*/gm)).toEqual([
      '## Layer 1: Base',
      '## Layer 2: Up',
      '## Layer 3: \\=Both',
      '## Chords',
    ]);
    expect(markdown).toContain('On while these are on: Base, Up.');
    expect(markdown.match(/^\| [MIT] \|/gm)).toHaveLength(9);
  });

  test('every line of a table has as many cells as its heading', () => {
    const tables = markdown
      .trimEnd()
      .split('\n\n')
      .filter((part) => part.startsWith('| '));
    expect(tables.length).toBe(5);
    for (const table of tables) {
      const bars = table.split('\n').map((line) => line.match(/(?<!\\)\|/g)?.length);
      expect(new Set(bars).size).toBe(1);
    }
  });

  test('a design without chords has no section for them', () => {
    expect(worksheetMarkdown({ ...smallDesign, chords: [] }, usHost)).not.toContain('## Chords');
  });
});

describe('the worksheet in CSV', () => {
  const lines = csv.trimEnd().split('\r\n');

  test('a heading, nine keys, two chords, one layer, two hosts, one timing', () => {
    expect(lines).toHaveLength(1 + 9 + 2 + 1 + 2 + 1);
    expect(lines[0]).toBe(
      'Part,Name,Layer,Key,Where,Tap,"Tap, W3C code","Tap, HID usage",Hold,"Hold, W3C code","Hold, HID usage",Timing',
    );
  });

  test('a key that types a minus and a layer named like a formula are no formulas', () => {
    expect(lines[2]).toContain(",'-,Minus,0x07002D,");
    expect(lines[7]).toMatch(/^key,,'=Both,M,/);
  });

  test('quotes are doubled', () => {
    expect(csv).toContain('"Say ""yes"""');
  });
});
