import { parseArgs } from 'node:util';
import { LOAD_CAUTION } from '../../core/base/care.ts';
import { ok, type Result } from '../../core/base/result.ts';
import { type AccidentFacts, accidentFacts } from '../../core/findings/accident-facts.ts';
import { USUAL_LIMITS } from '../../core/findings/accident-limits.ts';
import { factsOf } from '../../core/findings/facts.ts';
import type { Finding } from '../../core/findings/find.ts';
import { findAll } from '../../core/findings/find-all.ts';
import { judgeHands } from '../../core/findings/judges-hands.ts';
import type { HostLayout } from '../../core/host/host-layout.ts';
import type { Keymap } from '../../core/keymap/types.ts';
import type { NeedRoute } from '../../core/routes/types.ts';
import { findCounts } from '../find-counts.ts';
import { findList } from '../find-list.ts';
import { type NeedReport, needReports, needTable } from '../need-report.ts';
import { needsToCheck } from '../needs-to-check.ts';
import { openDesign } from '../open-design.ts';
import { answered, type Outcome, refused } from '../outcome.ts';
import { type PersonOptions, personOf } from '../person-of.ts';
import { plainTable, shown } from '../plain-table.ts';

/**
 * `check FILE [--needs NAME_OR_FILE]… [--text NAME_OR_FILE] [--wpm N | --typist FILE] [--json] [--host LAYOUT]`: findings and
 * needs of a design. Without --needs: the document's own needs, or `ascii` where it has none. With a text or a typist also
 * what typing sets off. Exit code 1 where something is broken or missing.
 */
export function checkCommand(args: readonly string[]): Outcome {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      needs: { type: 'string', multiple: true, default: [] },
      text: { type: 'string' },
      wpm: { type: 'string' },
      typist: { type: 'string' },
      json: { type: 'boolean', default: false },
      host: { type: 'string' },
    },
  });
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0) return refused('check wants one design.');
  const design = openDesign(file, values.host);
  if (!design.ok) return refused(design.problem);
  const { keymap, host } = design.value;
  const asked = needsToCheck(keymap, values.needs);
  if (!asked.ok) return refused(asked.problem);
  const accidents = accidentsAsked(keymap, host, values);
  if (!accidents.ok) return refused(accidents.problem);
  const facts = factsOf(keymap, host, asked.value, findList, accidents.value);
  const findings = findAll(facts);
  const reports = needReports(keymap, facts.needs);
  const well =
    findings.every(({ severity }) => severity !== 'broken') && reports.every((each) => each.reachable);
  const output = values.json
    ? JSON.stringify({ findings: findings.map(plainFinding), needs: reports })
    : checkText(keymap, findings, facts.needs, reports);
  return answered(output, well ? 0 : 1);
}

/** What typing does to the design, where a text or a speed is named; the other is then as usual, and so are the limits. */
function accidentsAsked(
  keymap: Keymap,
  host: HostLayout,
  { text, ...who }: PersonOptions & { readonly text?: string | undefined },
): Result<AccidentFacts | null, string> {
  if (text === undefined && who.wpm === undefined && who.typist === undefined) return ok(null);
  const person = personOf(who);
  if (!person.ok) return person;
  const counts = findCounts(text ?? 'english');
  if (!counts.ok) return counts;
  return ok(accidentFacts(keymap, host, counts.value, person.value, USUAL_LIMITS));
}

function plainFinding({ rule, severity, message, subjects, data }: Finding): object {
  return { rule, severity, message, ...subjects, data };
}

function checkText(
  keymap: Keymap,
  findings: readonly Finding[],
  needs: readonly NeedRoute[],
  reports: readonly NeedReport[],
): string {
  const missing = reports.filter(({ reachable }) => !reachable).length;
  const clumsy = reports.filter((report) => report.clumsy).length;
  return [
    shown(keymap.name),
    `Findings: ${findings.length}`,
    ...(findings.length === 0 ? [] : [findingTable(findings)]),
    `Needs: ${reports.length - missing} of ${reports.length} reached, ${missing} missing, ${clumsy} clumsy`,
    ...(reports.length === 0 ? [] : [needTable(needs, reports)]),
    ...(reports.length > 0 || judgeHands(findings) ? [LOAD_CAUTION] : []),
  ].join('\n\n');
}

function findingTable(findings: readonly Finding[]): string {
  return plainTable(findings.map(({ severity, rule, message }) => [severity, rule, message]));
}
