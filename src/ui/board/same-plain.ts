/** Whether two values of plain data (no cycles, no functions) have the same content. */
export function samePlain(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  const entries = Object.entries(one);
  if (Array.isArray(one) !== Array.isArray(other) || entries.length !== Object.keys(other).length)
    return false;
  const others = new Map(Object.entries(other));
  return entries.every(([name, value]) => others.has(name) && samePlain(value, others.get(name)));
}
