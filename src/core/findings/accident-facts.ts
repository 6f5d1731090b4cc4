import type { HostLayout } from '../host/host-layout.ts';
import type { Need } from '../keymap/need.ts';
import type { Keymap } from '../keymap/types.ts';
import type { RunCounts } from '../needs/counts-runs.ts';
import { needOfCharacter } from '../needs/text-needs.ts';
import { type Accidents, estimateAccidents } from '../typist/accidents.ts';
import type { Person } from '../typist/person.ts';
import { pressRunsOf } from '../typist/press-runs.ts';
import { type Situation, situationOf } from '../typist/situation.ts';
import type { AccidentLimits } from './accident-limits.ts';

/** What ordinary typing does to a design, for the rules that judge it: text and typist are the user's and not the design's. */
export interface AccidentFacts {
  readonly situation: Situation;
  readonly estimate: Accidents;
  readonly limits: AccidentLimits;
  /** The characters of the text as needs, in the order of their frequency. */
  readonly typed: readonly Need[];
}

/** The closed form on a design, with from where on it is worth a finding. */
export function accidentFacts(
  keymap: Keymap,
  host: HostLayout,
  counts: RunCounts,
  person: Person,
  limits: AccidentLimits,
): AccidentFacts {
  const runs = pressRunsOf(keymap, host, counts);
  const typed = (counts.after.get('') ?? []).map(({ char }) => needOfCharacter(char));
  return {
    situation: situationOf(runs, person),
    estimate: estimateAccidents(keymap, runs, person),
    limits,
    typed,
  };
}
