import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { fail, ok, type Result } from '../../core/base/result.ts';
import { sheetSvgs } from '../../core/drawing/sheet.ts';
import type { SheetOptions } from '../../core/drawing/sheet-paper.ts';
import { readSheetType, type SheetType } from '../../core/drawing/sheet-type.ts';
import { openDesign } from '../open-design.ts';
import { answered, type Outcome, refused } from '../outcome.ts';
import { publicFolder } from '../public-folder.ts';
import { readJson } from '../read-text.ts';
import { writeText } from '../write-text.ts';

const TYPE_BYTES = 8 * 1024 * 1024;

/**
 * `sheet FILE -o OUT.svg [--paper a4|letter] [--turn portrait|landscape] [--ink colour|black] [--host LAYOUT]`: the
 * printable reference, one file a page: OUT.svg, OUT-2.svg and so on.
 */
export function sheetCommand(args: readonly string[]): Outcome {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      out: { type: 'string', short: 'o' },
      paper: { type: 'string', default: 'a4' },
      turn: { type: 'string', default: 'landscape' },
      ink: { type: 'string', default: 'colour' },
      host: { type: 'string' },
    },
  });
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0) return refused('sheet wants one design.');
  if (values.out === undefined)
    return refused('sheet wants -o with the file to write, such as -o sheet.svg.');
  const options = optionsOf(values);
  if (!options.ok) return refused(options.problem);
  const design = openDesign(file, values.host);
  if (!design.ok) return refused(design.problem);
  const type = loadType();
  if (!type.ok) return refused(type.problem);
  return written(values.out, sheetSvgs({ ...design.value, ...options.value, type: type.value }));
}

function optionsOf(values: {
  readonly paper: string;
  readonly turn: string;
  readonly ink: string;
}): Result<SheetOptions, string> {
  const paper = oneOf('paper', values.paper, ['a4', 'letter'] as const);
  if (!paper.ok) return paper;
  const turn = oneOf('turn', values.turn, ['portrait', 'landscape'] as const);
  if (!turn.ok) return turn;
  const ink = oneOf('ink', values.ink, ['colour', 'black'] as const);
  return ink.ok ? ok({ paper: paper.value, turn: turn.value, ink: ink.value }) : ink;
}

function oneOf<Word extends string>(
  name: string,
  found: string,
  words: readonly Word[],
): Result<Word, string> {
  const word = words.find((each) => each === found);
  if (word !== undefined) return ok(word);
  return fail(`sheet --${name}: found ${JSON.stringify(found)}, expected ${words.join(' or ')}.`);
}

function loadType(): Result<SheetType, string> {
  const json = readJson(join(publicFolder(), 'sheet-type.json'), TYPE_BYTES);
  return json.ok ? readSheetType(json.value) : json;
}

function written(out: string, pages: readonly string[]): Outcome {
  const lines: string[] = [];
  for (const [at, svg] of pages.entries()) {
    const file = at === 0 ? out : out.replace(/(\.[^./\\]*)?$/, `-${at + 1}$1`);
    const wrote = writeText(file, svg);
    if (!wrote.ok) return refused(wrote.problem);
    lines.push(pages.length === 1 ? file : `${file}: page ${at + 1} of ${pages.length}`);
  }
  return answered(lines.join('\n'));
}
