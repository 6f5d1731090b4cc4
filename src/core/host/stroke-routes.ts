import type { Code } from '../keymap/codes.ts';
import { type ComposeTable, type Composition, canonicalCompositions, composeWith } from './compose.ts';
import type { Stroke } from './host-layout.ts';
import { COMMON_TYPING_CODES, TYPING_CODES } from './typing-codes.ts';

type Route = readonly Stroke[];
type StrokesByOutput = ReadonlyMap<string, readonly Stroke[]>;

const ORDER: ReadonlyMap<Code, number> = new Map(TYPING_CODES.map((code, at) => [code, at]));
const COMMON: ReadonlySet<Code> = new Set(COMMON_TYPING_CODES);

/** Characters that stand for keys: what a text holds where Enter or Tab was pressed. */
const CONTROL_CHARACTERS: ReadonlyMap<string, readonly Route[]> = new Map([
  ['\n', [[{ code: 'Enter', with: [] }]]],
  ['\t', [[{ code: 'Tab', with: [] }]]],
]);

function compareRoutes(one: Route, other: Route): number {
  const uncommon = (route: Route) => route.filter((stroke) => !COMMON.has(stroke.code)).length;
  const modifiers = (route: Route) => route.reduce((sum, stroke) => sum + stroke.with.length, 0);
  const costs =
    one.length - other.length || uncommon(one) - uncommon(other) || modifiers(one) - modifiers(other);
  if (costs !== 0) return costs;
  for (const [at, stroke] of one.entries()) {
    const place = (code: Code | undefined) => (code === undefined ? -1 : (ORDER.get(code) ?? ORDER.size));
    const difference = place(stroke.code) - place(other[at]?.code);
    if (difference !== 0) return difference;
  }
  return 0;
}

/** The table turned round: each character and the sequences that compose to it. Shared by all hosts of one table. */
const turned = new WeakMap<ComposeTable, ReadonlyMap<string, readonly Composition[]>>();

function compositionsOf(table: ComposeTable): ReadonlyMap<string, readonly Composition[]> {
  const known = turned.get(table);
  if (known !== undefined) return known;
  const byResult = new Map<string, Composition[]>();
  for (const [names, row] of Object.entries(table)) {
    const dead = names.split(' ');
    for (const [next, result] of Object.entries(row)) {
      const list = byResult.get(result);
      if (list === undefined) byResult.set(result, [{ dead, next }]);
      else list.push({ dead, next });
    }
  }
  turned.set(table, byResult);
  return byResult;
}

/** Every way to press one stroke for each of the outputs, in turn. */
function sequences(outputs: readonly string[], strokes: StrokesByOutput): readonly Route[] {
  return outputs.reduce<readonly Route[]>(
    (routes, output) =>
      routes.flatMap((route) => (strokes.get(output) ?? []).map((stroke) => [...route, stroke])),
    [[]],
  );
}

function deadRoutes(char: string, strokes: StrokesByOutput, table: ComposeTable): readonly Route[] {
  const listed = compositionsOf(table).get(char) ?? [];
  const canonical = canonicalCompositions(char).filter(
    ({ dead, next }) =>
      !Object.hasOwn(table[dead.join(' ')] ?? {}, next) &&
      composeWith(table, dead, next) === char &&
      staysOpen(dead, table),
  );
  return [...listed, ...canonical].flatMap(({ dead, next }) => sequences([...dead, next], strokes));
}

/** Whether a sequence of dead keys stays open to its end: the first two must not compose to something by themselves. */
function staysOpen(dead: readonly string[], table: ComposeTable): boolean {
  const [first, second] = dead;
  return first === undefined || second === undefined || composeWith(table, [first], second) === undefined;
}

/**
 * How characters are typed, see `HostLayout.routesOf`. The strokes are asked for at the first character, and each
 * character is worked out once.
 */
export function routeFinder(
  strokesOf: () => StrokesByOutput,
  table: ComposeTable,
): (char: string) => readonly Route[] {
  const found = new Map<string, readonly Route[]>(CONTROL_CHARACTERS);
  let strokes: StrokesByOutput | undefined;
  let hasDeadKeys = false;
  return (char) => {
    const known = found.get(char);
    if (known !== undefined) return known;
    if (strokes === undefined) {
      strokes = strokesOf();
      hasDeadKeys = [...strokes.keys()].some((output) => output.startsWith('dead_'));
    }
    const single = char.startsWith('dead_') ? [] : (strokes.get(char) ?? []).map((stroke) => [stroke]);
    const composed = hasDeadKeys ? deadRoutes(char, strokes, table) : [];
    const routes = [...single, ...composed].sort(compareRoutes);
    found.set(char, routes);
    return routes;
  };
}
