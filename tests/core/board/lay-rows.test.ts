import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ARRANGEMENTS } from '../../../src/core/board/arrangements.ts';
import { layArrangement, layLines } from '../../../src/core/board/lay-rows.ts';
import { parametricBoard } from '../../../src/core/board/parametric.ts';
import { READY_BOARDS } from '../../../src/core/board/ready-boards.ts';
import { boardRows } from '../../../src/core/board/rows.ts';
import { hostFromTable } from '../../../src/core/host/host-from-table.ts';
import { readHostTable } from '../../../src/core/host/host-table.ts';
import type { Code } from '../../../src/core/keymap/codes.ts';
import type { Board } from '../../../src/core/keymap/types.ts';

const boards = READY_BOARDS.map(
  (ready) => [ready.title, parametricBoard(ready.madeFrom, ready.title)] as const,
);

/** What each row says after laying, thumb row and keys left as they are as dots. */
function rowsOf(board: Board, taps: Readonly<Record<string, unknown>>): string[] {
  const char = (id: string) => {
    const action = taps[id];
    return action !== null && typeof action === 'object' && 'char' in action ? String(action.char) : '·';
  };
  return boardRows(board).map((row) => row.map(char).join(''));
}

const withoutDots = (rows: readonly string[]) =>
  rows.map((row) => row.replaceAll('·', '')).filter((row) => row !== '');

/** The keys of three rows of ten on a full keyboard, by code. */
const ROW_CODES: readonly (readonly Code[])[] = [
  ['KeyQ', 'KeyW', 'KeyE', 'KeyR', 'KeyT', 'KeyY', 'KeyU', 'KeyI', 'KeyO', 'KeyP'],
  ['KeyA', 'KeyS', 'KeyD', 'KeyF', 'KeyG', 'KeyH', 'KeyJ', 'KeyK', 'KeyL', 'Semicolon'],
  ['KeyZ', 'KeyX', 'KeyC', 'KeyV', 'KeyB', 'KeyN', 'KeyM', 'Comma', 'Period', 'Slash'],
];

describe('the standard arrangements are what XKB gives (tables written from Debian xkb-data)', () => {
  test.each([
    ['qwerty', 'us'],
    ['qwertz', 'de'],
    ['azerty', 'fr'],
    ['dvorak', 'us-dvorak'],
  ])('%s by %s', (id, file) => {
    const table = readHostTable(JSON.parse(readFileSync(`public/hosts/${file}.json`, 'utf8')));
    if (!table.ok) throw new Error(table.problem);
    const host = hostFromTable(table.value);
    const rows = ROW_CODES.map((codes) =>
      codes.map((code) => {
        const output = host.outputOf(code, { shift: false, level3: false, caps: false });
        return output.kind === 'char' ? output.char : '';
      }),
    );
    expect(rows.map((row) => row.join(''))).toEqual(ARRANGEMENTS.find((one) => one.id === id)?.rows);
  });
});

describe.each(boards)('on %s', (_, board) => {
  test.each(ARRANGEMENTS.map((one) => [one.title, one] as const))(
    '%s lies row by row',
    (_title, arrangement) => {
      expect(withoutDots(rowsOf(board, layArrangement(board, arrangement)))).toEqual(arrangement.rows);
    },
  );

  test('the index fingers rest on f and j', () => {
    const qwerty = ARRANGEMENTS.find((one) => one.id === 'qwerty');
    if (qwerty === undefined) throw new Error('no QWERTY');
    const taps = layArrangement(board, qwerty);
    const resting = board.keys.filter((key) => key.home && key.finger === 'index').map((key) => taps[key.id]);
    expect(resting).toEqual([
      { do: 'char', char: 'f' },
      { do: 'char', char: 'j' },
    ]);
  });
});

describe('pasted lines', () => {
  const board = boards.find(([title]) => title.includes('36'))?.[1];
  if (board === undefined) throw new Error('no board of 36 keys');

  test.each([
    ['a line as long as its row', 'abcdefghij', ['abcdefghij']],
    ['set apart by spaces', 'a b c d e  f g h i j', ['abcdefghij']],
    ['-- keeps a key', 'a -- c d e f g h i j', ['acdefghij']],
    ['a shorter even line goes to the inner columns', '123456', ['123456']],
    ['a shorter odd line goes from the left', '123', ['123']],
    ['an empty line leaves its row', '\nasdfghjkl;', ['asdfghjkl;']],
    ['line ends of any kind, and a last one', 'ab\r\ncd\r\n', ['ab', 'cd']],
    ['decomposed characters count as one', 'e\u0301u', ['\u00e9u']],
  ])('%s', (_, text, rows) => {
    const laid = layLines(board, text);
    expect(laid.ok && withoutDots(rowsOf(board, laid.value))).toEqual(rows);
  });

  test.each([
    ['', 'nothing to lay'],
    ['abcdefghijk', 'Line 1 has 11 characters, and its row 10 keys'],
    ['a\nb\nc\nd\ne', '5 lines, and the board has 4 rows'],
    ['ab cd', '"ab" where one character was expected'],
  ])('%j is refused: %s', (text, words) => {
    const laid = layLines(board, text);
    expect(!laid.ok && laid.problem).toContain(words);
  });
});
