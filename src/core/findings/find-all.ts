import type { Facts } from './facts.ts';
import type { Finding, Severity } from './find.ts';
import { RULES } from './registry.ts';

/** From the worst harm to the least. */
export const SEVERITIES: readonly Severity[] = ['broken', 'risky', 'note'];

/** Everything there is to say about a design, sorted by harm, then by rule, then in document order. */
export function findAll(facts: Facts): readonly Finding[] {
  const all = RULES.flatMap((rule) => rule.check(facts));
  return SEVERITIES.flatMap((severity) => all.filter((each) => each.severity === severity));
}
