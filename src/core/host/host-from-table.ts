import { CODES, type Code, type Modifier } from '../keymap/codes.ts';
import { composeWith } from './compose.ts';
import type { HostLayout, HostOutput, Level, Stroke } from './host-layout.ts';
import type { HostTable } from './host-table.ts';
import { routeFinder } from './stroke-routes.ts';

const NOTHING: HostOutput = Object.freeze({ kind: 'none' });

/** Where a level stands in a table row. */
function combinationOf(level: Level): number {
  return (level.shift ? 1 : 0) + (level.level3 ? 2 : 0) + (level.caps ? 4 : 0);
}

function outputFrom(text: string): HostOutput {
  if (text === '') return NOTHING;
  return Object.freeze(
    text.startsWith('dead_') ? { kind: 'dead', dead: text } : { kind: 'char', char: text },
  );
}

/** The modifiers that a stroke holds down for a combination without Caps: 0 none, 1 Shift, 2 level 3, 3 both. */
function heldFor(combination: number, level3: Modifier | null): readonly Modifier[] {
  const shift: readonly Modifier[] = combination & 1 ? ['ShiftLeft'] : [];
  return combination & 2 && level3 !== null ? [...shift, level3] : shift;
}

function rowsOf(table: HostTable): readonly (readonly [Code, readonly string[]])[] {
  return CODES.flatMap((code) => {
    const row = table.keys[code];
    return row === undefined ? [] : [[code, row] as const];
  });
}

/** Every stroke of the table by what it gives, Caps off; without strokes that hold a modifier that changes nothing. */
function strokesByOutput(table: HostTable): ReadonlyMap<string, readonly Stroke[]> {
  const strokes = new Map<string, Stroke[]>();
  const held = [0, 1, 2, 3].map((combination) => heldFor(combination, table.level3));
  for (const [code, row] of rowsOf(table)) {
    for (const [combination, modifiers] of held.entries()) {
      const text = row[combination] ?? '';
      const fewer = row
        .slice(0, combination)
        .some((other, at) => other === text && (at & combination) === at);
      if (text === '' || fewer) continue;
      const list = strokes.get(text);
      if (list === undefined) strokes.set(text, [{ code, with: modifiers }]);
      else list.push({ code, with: modifiers });
    }
  }
  return strokes;
}

/** A host layout from its table. What is looked up often is worked out once, at the first call. */
export function hostFromTable(table: HostTable): HostLayout {
  const outputs = new Map(rowsOf(table).map(([code, row]) => [code, row.map(outputFrom)] as const));
  const compose = (dead: readonly string[], next: string) => composeWith(table.compose, dead, next);
  return {
    layout: table.layout,
    variant: table.variant,
    level3: table.level3,
    outputOf: (code, level) => outputs.get(code)?.[combinationOf(level)] ?? NOTHING,
    compose,
    routesOf: routeFinder(() => strokesByOutput(table), table.compose),
  };
}
