import { firstAt } from '../../../../core/rehearse/presses-between.ts';
import type { Run } from '../../../../core/rehearse/run.ts';

/** The next or the last moment at which something happened, seen from a time, ms; the time itself where there is none. */
export function momentBeside({ events, decisions }: Run, from: number, way: 1 | -1): number {
  const places = [
    { list: events, timeOf: (at: number) => events[at]?.t },
    { list: decisions, timeOf: (at: number) => decisions[at]?.t },
  ];
  const found = places.flatMap(({ list, timeOf }) => {
    const at = firstAt<{ readonly t: number }>(list, from, ({ t }) => t);
    if (way === -1) return timeOf(at - 1) ?? [];
    let next = at;
    while ((timeOf(next) ?? Number.POSITIVE_INFINITY) <= from) next += 1;
    return timeOf(next) ?? [];
  });
  if (found.length === 0) return from;
  return way === 1 ? Math.min(...found) : Math.max(...found);
}

/** The moment nearest to a time within so many ms; the time itself where there is none. */
export function momentNear(run: Run, t: number, withinMs: number): number {
  const near = [momentBeside(run, t, -1), momentBeside(run, t - 1e-9, 1)].filter(
    (moment) => Math.abs(moment - t) <= withinMs,
  );
  return near.sort((one, other) => Math.abs(one - t) - Math.abs(other - t))[0] ?? t;
}
