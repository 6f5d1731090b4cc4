import { expect } from 'vitest';
import { applyEdit } from '../../../src/core/keymap/apply-edit.ts';
import type { Edit, EditOutcome } from '../../../src/core/keymap/edit.ts';
import { checkKeymap } from '../../../src/core/keymap/read.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';

/** Makes an edit that must succeed and leave a valid keymap. */
export function edited(keymap: Keymap, edit: Edit): EditOutcome {
  const outcome = applyEdit(keymap, edit);
  if (!outcome.ok) throw new Error(outcome.problem);
  expect(checkKeymap(outcome.value.keymap)).toEqual({ ok: true, value: outcome.value.keymap });
  return outcome.value;
}

/** The sentence with which an edit is refused. */
export function refusal(keymap: Keymap, edit: Edit): string {
  const outcome = applyEdit(keymap, edit);
  if (outcome.ok) throw new Error(`made: ${outcome.value.title}`);
  return outcome.problem;
}
