import { describe, expect, test } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import type { DrillMaterial } from '../../../src/core/practice/drill.ts';
import { rankNeeds } from '../../../src/core/practice/ranked-needs.ts';
import { Run, readied } from '../../../src/core/practice/run.ts';
import { isOver, newSession, type Session, wantedNeed } from '../../../src/core/practice/session.ts';
import { Ways } from '../../../src/core/practice/ways.ts';
import { findRoutes } from '../../../src/core/routes/find-routes.ts';
import { need, sample } from './sample.ts';

const routes = findRoutes(sample, usHost, ['(', '1', 'key:Home', 'k', 's'].map(need));
const ways = new Ways(sample, usHost, routes);
const material = (): DrillMaterial => ({
  ranked: rankNeeds(routes, new Map(), null, 0),
  company: null,
  groups: null,
});
const fresh = newSession({ id: 's', seed: 0.3, minutes: 5, input: 'engine', startedAt: 0 });

/** Types whatever is asked for, by its route, one need every so many ms, so many times. */
function typed(start: Session, times: number, everyMs: number): Session {
  const run = new Run({ keymap: sample, host: usHost, ways, oldKeysOf: () => [] }, 'engine', 0);
  let session = readied(start, ways, material);
  for (let at = 1; at <= times; at++) {
    const route = ways.routeOf(wantedNeed(session) ?? '');
    if (route === null) break;
    for (const event of route.events) run.press({ ...event, t: at * everyMs + event.t });
    run.advanceTo(at * everyMs + 1000);
    session = run.settle(session, material, (t) => 5_000_000 + t);
  }
  return session;
}

describe('a run', () => {
  test('goes from prompt to prompt, with the world’s time on each try', () => {
    const session = typed(fresh, 12, 2000);
    expect(session.attempts).toHaveLength(12);
    expect(session.prompts.length).toBeGreaterThan(3);
    expect(session.attempts.every(({ right, at }) => right && at > 5_000_000)).toBe(true);
    expect(session.activeMs).toBeGreaterThan(20_000);
    expect(Object.keys(session.routes)).toContain(session.attempts[0]?.need);
  });

  test('ends when its time is over, with the prompt that was begun', () => {
    const session = typed(fresh, 400, 2000);
    expect(isOver(session)).toBe(true);
    expect(session.activeMs).toBeGreaterThanOrEqual(5 * 60_000);
    expect(session.activeMs).toBeLessThan(5 * 60_000 + 10_000);
    expect(session.position).toBe(session.prompts.at(-1)?.needs.length);
  });

  test('counts a long gap as a pause', () => {
    const session = typed(fresh, 4, 60_000);
    expect(session.activeMs).toBe(60_000);
    expect(session.attempts.map(({ ms }) => ms)).toEqual([null, null, null, null]);
  });
});

describe('taken up again', () => {
  test('it asks for the same place as before', () => {
    const before = typed(fresh, 4, 2000);
    expect(readied(before, ways, material)).toBe(before);
  });

  test('the time to find one’s place again counts for no need', () => {
    const before = typed(fresh, 4, 2000);
    expect(before.position).toBeGreaterThan(0);
    expect(before.position).toBeLessThan(before.prompts.at(-1)?.needs.length ?? 0);
    const [first, second] = typed(before, 2, 2000).attempts.slice(4);
    expect(first).toMatchObject({ right: true, ms: null });
    expect(second?.at).toBeGreaterThan(first?.at ?? 0);
  });

  test('with nothing, so that it is over, where its time has run out in a prompt that cannot be typed now', () => {
    const lost = {
      ...fresh,
      activeMs: 6 * 60_000,
      prompts: [{ needs: ['ß'], focus: 'ß', standing: 'new', shape: 'alone' } as const],
    };
    const after = readied(lost, ways, material);
    expect(wantedNeed(after)).toBeNull();
    expect(isOver(after)).toBe(true);
  });

  test('with another prompt where the design no longer types the one that was begun', () => {
    const before = typed(fresh, 0, 2000);
    const lost = {
      ...before,
      prompts: [{ needs: ['ß'], focus: 'ß', standing: 'new', shape: 'alone' } as const],
    };
    const after = readied(lost, ways, material);
    expect(after.prompts).toHaveLength(2);
    expect(ways.of(wantedNeed(after) ?? '')).not.toBeNull();
  });
});
