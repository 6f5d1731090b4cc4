import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { MODIFIERS } from '../../../src/core/keymap/codes.ts';
import { keymapJsonSchema } from '../../../src/core/keymap/json-schema.ts';
import { LIMITS } from '../../../src/core/keymap/limits.ts';
import { readKeymap } from '../../../src/core/keymap/read.ts';
import { DEFAULT_TIMING } from '../../../src/core/keymap/timing.ts';
import { writeKeymap } from '../../../src/core/keymap/write.ts';

const page = readFileSync(new URL('../../../public/neutral-keymap.md', import.meta.url), 'utf8');
const example = /```json\n([\s\S]*?)```/.exec(page)?.[1] ?? '';

const nodeSchema = z.looseObject({ properties: z.optional(z.record(z.string(), z.unknown())) });

/** Every name of a field in the schema, wherever it stands. */
function fieldNames(node: unknown): string[] {
  if (typeof node !== 'object' || node === null) return [];
  const own = Array.isArray(node) ? undefined : z.safeParse(nodeSchema, node).data?.properties;
  return [...Object.keys(own ?? {}), ...Object.values(node).flatMap(fieldNames)];
}

describe('the page of the format', () => {
  test('its example is a keymap, and is written as it stands there', () => {
    const read = readKeymap(example);
    expect(read.ok ? [] : read.problem).toEqual([]);
    expect(read.ok && JSON.parse(writeKeymap(read.value))).toEqual(JSON.parse(example));
  });

  const names = [...new Set(fieldNames(keymapJsonSchema()))];
  test('the schema has more than fifty fields to tell of', () => {
    expect(names.length).toBeGreaterThan(50);
  });

  test.each(names)('tells of the field %s', (name) => {
    expect(page).toContain(`\`${name}\``);
  });

  test.each(MODIFIERS)('names the modifier %s', (code) => {
    expect(page).toContain(`\`${code}\``);
  });

  test.each([
    ['keys', `(1 to ${LIMITS.keys})`],
    ['layers', `1 to ${LIMITS.layers};`],
    ['chords', `at most ${LIMITS.chords}`],
    ['hosts', `1 to ${LIMITS.hosts} computers`],
    ['corrections', `(at most ${LIMITS.corrections})`],
    ['name', `1 to ${LIMITS.nameLength} characters`],
    ['notes', `at most ${LIMITS.notesLength.toLocaleString('en')} characters`],
    ['needs', `at most ${LIMITS.needs.toLocaleString('en')} needs`],
    ['diary', `at most ${LIMITS.diaryNotes.toLocaleString('en')} notes`],
    ['keys of a note', `1 to ${LIMITS.noteKeys} ids of keys`],
    ['file', `at most ${LIMITS.fileBytes / 1024 / 1024} MiB`],
  ])('states the limit of %s', (_, words) => {
    expect(page).toContain(words);
  });

  test.each(Object.entries(DEFAULT_TIMING))('states the default of %s', (field, value) => {
    const row = page.split('\n').find((one) => one.startsWith(`| \`${field}\` |`)) ?? '';
    expect(row.replaceAll('`', '')).toMatch(new RegExp(`\\| ${value} \\|$`));
  });
});
