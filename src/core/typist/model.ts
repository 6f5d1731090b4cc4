import { Dwells, type FingerNumber } from './dwells.ts';
import { Intervals, STEPS } from './intervals.ts';
import type { IntervalKind } from './pair-class.ts';
import type { Person } from './person.ts';

/** The tables of one population of typists; worked out when asked for and kept. */
export class Model {
  readonly person: Person;
  readonly intervals: Intervals;
  readonly dwells: Dwells;
  private readonly joint = new Map<number, readonly Float64Array[]>();

  constructor(person: Person) {
    this.person = person;
    this.intervals = new Intervals(person.parameters);
    this.dwells = new Dwells(this.intervals);
  }

  /** For each node, P(interval ≤ t and the first key is still down then) at t = 0, 2, 4 … ms. */
  together(kind: IntervalKind, first: FingerNumber): readonly Float64Array[] {
    const known = this.joint.get(kind * 16 + first);
    if (known !== undefined) return known;
    const down = this.dwells.table(first);
    const made = this.intervals.table(kind).map((within) => {
      const table = new Float64Array(STEPS);
      for (let step = 1; step < STEPS; step++) {
        const mass = (within[step] ?? 0) - (within[step - 1] ?? 0);
        table[step] = (table[step - 1] ?? 0) + (mass * ((down[step - 1] ?? 0) + (down[step] ?? 0))) / 2;
      }
      return table;
    });
    this.joint.set(kind * 16 + first, made);
    return made;
  }
}
