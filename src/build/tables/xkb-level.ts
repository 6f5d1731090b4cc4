import type { KeysymTable } from './keysyms.ts';
import type { KeyType, XkbKey, XkbKeymap } from './xkb-keymap.ts';

/**
 * The type that libxkbcommon gives a key that states none (its "automatic types"): by the number of levels and by
 * whether the levels hold a letter and its capital.
 */
function automaticType(symbols: readonly string[], keysyms: KeysymTable): string {
  const isCased = (at: number) => keysyms.isLetterPair(symbols[at] ?? '', symbols[at + 1] ?? '');
  const isPad = symbols.slice(0, 2).some((name) => name.startsWith('KP_'));
  if (symbols.length <= 1) return 'ONE_LEVEL';
  if (symbols.length === 2) return isCased(0) ? 'ALPHABETIC' : isPad ? 'KEYPAD' : 'TWO_LEVEL';
  if (symbols.length <= 4) {
    if (isCased(0)) return isCased(2) ? 'FOUR_LEVEL_ALPHABETIC' : 'FOUR_LEVEL_SEMIALPHABETIC';
    return isPad ? 'FOUR_LEVEL_KEYPAD' : 'FOUR_LEVEL';
  }
  throw new Error(`no automatic type for a key of ${symbols.length} levels`);
}

function typeOf(key: XkbKey, keymap: XkbKeymap, keysyms: KeysymTable): KeyType {
  const name = key.type ?? automaticType(key.symbols, keysyms);
  const type = keymap.types.get(name);
  if (type === undefined) throw new Error(`XKB key type ${name} is not in the keymap`);
  return type;
}

function sameSet(one: ReadonlySet<string>, other: ReadonlySet<string>): boolean {
  return one.size === other.size && [...one].every((item) => other.has(item));
}

/**
 * The keysym name that a key gives while exactly these modifiers are on, and whether the capitals that Caps Lock
 * asks for are still to be made: they are where the type has not used Lock up itself.
 */
export function symbolAt(
  key: XkbKey,
  mods: ReadonlySet<string>,
  keymap: XkbKeymap,
  keysyms: KeysymTable,
): { readonly symbol: string; readonly capitals: boolean } {
  const type = typeOf(key, keymap, keysyms);
  const looked = new Set([...mods].filter((mod) => type.mods.has(mod)));
  const row = type.rows.find((candidate) => sameSet(candidate.mods, looked));
  const usesLock = type.mods.has('Lock') && row?.preserve.has('Lock') !== true;
  return {
    symbol: key.symbols[(row?.level ?? 1) - 1] ?? 'NoSymbol',
    capitals: mods.has('Lock') && !usesLock,
  };
}
