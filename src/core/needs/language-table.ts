import * as z from 'zod/mini';
import { fail, ok, type Result } from '../base/result.ts';
import { isOneCharacter } from '../keymap/need.ts';
import type { NeedList } from './need-list.ts';

/** Characters with a space between them. */
const characters = z.string().check(z.maxLength(4000));

const languageTableSchema = z.strictObject({
  /** BCP 47 language: "pl". */
  language: z.string().check(z.regex(/^[a-z]{2,3}$/)),
  title: z.string().check(z.minLength(1)),
  main: characters,
  auxiliary: characters,
  punctuation: characters,
  numbers: characters,
  capitals: characters,
});

/** The exemplar characters of a language (Unicode CLDR), and the capitals of its main letters. */
export type LanguageTable = Readonly<z.infer<typeof languageTableSchema>>;

/** Checks a table that came from outside. */
export function readLanguageTable(json: unknown): Result<LanguageTable, string> {
  const read = languageTableSchema.safeParse(json);
  if (read.success) return ok(read.data);
  const issue = read.error.issues[0];
  return fail(`not a table of a language: ${issue?.path.join('.') || 'the whole'}: ${issue?.message ?? ''}`);
}

const LIST_NAME = /^cldr:([a-z]{2,3})(:letters)?$/;

/** The name of the file in which the table of a list lies, undefined where the name is not of this kind. */
export function languageFile(listName: string): string | undefined {
  const language = LIST_NAME.exec(listName)?.[1];
  return language === undefined ? undefined : `cldr-${language}.json`;
}

/**
 * The lists of a language. `cldr:pl`: what CLDR states, main and auxiliary letters, punctuation and numbers.
 * `cldr:pl:letters`: the main letters, small and capital, alone.
 */
export function languageLists(table: LanguageTable): readonly NeedList[] {
  const { language, title, main, auxiliary, punctuation, numbers, capitals } = table;
  return [
    {
      name: `cldr:${language}`,
      title,
      description: 'CLDR exemplar characters: main and auxiliary letters (small ones), punctuation, numbers.',
      needs: needsOf(main, auxiliary, punctuation, numbers),
    },
    {
      name: `cldr:${language}:letters`,
      title: `${title}, letters`,
      description: 'The letters of the language (CLDR main exemplar characters) and their capitals.',
      needs: needsOf(main, capitals),
    },
  ];
}

function needsOf(...sets: readonly string[]): NeedList['needs'] {
  const chars = sets.flatMap((set) => set.split(' ')).filter(isOneCharacter);
  return [...new Set(chars)].map((char) => ({ kind: 'char', char }));
}
