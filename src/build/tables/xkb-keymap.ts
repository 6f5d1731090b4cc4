/** One row of a key type: with exactly these modifiers down, that level; `preserve` are the ones it leaves to others. */
interface TypeRow {
  readonly mods: ReadonlySet<string>;
  readonly level: number;
  readonly preserve: ReadonlySet<string>;
}

/** How modifiers choose a level: the modifiers a type looks at, and its rows. A combination without a row is level 1. */
export interface KeyType {
  readonly mods: ReadonlySet<string>;
  readonly rows: readonly TypeRow[];
}

/** A key's keysym names by level; `type` is undefined where XKB leaves the choice to its automatic rule. */
export interface XkbKey {
  readonly type: string | undefined;
  readonly symbols: readonly string[];
}

/** What is read of a compiled XKB keymap: its first group only. */
export interface XkbKeymap {
  readonly title: string;
  readonly types: ReadonlyMap<string, KeyType>;
  /** By evdev code, which is the XKB key code less 8. */
  readonly keys: ReadonlyMap<number, XkbKey>;
}

const KEYCODE = /^\s*<(\S+)>\s*= (\d+);$/gm;
const TYPE = /type "([^"]+)" \{([^}]*)\}/g;
const MAP = /\bmap\[([^\]]+)\]\s*= (\d+);/g;
const PRESERVE = /\bpreserve\[([^\]]+)\]\s*= ([^;]+);/g;
const KEY = /key <(\S+)>\s*\{([^}]*)\}/g;

function modifierSet(text: string): ReadonlySet<string> {
  return new Set(text.split('+').filter((name) => name !== 'none'));
}

function readType(body: string): KeyType {
  const mods = modifierSet(/\bmodifiers\s*= ([^;]+);/.exec(body)?.[1] ?? 'none');
  const kept = new Map([...body.matchAll(PRESERVE)].map(([, when = '', what = '']) => [when, what]));
  const rows = [...body.matchAll(MAP)].map(([, when = '', level]) => ({
    mods: modifierSet(when),
    level: Number(level),
    preserve: modifierSet(kept.get(when) ?? 'none'),
  }));
  return { mods, rows };
}

function readKey(body: string): XkbKey {
  const lists = [...body.matchAll(/\[([^\]]*)\]/g)].map((match) => match[1] ?? '');
  // In the long form the first bracket is the word Group1 of `symbols[Group1]= [ … ]`.
  const symbols = lists.find((list) => list !== 'Group1') ?? '';
  return {
    type: /\btype(?:\[Group1\])?\s*= "([^"]+)"/.exec(body)?.[1],
    symbols: symbols.split(',').map((name) => name.trim()),
  };
}

/** Reads what `xkbcli compile-keymap` prints. Throws where it prints something else. */
export function readXkbKeymap(text: string): XkbKeymap {
  const codes = new Map([...text.matchAll(KEYCODE)].map(([, name = '', code]) => [name, Number(code) - 8]));
  const types = new Map([...text.matchAll(TYPE)].map(([, name = '', body = '']) => [name, readType(body)]));
  const keys = new Map<number, XkbKey>();
  for (const [, name = '', body = ''] of text.slice(text.indexOf('xkb_symbols')).matchAll(KEY)) {
    const code = codes.get(name);
    if (code === undefined) throw new Error(`XKB key <${name}> has no key code`);
    keys.set(code, readKey(body));
  }
  const title = /name\[Group1\]="([^"]+)"/.exec(text)?.[1];
  if (title === undefined || types.size === 0 || keys.size === 0) {
    throw new Error('xkbcli compile-keymap printed no keymap with a named first group, types and keys');
  }
  return { title, types, keys };
}
