import { parseArgs } from 'node:util';
import { LOAD_CAUTION } from '../../core/base/care.ts';
import { type Need, parseNeed } from '../../core/keymap/need.ts';
import { findRoutes } from '../../core/routes/find-routes.ts';
import { needReports, needTable } from '../need-report.ts';
import { openDesign } from '../open-design.ts';
import { answered, type Outcome, refused } from '../outcome.ts';

/** `route FILE NEED… [--json] [--host LAYOUT]`: how something is typed; exit code 1 where a need has no route. */
export function routeCommand(args: readonly string[]): Outcome {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { json: { type: 'boolean', default: false }, host: { type: 'string' } },
  });
  const [file, ...texts] = positionals;
  if (file === undefined || texts.length === 0) return refused('route wants a design and one or more needs.');
  const needs: Need[] = [];
  for (const text of texts) {
    const need = parseNeed(text);
    if (!need.ok) return refused(`Not a need: ${need.problem}.`);
    needs.push(need.value);
  }
  const design = openDesign(file, values.host);
  if (!design.ok) return refused(design.problem);
  const { keymap, host } = design.value;
  const found = findRoutes(keymap, host, needs);
  const reports = needReports(keymap, found);
  const exitCode = reports.every(({ reachable }) => reachable) ? 0 : 1;
  return answered(
    values.json ? JSON.stringify({ needs: reports }) : `${needTable(found, reports)}\n\n${LOAD_CAUTION}`,
    exitCode,
  );
}
