import { fail, ok, type Result } from '../base/result.ts';
import { keyName } from '../board/key-name.ts';
import { applyEdit } from '../keymap/apply-edit.ts';
import type { Edit } from '../keymap/edit.ts';
import { brokenReferences } from '../keymap/references.ts';
import type { Keymap, Layer } from '../keymap/types.ts';

/** A design without what named something that is not there, and in sentences what had to go. */
export interface Cleaned {
  readonly keymap: Keymap;
  readonly leftOut: readonly string[];
}

/**
 * Takes out whatever names a key or a layer that the design does not have, by the edits that delete keys and layers.
 * `known`: designs that tell what a missing layer was called.
 */
export function withoutMissing(keymap: Keymap, known: readonly Keymap[]): Result<Cleaned, string> {
  const broken = brokenReferences(keymap);
  const layers = new Set(broken.filter(({ names }) => names === 'layer').map(({ id }) => id));
  let now = keymap;
  const leftOut: string[] = [];
  const take = (edit: Edit): string | null => {
    const outcome = applyEdit(now, edit, keyName);
    if (!outcome.ok) return outcome.problem;
    now = outcome.value.keymap;
    leftOut.push(...outcome.value.alongside);
    return null;
  };
  for (const id of layers) {
    const problem =
      take({ edit: 'add-layer', layer: stubOf(id, known) }) ?? take({ edit: 'delete-layer', layer: id });
    if (problem !== null) return fail(`The two do not fit together: ${problem}`);
  }
  if (broken.some(({ names }) => names === 'key')) {
    const problem = take({ edit: 'set-board', board: now.board });
    if (problem !== null) return fail(`The two do not fit together: ${problem}`);
  }
  if (broken.some(({ names, at }) => names === 'chord' || at.where.startsWith('note'))) {
    const problem = take({ edit: 'replace-design', title: '', keymap: now });
    if (problem !== null) return fail(`The two do not fit together: ${problem}`);
  }
  return ok({ keymap: now, leftOut });
}

/** An empty layer for a moment, so that deleting it takes along all that names it. */
function stubOf(id: string, known: readonly Keymap[]): Layer {
  const named = known.flatMap(({ layers }) => layers).find((layer) => layer.id === id);
  return { id, name: named?.name ?? id, places: {} };
}
