import type { KeyEvent } from '../core/base/key-event.ts';
import { codeName } from '../core/host/code-names.ts';
import { type Need, needText } from '../core/keymap/need.ts';
import type { Keymap } from '../core/keymap/types.ts';
import { describeSteps } from '../core/routes/describe.ts';
import type { Cost, NeedRoute } from '../core/routes/types.ts';
import { plainTable } from './plain-table.ts';

/** How a need stands on a design, as `check --json` and `route --json` say it; cost is null where there is no route. */
export interface NeedReport {
  readonly need: string;
  readonly reachable: boolean;
  readonly clumsy: boolean;
  readonly cost: Cost | null;
  readonly steps: readonly string[];
  /** Presses that the engine turns into exactly the need. */
  readonly events: readonly KeyEvent[];
}

/** One report a need, in the order given. */
export function needReports(keymap: Keymap, needs: readonly NeedRoute[]): readonly NeedReport[] {
  return needs.map(({ need, route }) => ({
    need: needText(need),
    reachable: route !== null,
    clumsy: route?.clumsy ?? false,
    cost: route === null ? null : costOf(route.cost),
    steps: route === null ? [] : describeSteps(keymap, route),
    events: route?.events ?? [],
  }));
}

function costOf({ strokes, presses, holds, waitMs }: Cost): Cost {
  return { strokes, presses, holds, waitMs };
}

/** Needs as a table for people: what, how it stands, what it costs, how it is typed. */
export function needTable(needs: readonly NeedRoute[], reports: readonly NeedReport[]): string {
  const heading = ['need', '', 'strokes', 'presses', 'holds', 'wait ms', 'how'];
  const rows = reports.map((report, at) => {
    const need = needs[at]?.need;
    const name = need === undefined ? report.need : needWords(need);
    if (report.cost === null) return [name, 'MISSING', '', '', '', '', ''];
    const { strokes, presses, holds, waitMs } = report.cost;
    const numbers = [strokes, presses, holds, Math.round(waitMs)].map(String);
    return [name, report.clumsy ? 'clumsy' : '', ...numbers, report.steps.join(', ')];
  });
  return plainTable([heading, ...rows]);
}

/** A need as a person reads it: the character, the key's name, the shortcut with its key's name. */
export function needWords(need: Need): string {
  if (need.kind === 'char') return need.char === ' ' ? 'space' : need.char;
  if (need.kind === 'key') return codeName(need.code);
  return [...need.modifiers, codeName(need.code)].join('+');
}
