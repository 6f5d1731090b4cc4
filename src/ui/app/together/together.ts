import type { Result } from '../../../core/base/result.ts';
import type { HostLayout } from '../../../core/host/host-layout.ts';
import type { Edit } from '../../../core/keymap/edit.ts';
import type { Keymap } from '../../../core/keymap/types.ts';
import { changeRows } from '../../../core/versions/change-rows.ts';
import { compareKeymaps } from '../../../core/versions/compare.ts';
import { type ConflictWords, conflictWords } from '../../../core/versions/conflict-words.ts';
import { type Choice, type Merge, mergeKeymaps } from '../../../core/versions/merge.ts';
import type { Branch } from '../../../store/keeping/branches.ts';

/** The three states that are brought together. */
export interface ThreeStates {
  readonly base: Keymap;
  /** The copy, under the original's name unless it was given one of its own. */
  readonly mine: Keymap;
  readonly theirs: Keymap;
}

/** The states for a copy and its original as they are now. */
export function threeStates({ base, name }: Branch, copy: Keymap, original: Keymap): ThreeStates {
  return { base, mine: copy.name === name ? { ...copy, name: base.name } : copy, theirs: original };
}

/** What the page shows before both are brought together. */
export interface Plan {
  readonly outcome: Result<Merge, string>;
  /** Differences from the common beginning, in words. */
  readonly here: readonly string[];
  readonly there: readonly string[];
  readonly questions: readonly (ConflictWords & { readonly part: string })[];
  /** Parts that still want a choice. */
  readonly open: number;
}

/** Works out what bringing both together comes to, with the choices that were made so far. */
export function planOf(
  { base, mine, theirs }: ThreeStates,
  choices: ReadonlyMap<string, Choice>,
  host: HostLayout | null,
): Plan {
  const outcome = mergeKeymaps(base, mine, theirs, choices);
  const words = (to: Keymap) =>
    changeRows(compareKeymaps(base, to), { before: host, after: host }).map(({ where, what }) =>
      where === '' ? what : `${where}: ${what}`,
    );
  const told = { mine: { keymap: mine, host }, theirs: { keymap: theirs, host } };
  const conflicts = outcome.ok ? outcome.value.conflicts : [];
  return {
    outcome,
    here: words(mine),
    there: words(theirs),
    questions: conflicts.map((conflict) => ({ part: conflict.part, ...conflictWords(conflict, told) })),
    open: conflicts.filter(({ part }) => !choices.has(part)).length,
  };
}

/**
 * The edit that makes the original into what both come to; a sentence where they do not fit, or where the original has
 * changed since so that there is more to choose.
 */
export function togetherEdit(
  states: ThreeStates,
  choices: ReadonlyMap<string, Choice>,
): Result<Edit, string> {
  const outcome = mergeKeymaps(states.base, states.mine, states.theirs, choices);
  if (!outcome.ok) return outcome;
  if (outcome.value.conflicts.some(({ part }) => !choices.has(part))) {
    return { ok: false, problem: 'The original has changed meanwhile: look at it once more.' };
  }
  return {
    ok: true,
    value: { edit: 'replace-design', title: 'Bring both together', keymap: outcome.value.keymap },
  };
}
