import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';

/** A running text that counts are made of. `read` takes the folder in which Debian packages were unpacked, one folder each. */
export interface TextSource {
  readonly name: string;
  readonly title: string;
  readonly source: string;
  readonly licence: string;
  read(unpacked: string): string[];
}

/** Characters of each of two sources: each has the same say. */
const HALF_OF_TEXT = 900_000;
const HANDBOOK = 'usr/share/doc/debian-handbook/html';

const LICENCES =
  'Handbook: GPL-2+ or CC-BY-SA-3.0, Raphaël Hertzog, Roland Mas, Freexian and the translators';

/** Running text of the handbook and of manual pages in one language, less what was left in English. */
const translated = (name: string, title: string, edition: string, pages: string): TextSource => ({
  name,
  title,
  source: `The Debian Administrator's Handbook, ${edition} edition, and manual pages (Debian packages debian-handbook 11.20220922, ${pages} 4.18.1-1): running text less what was left in English`,
  licence: `${LICENCES}; manual pages: GPL-3+ and others as in their copyright file, the translators of manpages-l10n`,
  read: (unpacked) => [
    ...upTo(HALF_OF_TEXT, handbook(unpacked, edition).filter(isTranslated)),
    ...upTo(
      HALF_OF_TEXT,
      filesIn(join(unpacked, pages, 'usr/share/man'), '.gz')
        .flatMap(proseOfManual)
        .filter(isTranslated),
    ),
  ],
});

/** What is counted for each ready text. */
export const TEXT_SOURCES: readonly TextSource[] = [
  {
    name: 'english',
    title: 'English',
    source:
      "The Debian Administrator's Handbook, en-US edition: paragraphs of running text (Debian package debian-handbook 11.20220922)",
    licence: LICENCES,
    read: (unpacked) => handbook(unpacked, 'en-US'),
  },
  translated('german', 'German', 'de-DE', 'manpages-de'),
  translated('french', 'French', 'fr-FR', 'manpages-fr'),
  translated('spanish', 'Spanish', 'es-ES', 'manpages-es'),
  translated('portuguese', 'Portuguese (Brazil)', 'pt-BR', 'manpages-pt-br'),
  translated('polish', 'Polish', 'pl-PL', 'manpages-pl'),
  {
    name: 'code',
    title: 'Program code (Python and TypeScript)',
    source:
      'Modules of the Python 3.11 standard library (Debian package libpython3.11-minimal) and of zod 4 (npm), without comments and indentation',
    licence: 'PSF-2.0 (Python), MIT (zod, Colin McDonnell)',
    read: () => [
      ...upTo(
        HALF_OF_TEXT,
        filesIn('/usr/lib/python3.11', '.py', false).flatMap((file) => codeLines(file, /^\s*#/)),
      ),
      ...upTo(
        HALF_OF_TEXT,
        filesIn('node_modules/zod/src/v4', '.ts').flatMap((file) => codeLines(file, /^\s*(\/\/|\*|\/\*)/)),
      ),
    ],
  },
];

/** The pieces from the first on until they make up that many characters. */
function upTo(most: number, pieces: readonly string[]): string[] {
  let characters = 0;
  return pieces.filter((piece) => {
    characters += piece.length;
    return characters <= most;
  });
}

function filesIn(folder: string, ending: string, deep = true): string[] {
  return readdirSync(folder)
    .sort()
    .flatMap((name) => {
      const path = join(folder, name);
      if (statSync(path).isDirectory()) return deep ? filesIn(path, ending) : [];
      return name.endsWith(ending) ? [path] : [];
    });
}

function handbook(unpacked: string, edition: string): string[] {
  return filesIn(join(unpacked, 'debian-handbook', HANDBOOK, edition), '.html', false).flatMap(paragraphsOf);
}

/** Frequent words of English that the other languages have not. */
const ENGLISH = /(^| )(the|of|and|with|that|this|is|are|be|you|your|it)(?= |$)/i;

function isTranslated(text: string): boolean {
  return !ENGLISH.test(text);
}

/** Characters that typesetting makes out of what a typist types. */
const TYPED: readonly (readonly [RegExp, string])[] = [
  [/[\u2018\u2019]/g, "'"],
  [/[\u201c\u201d\u201e]/g, '"'],
  [/[\u2013\u2014\u2010\u2011]/g, '-'],
  [/\u2026/g, '...'],
  [/[\u00a0\u202f\u2009\u200b\ufeff]/g, ' '],
];

function asTyped(text: string): string {
  return TYPED.reduce((typed, [set, plain]) => typed.replace(set, plain), text)
    .replace(/\s+/g, ' ')
    .trim();
}

const ENTITIES: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', nbsp: ' ' };

function decoded(html: string): string {
  return html
    .replace(/&#x([0-9a-f]+);/gi, (_, hex: string) => String.fromCodePoint(Number.parseInt(hex, 16)))
    .replace(/&#(\d+);/g, (_, number: string) => String.fromCodePoint(Number(number)))
    .replace(/&(lt|gt|amp|quot|nbsp);/g, (_, name: string) => ENTITIES[name] ?? '');
}

/** Paragraphs of a page, each ended by a line break; what is too short for a sentence is left out. */
function paragraphsOf(file: string): string[] {
  const html = readFileSync(file, 'utf8').replace(/<(script|style|pre)[\s\S]*?<\/\1>/g, ' ');
  return [...html.matchAll(/<(?:p|div class="para")[^>]*>([\s\S]*?)<\/(?:p|div)>/g)]
    .map(([, inner = '']) =>
      asTyped(
        decoded(
          inner.replace(/<a [^>]*class="(?:indexterm|anchor)"[^>]*>.*?<\/a>/g, '').replace(/<[^>]+>/g, ''),
        ),
      ),
    )
    .filter((text) => text.length > 60)
    .map((text) => `${text}\n`);
}

/** Lines of prose of a manual page's source: no macros but those that set a word in another face. */
function proseOfManual(file: string): string[] {
  return gunzipSync(readFileSync(file))
    .toString('utf8')
    .split('\n')
    .filter((line) => /^[^.'\\]/.test(line) && line.length > 40 && !line.includes('\t'))
    .map((line) =>
      asTyped(
        line
          .replace(/\\f(?:\[[^\]]*\]|\(..|.)/g, '')
          .replace(/\\\(?(?:aq|cq|oq)|\\\[(?:aq|cq|oq)\]/g, "'")
          .replace(/\\-/g, '-')
          .replace(/\\[&%|^/,:]/g, '')
          .replace(/\\[e(*[].*/g, ''),
      ),
    )
    .filter((line) => /\p{Ll}{3}/u.test(line))
    .map((line) => `${line} `);
}

/** Lines of code as they are typed where the editor indents. */
function codeLines(file: string, comment: RegExp): string[] {
  return readFileSync(file, 'utf8')
    .split('\n')
    .filter((line) => line.trim() !== '' && !comment.test(line))
    .map((line) => `${line.trim()}\n`);
}
