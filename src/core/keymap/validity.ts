import type { Problem } from './problem.ts';
import { ruleProblems } from './reader-rules.ts';
import { checkShape } from './shape-problems.ts';
import type { Keymap } from './types.ts';

/** All that makes a keymap no valid document: its shape, or where that is right, what only the reader checks. */
export function validityProblems(keymap: Keymap): readonly Problem[] {
  const shaped = checkShape(keymap);
  return shaped.ok ? ruleProblems(keymap) : shaped.problem;
}
