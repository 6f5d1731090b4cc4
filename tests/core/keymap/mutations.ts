import fc from 'fast-check';

type Json = null | boolean | number | string | Json[] | { [name: string]: Json };

/** Values of every type, at and beyond the limits of the format, that may stand in the place of any other. */
const VALUES: readonly Json[] = [
  null,
  true,
  0,
  -1,
  0.5,
  3,
  1e9,
  -1e9,
  '',
  'x',
  'a b',
  'KeyA',
  'ShiftLeft',
  'line\nbreak',
  '__proto__',
  '👩‍🚀',
  'y'.repeat(81),
  'z'.repeat(17),
  [],
  [1],
  ['k1', 'k2'],
  {},
  { do: 'nothing' },
  { tap: { do: 'nothing' } },
];

/** Every list and object inside a value, outermost first. */
function branches(value: Json): (Json[] | { [name: string]: Json })[] {
  if (typeof value !== 'object' || value === null) return [];
  return [value, ...Object.values(value).flatMap(branches)];
}

function put(branch: Json[] | { [name: string]: Json }, name: string, value: Json | undefined): void {
  if (Array.isArray(branch)) {
    if (value === undefined) branch.splice(Number(name), 1);
    else branch[Number(name)] = value;
  } else if (value === undefined) delete branch[name];
  else Object.defineProperty(branch, name, { value, enumerable: true, configurable: true, writable: true });
}

export interface Mutation {
  readonly how: 'drop' | 'replace' | 'add' | 'repeat' | 'round';
  /** Which branch, which of its fields: taken modulo their number. */
  readonly branch: number;
  readonly field: number;
  readonly value: Json;
  readonly name: string;
}

/** One change of the shape of a document: a field dropped, of another type or value, added, or too many times there. */
export const mutationArbitrary: fc.Arbitrary<Mutation> = fc.record({
  how: fc.constantFrom('drop', 'replace', 'replace', 'add', 'repeat', 'round'),
  branch: fc.nat(400),
  field: fc.nat(40),
  value: fc.constantFrom(...VALUES),
  name: fc.constantFrom(
    'extra',
    'id',
    'tap',
    'madeFrom',
    'with',
    '__proto__',
    'k 1',
    'constructor',
    'onWhile',
  ),
});

/** The document, as JSON, with the change made; never the one that was handed in. */
export function mutated(document: unknown, { how, branch, field, value, name }: Mutation): unknown {
  const copy: Json = JSON.parse(JSON.stringify(document));
  const all = branches(copy);
  const at = all[branch % all.length];
  if (!at) return copy;
  const names = Object.keys(at);
  const chosen = names[field % Math.max(1, names.length)];
  if (how === 'add') put(at, Array.isArray(at) ? String(at.length) : name, value);
  else if (chosen === undefined) return copy;
  else if (how === 'drop') put(at, chosen, undefined);
  else if (how === 'replace') put(at, chosen, value);
  else if (how === 'repeat' && Array.isArray(at)) at.push(...Array(9).fill(at[0]));
  else if (how === 'round') scale(at, chosen);
  return copy;
}

/** Makes a number larger by a factor that leads out of most bounds and off whole numbers. */
function scale(at: Json[] | { [name: string]: Json }, name: string): void {
  const before = Object.entries(at).find(([one]) => one === name)?.[1];
  if (typeof before === 'number') put(at, name, before * 33.3 + 0.25);
}
