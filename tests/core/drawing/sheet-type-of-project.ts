import { readFileSync } from 'node:fs';
import { readSheetType, type SheetType } from '../../../src/core/drawing/sheet-type.ts';

/** The letters that come with the project. */
export function projectType(): SheetType {
  const read = readSheetType(JSON.parse(readFileSync('public/sheet-type.json', 'utf8')));
  if (!read.ok) throw new Error(read.problem);
  return read.value;
}
