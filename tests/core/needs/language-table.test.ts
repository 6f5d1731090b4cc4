import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { cldrSets, exemplars, languageTable } from '../../../src/build/tables/language-tables.ts';
import { isOneCharacter, needText } from '../../../src/core/keymap/need.ts';
import { languageFile, languageLists, readLanguageTable } from '../../../src/core/needs/language-table.ts';

const FOLDER = new URL('../../../public/needs/', import.meta.url);
const FILES = readdirSync(FOLDER).filter((file) => file !== 'index.json');

function readJson(file: string): unknown {
  return JSON.parse(readFileSync(new URL(file, FOLDER), 'utf8'));
}

function shipped(language: string) {
  const read = readLanguageTable(readJson(`cldr-${language}.json`));
  if (!read.ok) throw new Error(read.problem);
  return read.value;
}

function textsOf(language: string, list: 0 | 1): readonly string[] {
  return (languageLists(shipped(language))[list]?.needs ?? []).map(needText);
}

describe('Unicode CLDR 48 (cldr-misc-full)', () => {
  test.each([
    ['de', 30],
    ['pl', 32],
    ['pt', 39],
  ])('%s has %i main letters', (language, count) => {
    expect(shipped(language).main.split(' ').length).toBe(count);
  });

  test.each(['de', 'pl', 'pt'])('%s: every set is as long as CLDR writes it', (language) => {
    // These three have neither ranges nor texts in braces: what is left without brackets, escapes and spaces counts.
    const written = (set: string) => {
      const text = String(cldrSets(language)[set]);
      return [...text.slice(1, -1).replace(/[\\ ]/g, '')].length;
    };
    const table = shipped(language);
    const lengths = [table.main, table.auxiliary, table.punctuation, table.numbers].map(
      (set) => set.split(' ').length,
    );
    expect(lengths).toEqual(['exemplarCharacters', 'auxiliary', 'punctuation', 'numbers'].map(written));
  });

  test.each(FILES)('%s is what the package says', (file) => {
    const json = readJson(file);
    const read = readLanguageTable(json);
    expect(read.ok && languageTable(read.value.language)).toEqual(json);
  });
});

describe('the tables', () => {
  test('are of 40 languages at least, the index names each of their lists with its length', () => {
    expect(FILES.length).toBeGreaterThanOrEqual(40);
    const lists = FILES.flatMap((file) => {
      const read = readLanguageTable(readJson(file));
      if (!read.ok) throw new Error(read.problem);
      return languageLists(read.value).map(({ name, title, needs }) => ({
        name,
        title,
        file,
        count: needs.length,
      }));
    });
    expect(readJson('index.json')).toEqual(lists);
    for (const { name, file } of lists) expect(languageFile(name)).toBe(file);
  });

  test('hold nothing but single characters in NFC', () => {
    for (const file of FILES) {
      const read = readLanguageTable(readJson(file));
      for (const list of read.ok ? languageLists(read.value) : []) {
        for (const text of list.needs.map(needText)) {
          expect([file, text, isOneCharacter(text)]).toEqual([file, text.normalize('NFC'), true]);
        }
      }
    }
  });

  test.each([
    ['no object', [], 'the whole'],
    ['no language', { ...shipped('pl'), language: 'Polish' }, 'language'],
    ['a set that is a list', { ...shipped('pl'), main: ['a'] }, 'main'],
  ])('with %s are refused with the place', (_, json, place) => {
    const read = readLanguageTable(json);
    expect(read.ok ? '' : read.problem).toContain(`not a table of a language: ${place}`);
  });
});

describe('the lists of a language', () => {
  test('Polish: letters, auxiliary letters, signs and digits', () => {
    const texts = textsOf('pl', 0);
    expect(texts).toEqual(expect.arrayContaining(['ł', 'q', '„', '7', '\u00a0']));
    expect(texts).not.toContain('Ł');
    expect(new Set(texts).size).toBe(texts.length);
  });

  test('Polish letters: with their capitals and nothing else', () => {
    expect(textsOf('pl', 1).length).toBe(64);
    expect(textsOf('pl', 1)).toEqual(expect.arrayContaining(['ł', 'Ł']));
  });

  test('Turkish has capitals of its own', () => {
    expect(textsOf('tr', 1)).toEqual(expect.arrayContaining(['i', 'İ', 'ı', 'I']));
  });

  test('a digraph counts by its letters', () => {
    expect(exemplars('[a b {ch}]')).toEqual(['a', 'b', 'c', 'h']);
    expect(textsOf('cs', 0)).not.toContain('ch');
  });

  test.each([
    ['cldr:pl', 'cldr-pl.json'],
    ['cldr:pl:letters', 'cldr-pl.json'],
    ['cldr:../x', undefined],
    ['ascii', undefined],
  ])('%s lies in %s', (name, file) => {
    expect(languageFile(name)).toBe(file);
  });
});
