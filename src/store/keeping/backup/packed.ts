/** Plain data in which parts that stand in several places are written once; those places hold `{ $same: number }`. */
export interface Packed {
  /** Each holds parts with smaller numbers only. */
  readonly parts: readonly unknown[];
  readonly whole: unknown;
}

/** So many values at most may a packed one come to when it is laid out again: parts within parts multiply. */
const MOST_VALUES = 4_000_000;

/** Packs plain data without cycles, in which no object has a field `$same` of its own. What is shared is told by identity. */
export function packed(value: unknown): Packed {
  const shared = sharedIn(value);
  const parts: unknown[] = [];
  const numbers = new Map<object, number>();
  const pack = (each: unknown): unknown => {
    if (!isObject(each)) return each;
    if (!shared.has(each)) return mapped(each, pack);
    const known = numbers.get(each);
    if (known !== undefined) return { $same: known };
    const part = mapped(each, pack);
    numbers.set(each, parts.length);
    parts.push(part);
    return { $same: parts.length - 1 };
  };
  const whole = pack(value);
  return { parts, whole };
}

/** The inverse of `packed`; throws where something else came from a file, or what would be too large. */
export function unpacked(value: unknown): unknown {
  if (!isObject(value) || !('parts' in value) || !Array.isArray(value.parts) || !('whole' in value))
    throw new Error('found nothing packed');
  const parts: unknown[] = [];
  const sizes: number[] = [];
  let size = 0;
  const unpack = (each: unknown): unknown => {
    size += 1;
    if (size > MOST_VALUES) throw new Error('found more than can be kept');
    if (!isObject(each)) return each;
    if (!('$same' in each)) return mapped(each, unpack);
    const number = Number(each.$same);
    if (!Object.hasOwn(parts, number)) throw new Error('found a part that is not there');
    size += sizes[number] ?? 0;
    return parts[number];
  };
  for (const part of value.parts) {
    size = 0;
    parts.push(unpack(part));
    sizes.push(size);
  }
  size = 0;
  return unpack(value.whole);
}

/** The objects that stand in more than one place. */
function sharedIn(value: unknown): ReadonlySet<object> {
  const seen = new Set<object>();
  const shared = new Set<object>();
  const visit = (each: unknown): void => {
    if (!isObject(each)) return;
    if (seen.has(each)) return void shared.add(each);
    seen.add(each);
    for (const inner of Object.values(each)) visit(inner);
  };
  visit(value);
  return shared;
}

function mapped(object: object, change: (value: unknown) => unknown): unknown {
  if (Array.isArray(object)) return object.map(change);
  return Object.fromEntries(Object.entries(object).map(([name, field]) => [name, change(field)]));
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}
