import { expect, test } from 'vitest';
import type { Diagnosis } from '../../../src/core/practice/fault.ts';
import {
  isOver,
  newSession,
  pastOf,
  wantedNeed,
  withDone,
  withHint,
  withPrompt,
  withSlip,
  withTime,
} from '../../../src/core/practice/session.ts';

const ROUTE = { signature: 'press R23', words: 'press right middle home', keys: ['R23'] };
const SLIP: Diagnosis = { sure: true, faults: [{ fault: 'came-early' }] };
const started = newSession({ id: 's1', seed: 0.5, minutes: 5, input: 'engine', startedAt: 1000 });
const prompt = (needs: string) =>
  ({ needs: [...needs], focus: needs[1] ?? needs, standing: 'new', shape: 'company' }) as const;

test('a session goes from need to need; the first of a prompt is not timed', () => {
  let session = withPrompt(started, prompt('ak('));
  expect(wantedNeed(session)).toBe('a');
  session = withDone(session, 2000, 900, ROUTE);
  session = withDone(session, 2200, 200, ROUTE);
  expect(session.attempts.map(({ need, ms }) => [need, ms])).toEqual([
    ['a', null],
    ['k', 200],
  ]);
  expect(wantedNeed(session)).toBe('(');
  expect(wantedNeed(withDone(session, 2300, 100, ROUTE))).toBeNull();
});

test('a slip loses the try and its time, a hint the time', () => {
  const atSecond = withDone(withPrompt(started, prompt('ak')), 2000, null, ROUTE);
  expect(withDone(withSlip(atSecond, SLIP), 2500, 500, ROUTE).attempts[1]).toEqual({
    need: 'k',
    at: 2500,
    right: false,
    ms: null,
    hinted: false,
    diagnosis: SLIP,
  });
  expect(withDone(withHint(atSecond), 2500, 500, ROUTE).attempts[1]).toMatchObject({ right: true, ms: null });
});

test('a prompt of one need is timed from when it is shown', () => {
  expect(withDone(withPrompt(started, prompt('k')), 2000, 700, ROUTE).attempts[0]?.ms).toBe(700);
});

test('it is over when its time is, but not in the middle of a prompt', () => {
  const begun = withTime(withPrompt(started, prompt('ak')), 5 * 60_000);
  expect(isOver(begun)).toBe(false);
  const done = withDone(withDone(begun, 1, null, ROUTE), 2, 1, ROUTE);
  expect(isOver(done)).toBe(true);
  expect(isOver({ ...done, activeMs: 4 * 60_000 })).toBe(false);
});

test('drills go by its tries; it can be kept as it is', () => {
  const session = withDone(withSlip(withPrompt(started, prompt('ak')), SLIP), 1, null, ROUTE);
  expect(pastOf(session).tries.get('a')).toEqual([false]);
  expect(structuredClone(session)).toEqual(session);
});
