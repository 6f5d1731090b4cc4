import { parseArgs } from 'node:util';
import { worksheetCsv, worksheetMarkdown } from '../../core/drawing/worksheet.ts';
import { openDesign } from '../open-design.ts';
import { answered, type Outcome, refused } from '../outcome.ts';

/** `worksheet FILE [--as md|csv] [--host LAYOUT]`: all that stands in a design, for entering it elsewhere by hand. */
export function worksheetCommand(args: readonly string[]): Outcome {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { as: { type: 'string', default: 'md' }, host: { type: 'string' } },
  });
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0) return refused('worksheet wants one design.');
  if (values.as !== 'md' && values.as !== 'csv') {
    return refused(`worksheet --as: found ${JSON.stringify(values.as)}, expected md or csv.`);
  }
  const design = openDesign(file, values.host);
  if (!design.ok) return refused(design.problem);
  const { keymap, host } = design.value;
  const text = values.as === 'md' ? worksheetMarkdown(keymap, host) : worksheetCsv(keymap, host);
  return answered(text);
}
