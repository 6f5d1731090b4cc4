import { useBoardDrafts } from '../board-drafts.ts';
import { check } from '../check/check.ts';
import { practice } from '../practice/practice.ts';
import { versions } from '../versions/versions.ts';

/** Deletes for good what is kept of a design beside the design itself: whoever keeps something by design adds it here. */
export async function forgetDesign(id: string): Promise<void> {
  const keepers = [versions, useBoardDrafts, practice, check];
  await Promise.all(keepers.map((keeper) => keeper.getState().forget(id)));
}
