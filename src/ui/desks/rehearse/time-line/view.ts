/** Which part of a stream is looked at: the time at the left edge, ms, and how much time a pixel is. */
export interface View {
  readonly from: number;
  readonly msPerPx: number;
}

/** At the closest, a pixel is a twentieth of a millisecond: a browser's clock tells no more. */
const CLOSEST = 0.05;
/** Free room before the first and after the last event, as a share of what is seen. */
const MARGIN = 0.04;

/** The whole stream in view. */
export function fitted(endMs: number, width: number): View {
  const span = Math.max(endMs, 200) * (1 + 2 * MARGIN);
  return { from: (-MARGIN * span) / (1 + 2 * MARGIN), msPerPx: span / Math.max(1, width) };
}

/** Closer (factor under 1) or further off, the time under a pixel staying where it is. */
export function zoomed(view: View, atPx: number, factor: number, endMs: number, width: number): View {
  const furthest = fitted(endMs, width).msPerPx;
  const msPerPx = Math.min(furthest, Math.max(Math.min(CLOSEST, furthest), view.msPerPx * factor));
  return kept({ from: view.from + atPx * (view.msPerPx - msPerPx), msPerPx }, endMs, width);
}

/** Moved by so many pixels, later times coming into view for positive ones. */
export function moved(view: View, px: number, endMs: number, width: number): View {
  return kept({ ...view, from: view.from + px * view.msPerPx }, endMs, width);
}

/** No further off the stream than its margin. */
function kept(view: View, endMs: number, width: number): View {
  const span = width * view.msPerPx;
  const margin = MARGIN * span;
  const latest = Math.max(-margin, endMs + margin - span);
  return { ...view, from: Math.min(latest, Math.max(-margin, view.from)) };
}

/** A view in which a time is to be seen, moved only as far as it must. */
export function withInView(view: View, t: number, endMs: number, width: number): View {
  const edge = 0.1 * width * view.msPerPx;
  const right = view.from + width * view.msPerPx;
  if (t < view.from + edge) return kept({ ...view, from: t - edge }, endMs, width);
  if (t > right - edge) return kept({ ...view, from: t - width * view.msPerPx + edge }, endMs, width);
  return view;
}

/** While somebody types: the newest at the right, two seconds in view. */
export function following(endMs: number, width: number): View {
  const msPerPx = 2000 / Math.max(1, width);
  return { from: Math.max(0, endMs - 1800), msPerPx };
}

/** Where a time lies, px from the left edge. */
export function pxOf(view: View, t: number): number {
  return (t - view.from) / view.msPerPx;
}

/** The distance of the ruler's ticks, ms: 1, 2 or 5 times a power of ten, so many pixels apart at least. */
export function tickMs(view: View, leastPx = 80): number {
  const least = view.msPerPx * leastPx;
  const power = 10 ** Math.floor(Math.log10(least));
  return [1, 2, 5, 10].map((step) => step * power).find((step) => step >= least) ?? least;
}

/** A time on the ruler: "250 ms" between, "1.25 s" from a second on. */
export function tickText(t: number, step: number): string {
  if (step < 1000 && Math.abs(t) < 1000) return `${Math.round(t * 100) / 100} ms`;
  const digits = Math.max(0, Math.ceil(-Math.log10(step / 1000) - 1e-9));
  return `${(t / 1000).toFixed(Math.min(5, digits))} s`;
}
