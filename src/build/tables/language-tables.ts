import { readdirSync, readFileSync } from 'node:fs';
import type { LanguageTable } from '../../core/needs/language-table.ts';
import { unicodeSetMembers } from './unicode-set.ts';

/** The npm package cldr-misc-full, a devDependency. */
const CLDR = new URL('../../../node_modules/cldr-misc-full/main/', import.meta.url);
const LATIN = /^[\p{Script=Latin}\p{Script=Common}\p{Script=Inherited}]+$/u;
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Characters of a CLDR set in NFC and without doubles; a text of several, such as a digraph, gives each of its own. */
export function exemplars(set: string): readonly string[] {
  const texts = unicodeSetMembers(set).map((text) => text.normalize('NFC'));
  return [...new Set(texts.flatMap((text) => [...graphemes.segment(text)].map(({ segment }) => segment)))];
}

/** CLDR's own sets of a language, as its JSON has them. */
export function cldrSets(language: string): Readonly<Record<string, unknown>> {
  const json = JSON.parse(readFileSync(new URL(`${language}/characters.json`, CLDR), 'utf8'));
  return json.main[language].characters;
}

function setNamed(sets: Readonly<Record<string, unknown>>, name: string): readonly string[] {
  const set = sets[name];
  return typeof set === 'string' ? exemplars(set) : [];
}

/** The table of a language, null where it is not written with Latin letters. */
export function languageTable(language: string): LanguageTable | null {
  const sets = cldrSets(language);
  const main = setNamed(sets, 'exemplarCharacters');
  if (main.length === 0 || !main.every((char) => LATIN.test(char))) return null;
  const capitals = main.map((char) => char.toLocaleUpperCase(language).normalize('NFC'));
  const title = new Intl.DisplayNames('en', { type: 'language' }).of(language) ?? language;
  return {
    language,
    title,
    main: main.join(' '),
    auxiliary: setNamed(sets, 'auxiliary').join(' '),
    punctuation: setNamed(sets, 'punctuation').join(' '),
    numbers: setNamed(sets, 'numbers').join(' '),
    capitals: [...new Set(capitals.filter((char) => !main.includes(char)))].join(' '),
  };
}

/** Languages that have a code of two letters, in order. */
export function cldrLanguages(): readonly string[] {
  return readdirSync(CLDR)
    .filter((name) => /^[a-z]{2}$/.test(name))
    .sort();
}
