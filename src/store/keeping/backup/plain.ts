/** Kinds of values that JSON lacks, by the one field that stands for them. */
const TAGS = ['$map', '$set', '$numbers', '$number', '$plain'] as const;

const ARRAYS = {
  Float64Array,
  Float32Array,
  Int32Array,
  Uint32Array,
  Uint16Array,
  Uint8Array,
} as const;

type NumberArray = InstanceType<(typeof ARRAYS)[keyof typeof ARRAYS]>;

/**
 * A value as the browser keeps it, made into one that JSON can hold: maps, sets, arrays of numbers and numbers that are
 * none get an object with one field of their own. Throws where there is something else, such as a file.
 */
export function toPlain(value: unknown): unknown {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return value;
  if (typeof value === 'number') return Number.isFinite(value) ? value : { $number: String(value) };
  if (Array.isArray(value)) return value.map((item: unknown) => toPlain(item ?? null));
  if (value instanceof Map) return { $map: [...value].map((entry) => entry.map(toPlain)) };
  if (value instanceof Set) return { $set: [...value].map(toPlain) };
  if (isNumberArray(value)) return { $numbers: [value.constructor.name, [...value].map(toPlain)] };
  if (typeof value !== 'object' || Object.getPrototypeOf(value) !== Object.prototype) {
    throw new Error(
      `There is something that cannot be written to a file: ${Object.prototype.toString.call(value)}.`,
    );
  }
  const fields = Object.entries(value)
    .filter(([, field]) => field !== undefined)
    .map(([name, field]): [string, unknown] => [name, toPlain(field)]);
  // A kept object that looks like one of ours must not be taken for it.
  return fields.some(([name]) => isTag(name)) ? { $plain: fields } : Object.fromEntries(fields);
}

/** The inverse of `toPlain`, from what JSON gave; throws where a field of ours is not as it writes them. */
export function fromPlain(plain: unknown): unknown {
  if (typeof plain !== 'object' || plain === null) return plain;
  if (Array.isArray(plain)) return plain.map(fromPlain);
  const fields = Object.entries(plain);
  const [tag, content] = fields.find(([name]) => isTag(name)) ?? [];
  if (tag === undefined) return Object.fromEntries(fields.map(([name, field]) => [name, fromPlain(field)]));
  if (fields.length > 1) throw new Error('found another field beside one that stands alone');
  switch (tag) {
    case '$map':
      return new Map(pairsOf(content).map(([key, field]) => [fromPlain(key), fromPlain(field)]));
    case '$plain':
      return Object.fromEntries(pairsOf(content).map(([name, field]) => [String(name), fromPlain(field)]));
    case '$set':
      return new Set(listOf(content).map(fromPlain));
    case '$number':
      return Number(content);
    default:
      return numbersOf(content);
  }
}

function isTag(name: string): boolean {
  return TAGS.some((tag) => tag === name);
}

function isNumberArray(value: unknown): value is NumberArray {
  return Object.values(ARRAYS).some((kind) => value instanceof kind);
}

function listOf(value: unknown): readonly unknown[] {
  if (!Array.isArray(value)) throw new Error('found no list where one was written');
  return value;
}

function pairsOf(value: unknown): readonly (readonly [unknown, unknown])[] {
  return listOf(value).map((pair) => {
    const [key, field] = listOf(pair);
    return [key, field];
  });
}

function numbersOf(content: unknown): NumberArray {
  const [name, numbers] = listOf(content);
  const kind = Object.entries(ARRAYS).find(([each]) => each === name)?.[1];
  if (kind === undefined) throw new Error('found an unknown array of numbers');
  return new kind(listOf(numbers).map((number) => Number(fromPlain(number))));
}
