import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { LIMITS } from '../../../src/core/keymap/limits.ts';
import { readKeymap } from '../../../src/core/keymap/read.ts';
import { writeKeymap } from '../../../src/core/keymap/write.ts';

const page = readFileSync(new URL('../../../public/neutral-keymap.md', import.meta.url), 'utf8');
const [, example = ''] = page.match(/```json\n([\s\S]*?)```/) ?? [];

test('the example of the format page is a keymap, and is written as it stands there', () => {
  const read = readKeymap(example);
  expect(read.ok ? [] : read.problem).toEqual([]);
  expect(read.ok && JSON.parse(writeKeymap(read.value))).toEqual(JSON.parse(example));
});

test('the format page names every field of the schema', () => {
  const schema = readFileSync(new URL('../../../public/neutral-keymap.schema.json', import.meta.url), 'utf8');
  const parts: { $defs: Record<string, { properties?: object }>; properties: object } = JSON.parse(schema);
  const left = Object.entries(parts.$defs).filter(([name]) => name !== 'madeFrom');
  const fields = [parts, ...left.map(([, part]) => part)].flatMap(({ properties = {} }) =>
    Object.keys(properties),
  );
  expect(fields.length).toBeGreaterThan(30);
  expect(fields.filter((field) => !new RegExp(`\\b${field.replace('$', '')}\\b`).test(page))).toEqual([]);
});

test('the number of hosts that the page states is the limit', () => {
  expect(LIMITS.hosts).toBe(8);
  expect(page).toContain('one to eight');
});
