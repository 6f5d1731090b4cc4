import { describe, expect, test } from 'vitest';
import { worksheetCommand } from '../../src/cli/commands/worksheet.ts';
import { folderOfFiles } from './folder-of-files.ts';
import { twoKeyDesign } from './two-key-design.ts';

const design = folderOfFiles()('design.json', twoKeyDesign);

describe('worksheet', () => {
  test('is Markdown unless CSV is asked for', () => {
    expect(worksheetCommand([design])).toMatchObject({
      exitCode: 0,
      output: expect.stringMatching(/^# Two keys\n/),
    });
    expect(worksheetCommand([design, '--as', 'csv']).output).toMatch(/^Part,Name,Layer,.*\r\n/);
  });

  test('spells characters for the host layout that is asked for', () => {
    expect(worksheetCommand([design]).output).toContain('no route on this host layout');
    expect(worksheetCommand([design, '--host', 'pl']).output).toContain('AltRight+KeyL');
  });

  test.each([[['--as', 'pdf']], [['other.json']]])('%j is refused', (more) => {
    expect(worksheetCommand([design, ...more])).toMatchObject({ output: '', exitCode: 2 });
  });
});
