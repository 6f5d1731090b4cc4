import { execFileSync } from 'node:child_process';

/** Keysym values that are no character: function keys, modifiers, ISO keys, terminals' keys (X11 protocol, appendix A). */
const FIRST_FUNCTION = 0xfd00;
const LAST_FUNCTION = 0xffff;
const FIRST_VENDOR = 0x1000_0000;
/** Number pad keysyms 0xffaa to 0xffbd are ASCII codes with 0xff80 added (X11 protocol, appendix A). */
const PAD_OFFSET = 0xff80;
const UNICODE_OFFSET = 0x0100_0000;

/** Blocks in which a keysym older than Unicode may have its character. */
const LEGACY_BLOCKS: readonly (readonly [number, number])[] = [
  [0x20, 0x7e],
  [0xa0, 0x24f],
  [0x2b0, 0x2ff],
  [0x370, 0x5ff],
  [0x600, 0x6ff],
  [0xe00, 0xe7f],
  [0x1e00, 0x1eff],
  [0x2000, 0x27ff],
  [0x3000, 0x30ff],
];

const KEYSYM_LINE = /^keysym: (\S+) \((0x[0-9a-f]+)\)/;

function askXkb(args: readonly string[]): { name: string; value: number } | null {
  const text = execFileSync('xkbcli', ['how-to-type', ...args], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
  });
  const [, name, value] = KEYSYM_LINE.exec(text) ?? [];
  return name === undefined ? null : { name, value: Number(value) };
}

/** Keysym names and the characters they stand for, as libxkbcommon has them. */
export class KeysymTable {
  readonly #legacy = new Map<string, string>();
  readonly #asked = new Map<string, string>();
  readonly #dead = new Map<string, string>();

  /** Asks for the name of each character once: keysyms older than Unicode cannot be computed. Takes some seconds. */
  constructor() {
    for (const [first, last] of LEGACY_BLOCKS) {
      for (let point = first; point <= last; point++) {
        const keysym = askXkb([`0x${point.toString(16)}`]);
        if (keysym !== null) this.#legacy.set(keysym.name, String.fromCodePoint(point));
      }
    }
  }

  /** The character of a keysym, '' for one that is no character. Throws for a name that XKB does not know. */
  charOf(name: string): string {
    if (name === 'NoSymbol' || name === 'VoidSymbol') return '';
    const known = this.#legacy.get(name) ?? this.#asked.get(name);
    if (known !== undefined) return known;
    const char = this.#ask(name);
    this.#asked.set(name, char);
    return char;
  }

  #ask(name: string): string {
    const keysym = askXkb(['--keysym', name]);
    if (keysym === null) throw new Error(`XKB knows no keysym ${name}`);
    const canonical = this.#legacy.get(keysym.name);
    if (canonical !== undefined) return canonical;
    const { value } = keysym;
    if (value >= UNICODE_OFFSET && value < FIRST_VENDOR) return String.fromCodePoint(value - UNICODE_OFFSET);
    if (value >= 0xffaa && value <= 0xffbd) return String.fromCharCode(value - PAD_OFFSET);
    if (value >= FIRST_VENDOR || (value >= FIRST_FUNCTION && value <= LAST_FUNCTION)) return '';
    throw new Error(`no character is known for keysym ${name} (${value.toString(16)})`);
  }

  /** The character of a keysym, or the name of a dead key as XKB writes it (several names can mean one key), or ''. */
  outputOf(name: string): string {
    if (!name.startsWith('dead_')) return this.charOf(name);
    const known = this.#dead.get(name) ?? askXkb(['--keysym', name])?.name;
    if (known === undefined) throw new Error(`XKB knows no keysym ${name}`);
    this.#dead.set(name, known);
    return known;
  }

  /** The character under Caps Lock where the key's type leaves capitals to be made. */
  capitalOf(name: string): string {
    const char = this.charOf(name);
    return UNCASED.has(name) ? char : (CAPITALS[char] ?? simpleCapital(char));
  }

  /** Whether the first keysym is a small letter and the second a capital; not necessarily of the same letter. */
  isLetterPair(lower: string, upper: string): boolean {
    const capital = this.charOf(upper);
    return this.capitalOf(lower) !== this.charOf(lower) && capital.toLowerCase() !== capital;
  }
}

/** Keysyms that XKB leaves as they are though Unicode has a capital of their character. */
const UNCASED: ReadonlySet<string> = new Set(['function', 'idotless']);
/** Capitals that XKB makes though Unicode's one-to-one mapping has none. */
const CAPITALS: Readonly<Record<string, string>> = { ß: 'ẞ' };

function simpleCapital(char: string): string {
  const upper = char.toUpperCase();
  return [...upper].length === 1 ? upper : char;
}
