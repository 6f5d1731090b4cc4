import { describe, expect, test } from 'vitest';
import { countOfRun } from '../../../src/core/needs/counts-runs.ts';
import { countFiles, type ReadableFile } from '../../../src/workers/count-files.ts';

/** A file that hands its bytes out in the given pieces. */
function file(...pieces: readonly (string | readonly number[])[]): ReadableFile {
  const chunks = pieces.map((piece) =>
    typeof piece === 'string' ? new TextEncoder().encode(piece) : new Uint8Array(piece),
  );
  return {
    size: chunks.reduce((sum, { length }) => sum + length, 0),
    stream: () =>
      new ReadableStream({
        start(controller) {
          for (const chunk of chunks) controller.enqueue(chunk);
          controller.close();
        },
      }),
  };
}

const quiet = () => {};

describe('counting files', () => {
  test('characters and pairs across the chunks of one file, none across two files', async () => {
    const { counts, files } = await countFiles([file('ab', 'cd'), file('e')], quiet);
    expect(files).toBe(2);
    expect(counts.total).toBe(5);
    expect(counts.pairs.get('b')?.get('c')).toBe(1);
    expect(counts.pairs.get('d')?.size).toBe(0);
  });

  test('runs across the chunks of one file, none across two files', async () => {
    const { runs } = await countFiles([file('ab', 'cd'), file('e')], quiet);
    expect(countOfRun(runs, [...'abcd'])).toBe(1);
    expect(countOfRun(runs, [...'de'])).toBe(0);
    expect(runs.total).toBe(5);
  });

  test('of a long text runs in a part of every piece, as often as in all of it', async () => {
    const { counts, runs } = await countFiles(
      [file('ab😀'.repeat(200_000), 'ab😀'.repeat(200_000)), file('cd'.repeat(100_000))],
      quiet,
    );
    expect(runs.total).toBeGreaterThan(200_000);
    expect(runs.total).toBeLessThan(600_001);
    for (const char of ['a', '😀', 'c'])
      expect(countOfRun(runs, [char]) / runs.total).toBeCloseTo(
        (counts.chars.get(char) ?? 0) / counts.total,
        1,
      );
    expect([...(runs.after.get('') ?? [])].map(({ char }) => char).sort()).toEqual([
      'a',
      'b',
      'c',
      'd',
      '😀',
    ]);
  });

  test('a character cut in two by a chunk is one character', async () => {
    // ü is C3 BC in UTF-8 (RFC 3629).
    const { counts, otherwiseEncoded } = await countFiles([file([0x61, 0xc3], [0xbc])], quiet);
    expect([...counts.chars]).toEqual([
      ['a', 1],
      ['ü', 1],
    ]);
    expect(otherwiseEncoded).toBe(0);
  });

  test('a file with a NUL is no text', async () => {
    const { counts, binaries, files } = await countFiles([file('a', 'b'), file([0x50, 0, 0x4b])], quiet);
    expect([counts.total, binaries, files]).toEqual([2, 1, 1]);
  });

  test('what is no UTF-8 is read as Windows-1252', async () => {
    // FC is ü in Windows-1252 (WHATWG Encoding Standard) and begins nothing in UTF-8.
    const { counts, otherwiseEncoded } = await countFiles([file([0x66, 0xfc, 0x72])], quiet);
    expect([...counts.chars.keys()]).toEqual(['f', 'ü', 'r']);
    expect(otherwiseEncoded).toBe(1);
  });

  test('files beyond the limit are left out and counted, smaller ones after them are taken', async () => {
    const { counts, beyondLimit } = await countFiles([file('aaa'), file('bbbb'), file('c')], quiet, 5);
    expect([...counts.chars.keys()]).toEqual(['a', 'c']);
    expect(beyondLimit).toBe(1);
  });

  test('a file that cannot be read is counted and the rest goes on', async () => {
    const broken: ReadableFile = {
      size: 3,
      stream: () => new ReadableStream({ start: (controller) => controller.error(new Error('gone')) }),
    };
    const { counts, unreadable } = await countFiles([broken, file('a')], quiet);
    expect([counts.total, unreadable]).toEqual([1, 1]);
  });

  test('progress ends with everything, and is not told for each small file', async () => {
    const told: number[] = [];
    const files = Array.from({ length: 250 }, () => file('ab'));
    await countFiles(files, (progress) => told.push(progress.files));
    expect(told.at(-1)).toBe(250);
    expect(told.length).toBeLessThan(6);
    expect(told).toEqual(told.toSorted((one, other) => one - other));
  });

  test('an empty file is a text without characters', async () => {
    expect(await countFiles([file()], quiet)).toMatchObject({ files: 1, binaries: 0, unreadable: 0 });
  });
});
