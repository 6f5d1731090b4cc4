import { readdirSync } from 'node:fs';
import { join } from 'node:path';

/** All files below a folder with one of the endings, in the order of their paths, with `/` between folders. */
export function filesBelow(folder: string, endings: readonly string[]): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && endings.some((ending) => entry.name.endsWith(ending)))
    .map((entry) => join(entry.parentPath, entry.name).replaceAll('\\', '/'))
    .sort();
}

const COMMENT_OR_STRING = new RegExp(
  [
    String.raw`(?<comment>//[^\n]*|/\*[\s\S]*?\*/)`,
    String.raw`'(?:\\.|[^'\\\n])*'`,
    String.raw`"(?:\\.|[^"\\\n])*"`,
    String.raw`\`(?:\\.|[^\`\\])*\``,
    // A regular expression literal: a slash where a value begins. It may hold quotes and slashes of its own.
    String.raw`(?<=[(,=:[!&|?{};+]\s*|\breturn\s+|=>\s*)/(?![*/])(?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/\\[\n])+/[a-z]*`,
  ].join('|'),
  'g',
);

/** The source without comments; line breaks are kept, so that line numbers hold. */
export function withoutComments(source: string): string {
  return source.replace(COMMENT_OR_STRING, (match: string, ...rest: unknown[]) => {
    const groups = rest.at(-1) as { comment?: string };
    return groups.comment === undefined ? match : match.replace(/[^\n]/g, ' ');
  });
}

/** The source without comments and without what stands in strings and regular expressions. */
export function codeOnly(source: string): string {
  return source.replace(COMMENT_OR_STRING, (match) => match.replace(/[^\n]/g, ' '));
}

const IMPORTS = [
  /^\s*(?:import|export)\b[^'"`;]*?\bfrom\s*['"]([^'"]+)['"]/gm,
  /^\s*import\s*['"]([^'"]+)['"]/gm,
  /\bimport\(\s*['"]([^'"]+)['"]\s*\)/g,
  /\bnew URL\(\s*['"](\.[^'"]+\.tsx?)['"]\s*,\s*import\.meta\.url/g,
];

/** What a module imports, exports on, loads later or starts as a worker, as written, in no special order. */
export function importsOf(source: string): string[] {
  const bare = withoutComments(source);
  return IMPORTS.flatMap((pattern) => [...bare.matchAll(pattern)].map((match) => match[1] ?? ''));
}
