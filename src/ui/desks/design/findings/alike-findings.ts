import type { Finding } from '../../../../core/findings/find.ts';

/** Up to so many findings of one rule all stand in the list. */
const ALL_SHOWN = 4;
/** Of more than that so many stand there, as examples. */
const EXAMPLES = 3;

/** The findings of one rule: those that stand in the list, and those that are folded away behind them. */
export interface AlikeFindings {
  readonly rule: string;
  readonly shown: readonly Finding[];
  readonly folded: readonly Finding[];
}

/**
 * Puts findings of the same rule together, in the order in which the rules first come up. What says the same thing many
 * times over, such as thirty needs that are missing from a new design, is folded after a few examples.
 */
export function alikeFindings(findings: readonly Finding[]): readonly AlikeFindings[] {
  const byRule = new Map<string, Finding[]>();
  for (const finding of findings) {
    byRule.set(finding.rule, [...(byRule.get(finding.rule) ?? []), finding]);
  }
  return [...byRule].map(([rule, all]) => {
    const shown = all.length > ALL_SHOWN ? all.slice(0, EXAMPLES) : all;
    return { rule, shown, folded: all.slice(shown.length) };
  });
}
