import type { OfferedLanguage } from '../../../../store/need-lists.ts';

/** A list of a language as it can be searched for. */
export interface Language {
  /** The name of its need list: "cldr:pl", "cldr:pl:letters". */
  readonly list: string;
  readonly title: string;
  /** What the language calls itself; null where the browser does not know, or it is the English name too. */
  readonly ownName: string | null;
  readonly count: number;
}

const CODE = /^cldr:([a-z]{2,3})/;

/** The offered lists with the languages' own names, which the browser knows from the same CLDR. */
export function namedLanguages(offered: readonly OfferedLanguage[]): readonly Language[] {
  return offered.map(({ name, title, count }) => ({
    list: name,
    title,
    ownName: ownNameOf(CODE.exec(name)?.[1] ?? '', title),
    count,
  }));
}

function ownNameOf(code: string, title: string): string | null {
  try {
    const name = new Intl.DisplayNames([code], { type: 'language', fallback: 'none' }).of(code);
    // For a language that it has no names in, a browser answers in its own.
    const isKnown = Intl.DisplayNames.supportedLocalesOf([code]).length > 0;
    return name === undefined || !isKnown || title.startsWith(name) ? null : name;
  } catch {
    return null;
  }
}

/**
 * The languages whose English name, own name or code begins with what was typed, then those that have it inside; in the order given.
 * Capitals and marks do not matter: "turkce" finds Türkçe. Nothing typed finds nothing.
 */
export function findLanguages(
  languages: readonly Language[],
  query: string,
  most: number,
): readonly Language[] {
  const wanted = bare(query.trim());
  if (wanted === '') return [];
  const names = (language: Language) => [
    bare(language.title),
    bare(language.ownName ?? ''),
    CODE.exec(language.list)?.[1] ?? '',
  ];
  const begins = languages.filter((language) => names(language).some((name) => name.startsWith(wanted)));
  const inside = languages.filter(
    (language) => !begins.includes(language) && names(language).some((name) => name.includes(wanted)),
  );
  return [...begins, ...inside].slice(0, most);
}

/** Small letters without their marks. */
function bare(text: string): string {
  return text.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase();
}
