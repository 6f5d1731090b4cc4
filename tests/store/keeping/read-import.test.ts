import { describe, expect, test } from 'vitest';
import { LIMITS } from '../../../src/core/keymap/limits.ts';
import { writeKeymap } from '../../../src/core/keymap/write.ts';
import { readImportedFile, readImportedText } from '../../../src/store/keeping/read-import.ts';
import { sample } from '../sample.ts';

describe('importing', () => {
  test('takes in what export gives out', async () => {
    const file = new Blob([writeKeymap(sample)]);
    const value = { $schema: 'neutral-keymap.schema.json', ...sample };
    expect(await readImportedFile(file, 'four.json')).toEqual({ ok: true, value });
  });

  test('a file that is too large is refused before it is read', async () => {
    const file = {
      size: LIMITS.fileBytes + 1,
      arrayBuffer: () => Promise.reject(new Error('it was read')),
    };
    const read = await readImportedFile(file, 'big.json');
    expect(read).toMatchObject({
      ok: false,
      problem: { source: 'big.json', problems: [{ expected: '2 MiB at most' }] },
    });
  });

  test('bytes that are no UTF-8 are refused', async () => {
    const read = await readImportedFile(new Blob([new Uint8Array([0x7b, 0xff, 0xfe])]), 'x.json');
    expect(read).toMatchObject({
      ok: false,
      problem: { problems: [{ expected: expect.stringContaining('UTF-8') }] },
    });
  });

  test('a broken field is told with its path, what was found and what was expected', () => {
    const read = readImportedText(JSON.stringify({ ...sample, layers: 3 }), 'The pasted text');
    expect(read).toMatchObject({
      ok: false,
      problem: { source: 'The pasted text', problems: [{ path: 'layers', found: '3' }] },
    });
  });
});
