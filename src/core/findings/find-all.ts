import type { Facts } from './facts.ts';
import type { Finding, Severity } from './find.ts';
import { RULES } from './registry.ts';

/** From the worst harm to the least. */
export const SEVERITIES: readonly Severity[] = ['broken', 'risky', 'note'];

/** Everything there is to say about a design, sorted by harm, then by rule, then in document order. */
export function findAll(facts: Facts): readonly Finding[] {
  return sorted(RULES.flatMap((rule) => rule.check(facts)));
}

/** What only the accidents of a design have to say; the facts must hold them. Sorted as `findAll` sorts. */
export function findAccidents(facts: Facts): readonly Finding[] {
  return sorted(RULES.flatMap((rule) => (rule.about === 'accidents' ? rule.check(facts) : [])));
}

/**
 * The findings of a design, made without its accidents, together with those about them. Where a letter is known to turn into
 * its hold, the general note that it may is left out.
 */
export function withAccidents(
  findings: readonly Finding[],
  accidents: readonly Finding[],
): readonly Finding[] {
  return sorted([...findings, ...accidents]);
}

const ORDER = new Map(RULES.map(({ id }, at) => [id, at]));

function sorted(all: readonly Finding[]): readonly Finding[] {
  const misfiring = new Set(all.filter(({ rule }) => rule === 'letter-hold-misfires').map(placeOf));
  const kept = all.filter((each) => each.rule !== 'letter-hold-unprotected' || !misfiring.has(placeOf(each)));
  const orderOf = ({ rule }: Finding) => ORDER.get(rule) ?? RULES.length;
  return SEVERITIES.flatMap((severity) =>
    kept.filter((each) => each.severity === severity).toSorted((one, other) => orderOf(one) - orderOf(other)),
  );
}

function placeOf({ subjects: { keys, layers } }: Finding): string {
  return `${layers[0] ?? ''} ${keys[0] ?? ''}`;
}
