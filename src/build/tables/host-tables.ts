import { execFileSync } from 'node:child_process';
import type { HostTable } from '../../core/host/host-table.ts';
import { KEY_NUMBERS } from '../../core/host/key-codes.ts';
import { TYPING_CODES } from '../../core/host/typing-codes.ts';
import { type Code, MODIFIERS, type Modifier } from '../../core/keymap/codes.ts';
import { type ComposeSequence, composeTable } from './compose-file.ts';
import type { KeysymTable } from './keysyms.ts';
import { readXkbKeymap, type XkbKey, type XkbKeymap } from './xkb-keymap.ts';
import { symbolAt } from './xkb-level.ts';

/** Modifiers on in each of a row's combinations, as XKB names them. */
const COMBINATION_MODS: readonly ReadonlySet<string>[] = [false, true].flatMap((caps) =>
  [false, true].flatMap((level3) =>
    [false, true].map(
      (shift) =>
        new Set([...(shift ? ['Shift'] : []), ...(level3 ? ['LevelThree'] : []), ...(caps ? ['Lock'] : [])]),
    ),
  ),
);

function keyOf(keymap: XkbKeymap, code: Code): XkbKey | undefined {
  const { evdev } = KEY_NUMBERS[code];
  return evdev === null ? undefined : keymap.keys.get(evdev);
}

/** The modifier whose key gives ISO_Level3_Shift on every level; Shift held first must not turn it into something else. */
function level3Of(keymap: XkbKeymap): Modifier | null {
  const choosers = MODIFIERS.filter((code) => {
    const symbols = keyOf(keymap, code)?.symbols ?? [];
    return symbols.length > 0 && symbols.every((symbol) => symbol === 'ISO_Level3_Shift');
  });
  return choosers.find((code) => code === 'AltRight') ?? choosers[0] ?? null;
}

function outputText(symbol: string, capitals: boolean, keysyms: KeysymTable): string {
  return capitals && !symbol.startsWith('dead_') ? keysyms.capitalOf(symbol) : keysyms.outputOf(symbol);
}

/** A row, or null where the key gives no character or what it gives hangs on Num Lock. */
function rowOf(
  key: XkbKey,
  keymap: XkbKeymap,
  level3: Modifier | null,
  keysyms: KeysymTable,
): string[] | null {
  const read = (mods: ReadonlySet<string>) => {
    const { symbol, capitals } = symbolAt(key, mods, keymap, keysyms);
    return outputText(symbol, capitals, keysyms);
  };
  const row: string[] = [];
  for (const mods of COMBINATION_MODS) {
    const reachable = level3 !== null || !mods.has('LevelThree');
    const output = reachable ? read(mods) : '';
    if (reachable && read(new Set([...mods, 'NumLock'])) !== output) return null;
    row.push(output);
  }
  return row.some((output) => output !== '') ? row : null;
}

/** Compiles one XKB layout into a host table. Throws where this XKB does not have the layout. */
export function hostTable(
  layout: string,
  variant: string,
  compose: readonly ComposeSequence[],
  keysyms: KeysymTable,
): HostTable {
  const args = ['compile-keymap', '--layout', layout, '--variant', variant];
  const text = execFileSync('xkbcli', args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
  const keymap = readXkbKeymap(text);
  const level3 = level3Of(keymap);
  const keys: Partial<Record<Code, string[]>> = {};
  for (const code of TYPING_CODES) {
    const key = keyOf(keymap, code);
    const row = key === undefined ? null : rowOf(key, keymap, level3, keysyms);
    if (row !== null) keys[code] = row;
  }
  const outputs = new Set(
    Object.values(keys)
      .flat()
      .filter((text) => text !== ''),
  );
  return {
    layout,
    variant,
    title: keymap.title,
    level3,
    keys,
    compose: composeTable(compose, outputs, keysyms),
  };
}
