import { fail, ok, type Result } from '../base/result.ts';
import type { Action, Board, BoardKey, KeyId } from '../keymap/types.ts';
import type { Arrangement } from './arrangements.ts';
import { boardRows } from './rows.ts';

/** Taps by key, ready for filling a layer. */
export type Taps = Readonly<Record<KeyId, Action>>;

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });
/** Stands for a key that keeps what it has, in a line whose characters are set apart by spaces. */
const KEEP = '--';

/**
 * Lays a standard arrangement onto the five inner columns of each hand, its middle row on the row of the home keys.
 * Letters for which the board has no key are left out.
 */
export function layArrangement(board: Board, arrangement: Arrangement): Taps {
  const rows = boardRows(board).map((ids) => keysOf(board, ids));
  const homeRow = rows.findIndex((keys) => keys.some((key) => key.home && key.finger !== 'thumb'));
  const taps: Record<KeyId, Action> = {};
  arrangement.rows.forEach((line, index) => {
    const keys = rows[Math.max(homeRow, 1) - 1 + index] ?? [];
    if (keys.every((key) => key.finger === 'thumb')) return;
    layHalves(keys, [...line], taps);
  });
  return taps;
}

/**
 * Lays pasted lines onto the board's rows from the top, thumb keys last. A line is a run of characters, or characters
 * set apart by spaces, among which `--` leaves its key as it is. A line as long as its row goes key by key; a shorter
 * one of even length goes half to each hand, along the inner columns; any other from the left.
 * The problem is a sentence that names the line.
 */
export function layLines(board: Board, text: string): Result<Taps, string> {
  const lines = text.replace(/\r\n?/g, '\n').split('\n').map(tokensOf);
  while (lines.at(-1)?.length === 0) lines.pop();
  const rows = boardRows(board).map((ids) => keysOf(board, ids));
  if (lines.length === 0)
    return fail('There is nothing to lay: expected one line of characters for each row.');
  if (lines.length > rows.length) {
    return fail(`There are ${lines.length} lines, and the board has ${rows.length} rows.`);
  }
  const taps: Record<KeyId, Action> = {};
  for (const [index, tokens] of lines.entries()) {
    const problem = layLine(rows[index] ?? [], tokens, taps);
    if (problem !== null) return fail(`Line ${index + 1} ${problem}.`);
  }
  return ok(taps);
}

function layLine(keys: readonly BoardKey[], tokens: readonly string[], taps: Record<KeyId, Action>) {
  if (tokens.length > keys.length) {
    return `has ${tokens.length} characters, and its row ${keys.length} keys`;
  }
  const long = tokens.find((token) => token !== KEEP && [...graphemes.segment(token)].length > 1);
  if (long !== undefined) return `has ${JSON.stringify(long)} where one character was expected`;
  if (tokens.length < keys.length && tokens.length % 2 === 0) layHalves(keys, tokens, taps);
  else for (const [at, token] of tokens.entries()) lay(keys[at], token, taps);
  return null;
}

function tokensOf(line: string): readonly string[] {
  const words = line.normalize('NFC').trim().split(/\s+/u);
  if (words.length > 1) return words;
  return [...graphemes.segment(words[0] ?? '')].map(({ segment }) => segment);
}

/** Half of the characters to each hand, the ones at the middle of the line on the inner columns. */
function layHalves(keys: readonly BoardKey[], chars: readonly string[], taps: Record<KeyId, Action>): void {
  const half = chars.length / 2;
  const left = keys.filter((key) => key.hand === 'left');
  const right = keys.filter((key) => key.hand === 'right');
  for (const [at, char] of chars.entries()) {
    lay(at < half ? left[left.length - half + at] : right[at - half], char, taps);
  }
}

function lay(key: BoardKey | undefined, char: string, taps: Record<KeyId, Action>): void {
  if (key !== undefined && char !== KEEP) taps[key.id] = { do: 'char', char };
}

function keysOf(board: Board, ids: readonly KeyId[]): readonly BoardKey[] {
  return ids.flatMap((id) => board.keys.find((key) => key.id === id) ?? []);
}
