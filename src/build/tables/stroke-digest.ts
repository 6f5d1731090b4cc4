import { NEED_LISTS } from '../../core/needs/need-lists.ts';
import type { ComposeSequence } from './compose-file.ts';
import { howToType } from './how-to-type.ts';
import type { KeysymTable } from './keysyms.ts';
import { languageTable } from './language-tables.ts';
import type { LayoutEntry } from './layouts.ts';
import { xkbVersions } from './xkb-sources.ts';

/** What XKB and the Compose file say by themselves, kept so that tables can be checked where XKB is not installed. */
export interface StrokeDigest {
  /** The versions that said so. */
  readonly versions: string;
  /**
   * By layout and variant ("us mac"): for every character of ASCII and of the layout's languages, and for every dead
   * key, the strokes that libxkbcommon gives, '' where it gives none.
   */
  readonly strokes: Readonly<Record<string, Readonly<Record<string, string>>>>;
  /** For every character that dead keys compose to: the sequences of the Compose file, two and three strokes. */
  readonly compose: Readonly<Record<string, readonly string[]>>;
}

/** The characters that people on a layout type: ASCII and all of CLDR's for its languages, capitals too. */
function charactersOf(languages: readonly string[]): readonly string[] {
  const ascii = NEED_LISTS.find(({ name }) => name === 'ascii')?.needs ?? [];
  const chars = ascii.flatMap((need) => (need.kind === 'char' ? [need.char] : []));
  for (const language of languages) {
    const table = languageTable(language);
    if (table === null) throw new Error(`CLDR has no Latin letters for ${language}`);
    const { main, auxiliary, punctuation, numbers, capitals } = table;
    chars.push(...[main, auxiliary, punctuation, numbers, capitals].flatMap((set) => set.split(' ')));
  }
  return [...new Set(chars)].filter((char) => [...char].length === 1);
}

/** Asks XKB some ten thousand times; takes about a minute. */
export function strokeDigest(
  layouts: readonly LayoutEntry[],
  sequences: readonly ComposeSequence[],
  keysyms: KeysymTable,
): StrokeDigest {
  const compose: Record<string, string[]> = {};
  const dead = new Set<string>();
  for (const { names, result } of sequences) {
    if (names.length > 3) continue;
    const outputs = names.map((name) => keysyms.outputOf(name));
    for (const output of outputs) if (output.startsWith('dead_')) dead.add(output);
    compose[result] = [...(compose[result] ?? []), outputs.join(' ')];
  }
  const strokes: Record<string, Record<string, string>> = {};
  for (const { layout, variant, languages } of layouts) {
    const wanted = [...charactersOf(languages), ...dead];
    strokes[`${layout} ${variant}`.trim()] = Object.fromEntries(
      wanted.map((output) => [output, howToType(layout, variant, output).join(' ')]),
    );
  }
  return { versions: xkbVersions(), strokes, compose };
}
