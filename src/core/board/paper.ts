/** A size of paper, upright, mm. */
export interface Paper {
  readonly id: 'a4' | 'letter';
  readonly title: string;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** The papers that there are: for A4 see ISO 216; Letter is 8.5 × 11 in, size A of ANSI/ASME Y14.1. */
const PAPER: Readonly<Record<Paper['id'], Paper>> = {
  a4: { id: 'a4', title: 'A4', widthMm: 210, heightMm: 297 },
  letter: { id: 'letter', title: 'US Letter', widthMm: 215.9, heightMm: 279.4 },
};

/** The papers that boards and sheets can be printed on. */
export const PAPERS: readonly Paper[] = Object.values(PAPER);

/** A paper by its id. */
export function paperOf(id: Paper['id']): Paper {
  return PAPER[id];
}

/** The papers by what they are called, for a choice. */
export const PAPER_OPTIONS = PAPERS.map(({ id, title }) => ({ value: id, label: title }));

/** Countries that use Letter paper; all others use A4. Common practice, no source. */
const LETTER = ['US', 'CA', 'MX', 'PH', 'CL', 'CO', 'VE', 'CR', 'PA'];

/** The paper of the place that a language tag such as `en-US` names; A4 where it names none. */
export function paperFor(language: string): Paper['id'] {
  const region = language.split('-').at(-1)?.toUpperCase() ?? '';
  return LETTER.includes(region) ? 'letter' : 'a4';
}
