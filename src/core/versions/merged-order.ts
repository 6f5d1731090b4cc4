/** Whether the things that two rows have in common stand in another order. */
export function isReordered(one: readonly string[], other: readonly string[]): boolean {
  const common = one.filter((id) => other.includes(id));
  return other.filter((id) => one.includes(id)).some((id, at) => id !== common[at]);
}

/**
 * One row with what only the other one has put in after what it follows there; what leads there leads here, and what
 * comes last there comes last here.
 */
export function mergedOrder(leading: readonly string[], other: readonly string[]): readonly string[] {
  const row = [...leading];
  other.forEach((id, at) => {
    if (row.includes(id)) return;
    const before = other.slice(0, at).findLast((each) => row.includes(each));
    const isLast = !other.slice(at + 1).some((each) => leading.includes(each));
    const place = isLast ? row.length : before === undefined ? 0 : row.indexOf(before) + 1;
    row.splice(place, 0, id);
  });
  return row;
}
