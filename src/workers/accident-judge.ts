import { accidentFacts } from '../core/findings/accident-facts.ts';
import type { AccidentLimits } from '../core/findings/accident-limits.ts';
import { type Facts, factsOf } from '../core/findings/facts.ts';
import type { Finding } from '../core/findings/find.ts';
import { findAccidents } from '../core/findings/find-all.ts';
import { type LetterProtections, protectLetters } from '../core/findings/letter-protections.ts';
import { hostFromTable } from '../core/host/host-from-table.ts';
import type { HostLayout } from '../core/host/host-layout.ts';
import type { HostTable } from '../core/host/host-table.ts';
import type { Need } from '../core/keymap/need.ts';
import type { Chord, Keymap, Place } from '../core/keymap/types.ts';
import type { RunCounts } from '../core/needs/counts-runs.ts';
import { type ChordStudy, studyChord } from '../core/typist/chord-study.ts';
import { type HoldStudy, studyHold } from '../core/typist/hold-study.ts';
import { type Overview, overviewOf } from '../core/typist/overview.ts';
import type { Person } from '../core/typist/person.ts';
import type { ProtectionWish } from '../core/typist/protections.ts';

/** A design and its typist; the text and the host layout are handed over once. */
export interface TypedDesign {
  /** The same number stands for the same design, typist, text and limits. */
  readonly number: number;
  readonly keymap: Keymap;
  /** What the design must type: mends that would hurt these are not offered. */
  readonly needs: readonly Need[];
  readonly person: Person;
  readonly limits: AccidentLimits;
}

/** What is asked of protections: rates per 1,000 words and per 1,000 uses. */
export type ProtectionAsked = Pick<ProtectionWish, 'most' | 'mostMisses'>;

/** What ordinary typing does to a design. */
export interface Judged {
  readonly overview: Overview;
  readonly findings: readonly Finding[];
  /** Share of the text's characters that the design cannot type. */
  readonly untypable: number;
}

/** Estimates accidents, away from the page. Before a text and a host layout have been handed over the answers are null. */
export class AccidentJudge {
  #counts: RunCounts | null = null;
  #host: HostLayout | null = null;
  #known: { readonly number: number; readonly facts: Facts } | null = null;
  readonly #persons = new Map<string, Person>();

  /** How the computer reads the keys from now on. */
  setHost(table: HostTable): void {
    this.#host = hostFromTable(table);
    this.#known = null;
  }

  /** The text that is typed from now on. */
  setText(counts: RunCounts): void {
    this.#counts = counts;
    this.#known = null;
  }

  /** All accidents of a design, and what there is to say about them. */
  judge(design: TypedDesign): Judged | null {
    const facts = this.#factsOf(design);
    if (facts === null || facts.accidents === null) return null;
    const { situation, estimate } = facts.accidents;
    return {
      overview: overviewOf(facts.keymap, situation, estimate),
      findings: findAccidents(facts),
      untypable: situation.runs.untypable,
    };
  }

  /** What every window of a chord would bring; it may be one that is still being made. */
  studyChord(design: TypedDesign, chord: Chord): ChordStudy | null {
    const facts = this.#factsOf(design);
    if (facts === null || facts.accidents === null) return null;
    return studyChord(facts.accidents.situation, facts.keymap, chord);
  }

  /** What every choice for a hold/tap key would bring. */
  studyHold(design: TypedDesign, place: Place): HoldStudy | null {
    const facts = this.#factsOf(design);
    if (facts === null || facts.accidents === null) return null;
    return studyHold(facts.accidents.situation, facts.keymap, place);
  }

  /** The fewest changes that bring the hold/tap letters under a rate. */
  protect(design: TypedDesign, wish: ProtectionAsked): LetterProtections | null {
    const facts = this.#factsOf(design);
    return facts === null || this.#counts === null ? null : protectLetters(facts, this.#counts, wish);
  }

  #factsOf({ number, keymap, needs, person, limits }: TypedDesign): Facts | null {
    const host = this.#host;
    if (this.#counts === null || host === null) return null;
    if (this.#known?.number === number) return this.#known.facts;
    const accidents = accidentFacts(keymap, host, this.#counts, this.#personLike(person), limits);
    const facts = factsOf(keymap, host, needs, undefined, accidents);
    this.#known = { number, facts };
    return facts;
  }

  /** What is worked out for a typist is kept with the object, and a message makes a new one each time. */
  #personLike(person: Person): Person {
    const name = JSON.stringify(person);
    const known = this.#persons.get(name) ?? person;
    if (this.#persons.size > 8) this.#persons.clear();
    this.#persons.set(name, known);
    return known;
  }
}
