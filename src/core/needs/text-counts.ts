/**
 * How often each character and each pair of neighbouring characters stands in a text. Characters are grapheme clusters
 * in NFC; a line break is one character, "\n", whatever the file writes for it.
 */
export interface TextCounts {
  /** Characters in all. */
  readonly total: number;
  readonly chars: ReadonlyMap<string, number>;
  /** Keyed by the two characters, one after the other. */
  readonly pairs: ReadonlyMap<string, ReadonlyMap<string, number>>;
}

/** Takes a text piece by piece; pairs across the seam of two pieces count. */
export interface TextCounter {
  add(piece: string): void;
  /** A break between two texts: no pair spans it. */
  endText(): void;
  counts(): TextCounts;
}

const NONE = -1;
/** Only here can a cluster be longer than a code point: marks, joiners, regional indicators, emoji modifiers, conjoining jamo. */
const MAY_CLUSTER = /\u200d|[\p{M}\u{1F1E6}-\u{1F1FF}\u{1F3FB}-\u{1F3FF}\u1100-\u11ff]/u;
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** A counter for a text of any size: about one table look-up a character, and clusters only where a line can hold any. */
export function createTextCounter(): TextCounter {
  const indexOf = new Map<string, number>();
  const names: string[] = [];
  /** Index by UTF-16 unit, for the characters that are one unit long. */
  const indexOfUnit = new Int32Array(0x10000).fill(NONE);
  let single = new Float64Array(256);
  const pairCounts: Float64Array<ArrayBuffer>[] = [];
  let previous = NONE;
  let carriedReturn = false;

  function register(char: string): number {
    const known = indexOf.get(char);
    if (known !== undefined) return known;
    const index = names.length;
    indexOf.set(char, index);
    names.push(char);
    if (char.length === 1) indexOfUnit[char.charCodeAt(0)] = index;
    if (index >= single.length) single = grown(single, index);
    pairCounts.push(new Float64Array(64));
    return index;
  }

  function count(index: number): void {
    single[index] = (single[index] ?? 0) + 1;
    if (previous !== NONE) {
      let row = pairCounts[previous] ?? new Float64Array(64);
      if (index >= row.length) {
        row = grown(row, index);
        pairCounts[previous] = row;
      }
      row[index] = (row[index] ?? 0) + 1;
    }
    previous = index;
  }

  function addPlain(line: string): void {
    for (let at = 0; at < line.length; at++) {
      const unit = line.charCodeAt(at);
      if (unit >= 0xd800 && unit < 0xe000) {
        const char = String.fromCodePoint(line.codePointAt(at) ?? unit);
        at += char.length - 1;
        count(register(char));
        continue;
      }
      const index = indexOfUnit[unit] ?? NONE;
      count(index === NONE ? register(String.fromCharCode(unit)) : index);
    }
  }

  return {
    add(piece) {
      const whole = (carriedReturn ? `\r${piece}` : piece).normalize('NFC');
      carriedReturn = whole.endsWith('\r');
      const text = (carriedReturn ? whole.slice(0, -1) : whole).replace(/\r\n?/g, '\n');
      if (!MAY_CLUSTER.test(text)) {
        addPlain(text);
        return;
      }
      for (const line of text.split(/(?<=\n)/)) {
        if (!MAY_CLUSTER.test(line)) addPlain(line);
        else for (const { segment } of graphemes.segment(line)) count(register(segment));
      }
    },
    endText() {
      if (carriedReturn) addPlain('\n');
      carriedReturn = false;
      previous = NONE;
    },
    counts() {
      const chars = new Map(names.map((name, index) => [name, single[index] ?? 0]));
      const pairs = new Map(names.map((name, index) => [name, namedRow(pairCounts[index], names)]));
      let total = 0;
      for (const count of chars.values()) total += count;
      return { total, chars, pairs };
    },
  };
}

function grown(array: Float64Array<ArrayBuffer>, index: number): Float64Array<ArrayBuffer> {
  const larger = new Float64Array(Math.max(index + 1, array.length * 2));
  larger.set(array);
  return larger;
}

function namedRow(row: Float64Array | undefined, names: readonly string[]): ReadonlyMap<string, number> {
  const named = new Map<string, number>();
  row?.forEach((count, index) => {
    const name = names[index];
    if (count > 0 && name !== undefined) named.set(name, count);
  });
  return named;
}
