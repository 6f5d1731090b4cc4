import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readStream } from '../../../src/core/rehearse/read-stream.ts';
import { STREAM_LIMITS } from '../../../src/core/rehearse/stream.ts';
import { writeStream } from '../../../src/core/rehearse/write-stream.ts';

const page = readFileSync(new URL('../../../public/key-stream.md', import.meta.url), 'utf8');
const example = /```json\n([\s\S]*?)```/.exec(page)?.[1] ?? '';

test('the example of the page is read, and written as it stands there', () => {
  const read = readStream(example);
  expect(read.ok ? [] : read.problem).toEqual([]);
  if (read.ok) expect(readStream(writeStream(read.value))).toEqual(read);
  for (const field of Object.keys(JSON.parse(example))) expect(page).toContain(`\`${field}\``);
});

test('the page states the limits that hold', () => {
  const { events, meantLength, nameLength, fileBytes } = STREAM_LIMITS;
  for (const number of [events, meantLength]) expect(page).toContain(number.toLocaleString('en'));
  expect(page).toContain(`1 to ${nameLength} characters`);
  expect(page).toContain(`at most ${fileBytes / 1024 / 1024} MiB`);
});
