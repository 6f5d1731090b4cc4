/** The way to a field: names of fields and indices of lists, from the document inwards. */
export type Path = readonly (string | number)[];

/** What is wrong at a field: what stands there and what should. */
export interface Problem {
  readonly path: Path;
  readonly found: string;
  readonly expected: string;
}

/** Why a text or value is no keymap. `path` reads like `layers[0].places.L21.tap.code`; empty for the whole. */
export interface ReadProblem {
  readonly path: string;
  readonly found: string;
  readonly expected: string;
  /** Path, found and expected as one sentence for people. */
  readonly sentence: string;
}

/** A path as it is shown: `layers[0].places.L21`, names with other signs as `["a b"]`, long ones cut. */
export function pathText(path: Path): string {
  return path.map(segmentText).join('').replace(/^\./, '');
}

function segmentText(segment: string | number): string {
  if (typeof segment === 'number') return `[${segment}]`;
  return /^[A-Za-z0-9_$-]{1,40}$/.test(segment) ? `.${segment}` : `[${quoted(segment)}]`;
}

/** A text in quotation marks, its middle left out where it is long. */
export function quoted(text: string): string {
  const signs = [...text.slice(0, 200)];
  const cut = signs.length > 60 || text.length > 200;
  return JSON.stringify(cut ? `${signs.slice(0, 50).join('')}…` : text);
}

/** A value in a few words, however large or deep it is. */
export function foundText(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string') return quoted(value);
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  return String(value);
}

/** A problem as the reader hands it out. */
export function readProblem({ path, found, expected }: Problem): ReadProblem {
  const where = pathText(path);
  const at = where === '' ? 'The document' : where;
  return { path: where, found, expected, sentence: `${at}: found ${found}, expected ${expected}.` };
}
