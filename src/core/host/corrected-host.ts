import type { Code } from '../keymap/codes.ts';
import type { Correction } from '../keymap/types.ts';
import type { HostTable } from './host-table.ts';

/** The combinations that a level stands for: Caps off, Caps on. See `HostTable.keys` for their order. */
const COMBINATIONS: Readonly<Record<Correction['level'], readonly [off: number, on: number]>> = {
  plain: [0, 4],
  shift: [1, 5],
  level3: [2, 6],
  'shift-level3': [3, 7],
};

const NO_OUTPUTS: readonly string[] = ['', '', '', '', '', '', '', ''];

/**
 * A host table with single keys read otherwise. With Caps Lock on, a corrected letter changes its case, as XKB's
 * alphabetic key types do; everything else stays what it is. A layout without a level 3 gets AltRight for it
 * as soon as a correction gives something there. A dead key composes as the table says where the layout has it, else
 * as Unicode's canonical composition does.
 */
export function correctedTable(table: HostTable, corrections: readonly Correction[]): HostTable {
  if (corrections.length === 0) return table;
  const keys: Partial<Record<Code, readonly string[]>> = { ...table.keys };
  for (const { code, level, gives } of corrections) {
    const [off, on] = COMBINATIONS[level];
    keys[code] = (keys[code] ?? NO_OUTPUTS).with(off, gives).with(on, otherCase(gives));
  }
  const level3 = corrections.some(({ level, gives }) => gives !== '' && level.endsWith('level3'));
  return { ...table, keys, level3: table.level3 ?? (level3 ? 'AltRight' : null) };
}

/** What a key gives at a level of a table with Caps Lock off, written as a correction would say it. */
export function tableGives(table: HostTable, code: Code, level: Correction['level']): string {
  return table.keys[code]?.[COMBINATIONS[level][0]] ?? '';
}

/** The letter of the other case, the text itself where there is none of one code point. */
function otherCase(text: string): string {
  if ([...text].length !== 1) return text;
  const other = text === text.toLowerCase() ? text.toUpperCase() : text.toLowerCase();
  return [...other].length === 1 ? other : text;
}
