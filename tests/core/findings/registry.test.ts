import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { RULES } from '../../../src/core/findings/registry.ts';

const idsIn = (folder: string, ending: string): readonly string[] =>
  readdirSync(new URL(folder, import.meta.url))
    .filter((name) => name.endsWith(ending))
    .map((name) => name.slice(0, -ending.length))
    .sort();
const ids = RULES.map(({ id }) => id);
const registry = readFileSync(new URL('../../../src/core/findings/registry.ts', import.meta.url), 'utf8');

describe('the registry', () => {
  it('lists one rule for each file in rules/, and each has a test of its name', () => {
    expect(idsIn('../../../src/core/findings/rules/', '.ts')).toEqual(ids.toSorted());
    expect(idsIn('./rules/', '.test.ts')).toEqual(ids.toSorted());
  });

  it('is sorted and has no id twice', () => {
    expect(ids).toEqual([...new Set(ids)].sort());
  });

  it.each(RULES)('names $id as its file is named', ({ id }) => {
    const constant = id.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
    expect(registry).toContain(`import { ${constant} } from './rules/${id}.ts';`);
    expect(registry).toContain(`\n  ${constant},\n`);
  });

  it.each(RULES)('$id is a short sentence in lower case, with a title and a reason', ({ id, title, why }) => {
    expect(id).toMatch(/^[a-z]+(-[a-z]+)+$/);
    expect(title).toMatch(/^[A-Z][^.]+$/);
    expect(why).toMatch(/^[A-Z].+\.$/);
  });
});
