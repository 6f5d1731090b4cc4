import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { sheetCommand } from '../../src/cli/commands/sheet.ts';
import { folderOfFiles } from './folder-of-files.ts';
import { twoKeyDesign } from './two-key-design.ts';

const inFolder = folderOfFiles();
const design = inFolder('design.json', twoKeyDesign);
const out = inFolder('sheet.svg', '');

/** The two keys with so many layers that one page cannot hold their boards. */
const tall = inFolder('tall.json', {
  ...twoKeyDesign,
  layers: [
    ...twoKeyDesign.layers,
    ...Array.from({ length: 20 }, (_, at) => ({ id: `l${at}`, name: `Level ${at}`, places: {} })),
  ],
});

describe('sheet', () => {
  test.each([
    [[], /width="297mm" height="210mm"/],
    [['--turn', 'portrait'], /width="210mm" height="297mm"/],
    [['--paper', 'letter'], /width="279.4mm" height="215.9mm"/],
    [['--ink', 'black'], /fill="#000000"/],
  ])('%j writes a page such as %s', (more, expected) => {
    expect(sheetCommand([design, '-o', out, ...more])).toEqual({ output: out, problem: '', exitCode: 0 });
    expect(readFileSync(out, 'utf8')).toMatch(expected);
  });

  test('further pages go into files beside it', () => {
    const { output } = sheetCommand([tall, '-o', out]);
    expect(output.split('\n')[0]).toBe(`${out}: page 1 of ${output.split('\n').length}`);
    expect(existsSync(out.replace('.svg', '-2.svg'))).toBe(true);
  });

  test.each([
    [[design], 'sheet wants -o with the file to write'],
    [[design, '-o', out, '--paper', 'a5'], 'sheet --paper: found "a5", expected a4 or letter.'],
    [[design, '-o', '/nowhere/at/all.svg'], 'could not be written: there is no such'],
    [['other.json', '-o', out], 'other.json could not be read'],
  ])('%j is refused', (args, sentence) => {
    expect(sheetCommand(args)).toMatchObject({ exitCode: 2, problem: expect.stringContaining(sentence) });
  });
});
