import { applyEdit } from '../keymap/apply-edit.ts';
import type { Edit } from '../keymap/edit.ts';
import { type Facts, reachFacts } from './facts.ts';
import type { Mend } from './find.ts';

/** Candidates looked at before a mend is given up. */
const MOST_TRIED = 4;

type Reached = Pick<Facts, 'grid' | 'chords' | 'reach'>;

/** The first of some mends that does no harm to what can be reached, null where none of the first few does. */
export function firstHarmless(facts: Facts, mends: Iterable<Mend>): Mend | null {
  let tried = 0;
  for (const mend of mends) {
    if (tried++ === MOST_TRIED) break;
    if (isHarmless(facts, mend.edits)) return mend;
  }
  return null;
}

/**
 * Whether edits leave all layers, places and chords within reach that were, every layer with its way back, and nothing
 * out of reach on what they bind or open. Says nothing about needs: their routes are not looked for again.
 */
export function isHarmless(facts: Facts, edits: readonly Edit[]): boolean {
  const outcome = applyEdit(facts.keymap, { edit: 'several', title: '', edits: [...edits] });
  if (!outcome.ok) return false;
  const after = reachFacts(outcome.value.keymap);
  return layersStand(facts, after) && placesStand(facts, after) && chordsStand(facts, after);
}

function layersStand(before: Reached, after: Reached): boolean {
  const stuck = new Set(before.reach.stuck.map(({ layer }) => layer));
  return (
    (before.reach.entered & ~after.reach.entered) === 0 &&
    after.reach.stuck.every(({ layer }) => stuck.has(layer))
  );
}

/** A place that was out of reach on an entered layer may stay so; what is new or on a newly opened layer may not be. */
function placesStand(before: Reached, after: Reached): boolean {
  return after.grid.bound.every((bound, key) => {
    const unreached = bound & ~(after.reach.reached[key] ?? 0) & after.reach.entered;
    const wereBound = before.grid.bound[key] ?? 0;
    const wereUnreached = wereBound & ~(before.reach.reached[key] ?? 0) & before.reach.entered;
    return (unreached & ~wereUnreached) === 0;
  });
}

function chordsStand(before: Reached, after: Reached): boolean {
  const opened = after.reach.entered & ~before.reach.entered;
  const fired = new Map(
    before.chords.map(({ chord, order }) => [chord.id, before.reach.fires[order] === true]),
  );
  return after.chords.every(
    ({ chord, order, live }) =>
      after.reach.fires[order] === true || (fired.get(chord.id) !== true && (live & opened) === 0),
  );
}
