/** A straight scale from values to places. */
export function scaleOf(
  [from, to]: readonly [number, number],
  [start, end]: readonly [number, number],
): (value: number) => number {
  const span = to - from;
  return (value) => (span === 0 ? (start + end) / 2 : start + ((value - from) / span) * (end - start));
}

/** Round values from 0 up to the first that is not under the most: three to six of them, in steps of 1, 2 or 5 times a power of ten. */
export function roundTicks(most: number): readonly number[] {
  if (!(most > 0)) return [0, 1];
  const rough = most / 4;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((each) => each * power).find((each) => each >= rough) ?? rough;
  const count = Math.ceil(most / step - 1e-9);
  return Array.from({ length: count + 1 }, (_, at) => at * step);
}
