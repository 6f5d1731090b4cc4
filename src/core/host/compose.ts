/** Sequences of dead keys (joined by a space), and what each makes of the character or dead key that comes next. */
export type ComposeTable = Readonly<Record<string, Readonly<Record<string, string>>>>;

/** The combining mark that each dead key stands for (X11 keysym names, Unicode combining marks). */
const MARKS: Readonly<Record<string, string>> = {
  dead_grave: '\u0300',
  dead_acute: '\u0301',
  dead_circumflex: '\u0302',
  dead_tilde: '\u0303',
  dead_macron: '\u0304',
  dead_breve: '\u0306',
  dead_abovedot: '\u0307',
  dead_diaeresis: '\u0308',
  dead_hook: '\u0309',
  dead_abovering: '\u030a',
  dead_doubleacute: '\u030b',
  dead_caron: '\u030c',
  dead_doublegrave: '\u030f',
  dead_invertedbreve: '\u0311',
  dead_abovecomma: '\u0313',
  dead_abovereversedcomma: '\u0314',
  dead_horn: '\u031b',
  dead_belowdot: '\u0323',
  dead_belowdiaeresis: '\u0324',
  dead_belowring: '\u0325',
  dead_belowcomma: '\u0326',
  dead_cedilla: '\u0327',
  dead_ogonek: '\u0328',
  dead_belowcircumflex: '\u032d',
  dead_belowbreve: '\u032e',
  dead_belowtilde: '\u0330',
  dead_belowmacron: '\u0331',
  dead_iota: '\u0345',
};

/** The dead keys that Unicode's canonical composition has marks for, by their XKB names. */
export const DEAD_KEYS: readonly string[] = Object.keys(MARKS);

const DEAD_OF_MARK: ReadonlyMap<string, string> = new Map(
  Object.entries(MARKS).map(([dead, mark]) => [mark, dead]),
);

/**
 * What Unicode canonical composition makes of dead keys and a character: the mark of the last dead key nearest to
 * the letter. Undefined where Unicode has no single character for it.
 */
export function canonicalCompose(dead: readonly string[], next: string): string | undefined {
  if ([...next].length !== 1) return undefined;
  let marks = '';
  for (const name of dead) {
    const mark = MARKS[name];
    if (mark === undefined) return undefined;
    marks = mark + marks;
  }
  const composed = (next + marks).normalize('NFC');
  return [...composed].length === 1 ? composed : undefined;
}

/** What a sequence of dead keys makes of a character or dead key: the table's answer, else Unicode's. */
export function composeWith(table: ComposeTable, dead: readonly string[], next: string): string | undefined {
  const listed = table[dead.join(' ')];
  if (listed !== undefined && Object.hasOwn(listed, next)) return listed[next];
  return canonicalCompose(dead, next);
}

/** A way to compose a character: the dead keys, then a character or one more dead key. */
export interface Composition {
  readonly dead: readonly string[];
  readonly next: string;
}

/** Candidates out of Unicode's decomposition, one and two dead keys; whoever asks checks them with `composeWith`. */
export function canonicalCompositions(char: string): readonly Composition[] {
  const [base = '', ...marks] = [...char.normalize('NFD')];
  const found: Composition[] = [];
  const without = (...left: readonly number[]) =>
    (base + marks.filter((_, at) => !left.includes(at)).join('')).normalize('NFC');
  marks.forEach((mark, one) => {
    const last = DEAD_OF_MARK.get(mark);
    if (last === undefined) return;
    found.push({ dead: [last], next: without(one) });
    marks.forEach((other, two) => {
      const first = DEAD_OF_MARK.get(other);
      if (two !== one && first !== undefined) found.push({ dead: [first, last], next: without(one, two) });
    });
  });
  return found;
}
