import type { Finding } from './find.ts';
import { RULES } from './registry.ts';

const JUDGING: ReadonlySet<string> = new Set(RULES.filter((rule) => rule.judgesHands).map(({ id }) => id));

/** Whether any of the findings judges what hands can well do, so that the usual caution belongs beside them. */
export function judgeHands(findings: readonly Finding[]): boolean {
  return findings.some(({ rule }) => JUDGING.has(rule));
}
