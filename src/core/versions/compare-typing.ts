import type { HostLayout } from '../host/host-layout.ts';
import { type Need, needText } from '../keymap/need.ts';
import type { Keymap } from '../keymap/types.ts';
import type { RunCounts } from '../needs/counts-runs.ts';
import { needOfCharacter } from '../needs/text-needs.ts';
import { findRoutes } from '../routes/find-routes.ts';
import type { NeedRoute } from '../routes/types.ts';
import { estimateAccidents } from '../typist/accidents.ts';
import type { Person } from '../typist/person.ts';
import { pressRunsOf } from '../typist/press-runs.ts';
import { type AccidentChange, accidentChanges, type WithAccidents } from './accident-changes.ts';
import { type AccidentSum, accidentSum } from './accident-sum.ts';
import { type NeedChanges, needChanges } from './need-changes.ts';
import { type Relearning, relearning } from './relearning.ts';

/** A design, the host that it is typed on, and the needs that it asks for. */
export interface Typed {
  readonly keymap: Keymap;
  readonly host: HostLayout;
  readonly needs: readonly Need[];
}

/** What a change of the design does to typing. */
export interface TypingComparison {
  /** Over the needs of both designs, the later one's first. */
  readonly needs: NeedChanges;
  readonly accidents: {
    readonly before: AccidentSum;
    readonly after: AccidentSum;
    /** What single chords and holds have of it. */
    readonly changes: readonly AccidentChange[];
  };
  readonly relearning: Relearning;
}

/** Types the needs of both designs, and a text, on each. */
export function compareTyping(
  before: Typed,
  after: Typed,
  text: RunCounts,
  person: Person,
): TypingComparison {
  const needs = distinct([...after.needs, ...before.needs]);
  const letters = new Map((text.after.get('') ?? []).map(({ char, count }) => [char, count]));
  const asked = distinct([...needs, ...[...letters.keys()].map(needOfCharacter)]);
  const [was, is] = [before, after].map(({ keymap, host }) => findRoutes(keymap, host, asked));
  const estimated = ({ keymap, host }: Typed): WithAccidents => ({
    told: { keymap, host },
    accidents: estimateAccidents(keymap, pressRunsOf(keymap, host, text), person),
  });
  const accidents = { before: estimated(before), after: estimated(after) };
  return {
    needs: needChanges((was ?? []).slice(0, needs.length), (is ?? []).slice(0, needs.length)),
    accidents: {
      before: accidentSum(accidents.before.accidents),
      after: accidentSum(accidents.after.accidents),
      changes: accidentChanges(accidents.before, accidents.after),
    },
    relearning: relearning(
      letters,
      { board: before.keymap.board, routeOf: routeOf(was ?? []) },
      { board: after.keymap.board, routeOf: routeOf(is ?? []) },
    ),
  };
}

function distinct(needs: readonly Need[]): readonly Need[] {
  return [...new Map(needs.map((need) => [needText(need), need])).values()];
}

function routeOf(needs: readonly NeedRoute[]) {
  const routes = new Map(needs.map(({ need, route }) => [needText(need), route]));
  return (char: string) => routes.get(needText(needOfCharacter(char))) ?? null;
}
