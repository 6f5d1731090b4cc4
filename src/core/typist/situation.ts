import { type Contexts, contextsOf } from './contexts.ts';
import { type Kinds, kindsOf } from './kinds.ts';
import { Model } from './model.ts';
import type { Person } from './person.ts';
import type { PressRuns } from './press-runs.ts';

/** A text on a design and the typists who type it; made once, asked for every chord and hold. */
export interface Situation {
  readonly runs: PressRuns;
  readonly kinds: Kinds;
  readonly contexts: Contexts;
  readonly model: Model;
}

const indexed = new WeakMap<PressRuns, Pick<Situation, 'kinds' | 'contexts'>>();
const models = new WeakMap<Person, Model>();

/** Puts text, design and typists together; what depends on one of them only is remembered with it. */
export function situationOf(runs: PressRuns, person: Person): Situation {
  let index = indexed.get(runs);
  if (index === undefined) {
    const kinds = kindsOf(runs);
    index = { kinds, contexts: contextsOf(runs, kinds) };
    indexed.set(runs, index);
  }
  const model = models.get(person) ?? new Model(person);
  models.set(person, model);
  return { runs, model, ...index };
}
