import type { Edit } from '../keymap/edit.ts';
import type { Keymap } from '../keymap/types.ts';

/**
 * The edit that brings an earlier state of a design back. The diary stays the present one: it tells of the use of the
 * design and is no part of its state.
 */
export function restoreEdit(present: Keymap, version: Keymap, title: string): Edit {
  const { diary: _, ...state } = version;
  const { diary } = present;
  return { edit: 'replace-design', title, keymap: { ...state, ...(diary ? { diary } : {}) } };
}
