import { describe, expect, test, vi } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import { readKeymap } from '../../../src/core/keymap/read.ts';
import { timeText } from '../../../src/ui/app/designs/time-text.ts';
import { DESKS, deskOf } from '../../../src/ui/app/desks.ts';
import { designItems, moreItems } from '../../../src/ui/app/menus.ts';
import { savingText } from '../../../src/ui/app/saving-text.ts';
import { fileStem, keymapFile, worksheetCsvFile } from '../../../src/ui/board/export/export-files.ts';
import { sample } from '../../store/sample.ts';

const MINUTE = 60_000;

test.each([
  [0, 'just now'],
  [59_999, 'just now'],
  [MINUTE, '1 minute ago'],
  [59 * MINUTE, '59 minutes ago'],
  [60 * MINUTE, '1 hour ago'],
  [25 * 60 * MINUTE, '1 day ago'],
  [6 * 24 * 60 * MINUTE, '6 days ago'],
  [7 * 24 * 60 * MINUTE, 'on 2001-09-02'],
  [-5, 'just now'],
])('%d ms ago is “%s”', (ago, expected) => {
  const now = Date.UTC(2001, 8, 9, 1, 46, 40);
  expect(timeText(now - ago, now)).toBe(expected);
});

test.each([
  ['Beacon log, 36 keys', 'beacon-log-36-keys'],
  ['  ../../etc/passwd ', 'etc-passwd'],
  ['Zwei Ufer – Größe', 'zwei-ufer-größe'],
  ['岸', '岸'],
  ['<>:"/\\|?*', 'keymap'],
])('a file for %o is named %s', (name, stem) => {
  expect(fileStem(name)).toBe(stem);
});

test('an exported keymap reads back equal', () => {
  const { name, text } = keymapFile(sample);
  expect(name).toBe('four-keys.keymap.json');
  expect(readKeymap(text)).toMatchObject({ ok: true, value: sample });
});

test('a worksheet has a file name of its own', () => {
  expect(worksheetCsvFile(sample, usHost).name).toBe('four-keys.worksheet.csv');
});

test.each([
  [{ state: 'saved' }, false, 'Saved', false],
  [{ state: 'pending' }, false, 'Saving…', false],
  [{ state: 'saved' }, true, 'Only to look at', false],
  [
    { state: 'failed', why: 'The disk is full.' },
    false,
    'Not saved: The disk is full. Export it to be safe.',
    true,
  ],
] as const)('%o, only to look at: %o reads “%s”', (saving, readOnly, text, isBad) => {
  expect(savingText(saving, readOnly)).toEqual({ text, isBad });
});

describe('the menus', () => {
  const kept = Array.from({ length: 9 }, (_, index) => ({
    id: `d${index}`,
    name: 'Same name',
    changedAt: index,
  }));
  const items = (openDesign = vi.fn(async () => {})) =>
    designItems({ kept, openId: 'd1', open: () => {}, pickFile: () => {}, openDesign });
  const designsIn = (list: ReturnType<typeof items>) =>
    list.flatMap((item) => (item !== 'line' && item.checked !== undefined ? [item] : []));

  test('the designs changed last stand in the menu, the open one marked, told apart though named alike', () => {
    const shown = designsIn(items());
    expect(shown.map(({ checked }) => checked)).toEqual([false, true, false, false, false, false]);
    expect(new Set(shown.map(({ key }) => key)).size).toBe(6);
  });

  test('the open design is not opened again', () => {
    const openDesign = vi.fn(async () => {});
    for (const item of designsIn(items(openDesign)).slice(0, 2)) item.onSelect();
    expect(openDesign.mock.calls).toEqual([['d0']]);
  });

  test('the look in force is marked', () => {
    const marked = moreItems({ theme: 'dark', setTheme: () => {}, open: () => {} }).flatMap((item) =>
      item !== 'line' && item.checked ? [item.label] : [],
    );
    expect(marked).toEqual(['Dark']);
  });
});

test('a desk that is not there gives way to the first', () => {
  expect(deskOf('no such desk')).toBe(DESKS[0]);
  expect(deskOf('design')?.title).toBe('Design');
});
