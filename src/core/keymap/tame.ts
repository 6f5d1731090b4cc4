import { LIMITS } from './limits.ts';
import type { Path, Problem } from './problem.ts';

/** Deeper than any keymap: a field of an action of a binding lies seven deep. */
const MOST_LEVELS = 24;

/** No list of a keymap may be longer, and no object of one has more fields. */
const MOST_ITEMS = LIMITS.needs;

interface Inner {
  readonly value: unknown;
  readonly path: Path;
}

/**
 * The first thing in a value that no keymap holds and that would make checking it slow or blind: too many levels,
 * lists or objects beyond every limit, a field called `__proto__`. Walks with a list of its own, so that depth
 * costs no stack.
 */
export function untame(value: unknown): Problem | undefined {
  const waiting: Inner[] = [{ value, path: [] }];
  for (let inner = waiting.pop(); inner; inner = waiting.pop()) {
    const problem = ownProblem(inner);
    if (problem) return problem;
    waiting.push(...innersOf(inner));
  }
  return undefined;
}

function ownProblem({ value, path }: Inner): Problem | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  if (path.length > MOST_LEVELS) {
    return { path, found: `more than ${MOST_LEVELS} levels`, expected: `${MOST_LEVELS} at most` };
  }
  const count = Array.isArray(value) ? value.length : Object.keys(value).length;
  if (count > MOST_ITEMS) {
    const what = Array.isArray(value) ? 'a list' : 'an object';
    return { path, found: `${what} of ${count}`, expected: `${MOST_ITEMS} at most` };
  }
  if (Object.hasOwn(value, '__proto__')) {
    return { path: [...path, '__proto__'], found: 'a field of that name', expected: 'no such field' };
  }
  return undefined;
}

function innersOf({ value, path }: Inner): Inner[] {
  if (typeof value !== 'object' || value === null) return [];
  const inners: Inner[] = [];
  for (const [name, inner] of Object.entries(value)) {
    if (typeof inner !== 'object' || inner === null) continue;
    inners.push({ value: inner, path: [...path, Array.isArray(value) ? Number(name) : name] });
  }
  return inners.reverse();
}
