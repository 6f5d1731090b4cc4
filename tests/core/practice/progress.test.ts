import { describe, expect, test } from 'vitest';
import { foldSessions, progressOf } from '../../../src/core/practice/progress.ts';
import type { Attempt, KnownRoute, SessionLog } from '../../../src/core/practice/session-log.ts';
import { standingOf, usualMsOf } from '../../../src/core/practice/standing.ts';
import { sample, waysOf } from './sample.ts';

const DAY = 24 * 60 * 60 * 1000;
const route = (signature: string): KnownRoute => ({ signature, words: `by ${signature}`, keys: [signature] });

/** "a✓200 a✗ a?": right in 200 ms, wrong, right with a hint and without a time. */
function session(
  day: number,
  tries: string,
  routes: Readonly<Record<string, string>> = { a: 'L25' },
): SessionLog {
  const startedAt = day * DAY;
  const attempts = tries.split(' ').map((word, at): Attempt => {
    const [, need = '', sign, ms = ''] = /^(.+)([✓✗?])(\d*)$/.exec(word) ?? [];
    return {
      need,
      at: startedAt + at * 1000,
      right: sign !== '✗',
      ms: ms === '' ? null : Number(ms),
      hinted: sign === '?',
      diagnosis: null,
    };
  });
  const known = Object.entries(routes).map(([need, signature]) => [need, route(signature)] as const);
  return { startedAt, activeMs: 60_000, attempts, routes: Object.fromEntries(known) };
}

const NOW = new Map([['a', route('L25')]]);
const ofA = (sessions: readonly SessionLog[], now = NOW) =>
  progressOf(foldSessions(sessions), (need) => now.get(need) ?? null).get('a');

describe('progress', () => {
  test('counts tries, errors and times', () => {
    expect(ofA([session(0, 'a✓200 a✗ a✓300 a✓250 a?')])).toMatchObject({
      attempts: 5,
      errors: 1,
      median: { value: 250 },
      tries: [true, false, true, true, true],
    });
  });

  test('a good session puts the need off, a bad one brings it back, whenever it is', () => {
    const good = [session(0, 'a✓200 a✓200'), session(1, 'a✓200 a✓210')];
    expect(ofA(good)?.card).toMatchObject({ repetitions: 2, intervalDays: 6 });
    expect(ofA([...good, session(2, 'a✓200 a✓190')])?.card).toMatchObject({
      repetitions: 2,
      intervalDays: 6,
    });
    expect(ofA([...good, session(2, 'a✗ a✗')])?.card).toMatchObject({ repetitions: 0, intervalDays: 1 });
  });

  test('a need that was moved begins anew and says where it was', () => {
    const before = [session(0, 'a✓200 a✓200'), session(1, 'a✓200 a✓200')];
    const moved = ofA(before, new Map([['a', route('R25')]]));
    expect(moved).toMatchObject({ attempts: 0, card: { repetitions: 0, dueAt: null } });
    expect(moved?.moved).toEqual({ from: route('L25'), metAt: null });
    const after = [...before, session(2, 'a✓400', { a: 'R25' })];
    expect(ofA(after, new Map([['a', route('R25')]]))).toMatchObject({
      attempts: 1,
      moved: { from: route('L25'), metAt: 2 * DAY },
    });
  });

  test('a need that the design has lost keeps its figures', () => {
    expect(ofA([session(0, 'a✓200')], new Map())).toMatchObject({ attempts: 1, moved: null });
  });
});

test('two keys change places in the design: what they typed must be relearnt, and nothing else', () => {
  const [letters, ...others] = sample.layers;
  if (letters === undefined) throw new Error('no layer');
  const { R23: k = {}, R24: l = {}, ...rest } = letters.places;
  const swapped = { ...sample, layers: [{ ...letters, places: { ...rest, R23: l, R24: k } }, ...others] };
  const texts = ['k', 'l', 'j', '-', '_'];
  const before = waysOf(texts);
  const routes = Object.fromEntries(texts.map((text) => [text, before.of(text)?.known ?? route('')]));
  const practised = { ...session(0, texts.map((text) => `${text}✓200`).join(' ')), routes };
  const after = waysOf(texts, swapped);
  const progress = progressOf(foldSessions([practised]), (text) => after.of(text)?.known ?? null);
  expect(texts.filter((text) => progress.get(text)?.moved != null)).toEqual(['k', 'l']);
  expect(progress.get('k')?.moved?.from.words).toBe('press right middle home');
  expect(after.of('k')?.known.words).toBe('press right ring home');
});

describe('how a need stands', () => {
  test.each([
    ['never practised', '', 'new'],
    ['two right', 'a✓200 a✓200', 'new'],
    ['three right in a row', 'a✓200 a✓200 a✓200', 'known'],
    ['its last try wrong', 'a✓200 a✓200 a✓200 a✗', 'wrong'],
    ['two wrong of the last ten', 'a✓200 a✓200 a✓200 a✗ a✓200 a✗ a✓200', 'wrong'],
    ['slow beside the others', 'a✓600 a✓600 a✓600 a✓600', 'slow'],
  ])('%s', (_, tries, standing) => {
    const progress = tries === '' ? undefined : ofA([session(0, tries)]);
    expect(standingOf(progress, 300, 0)).toBe(standing);
  });

  test('due when its day has come, changed when it was moved', () => {
    const sessions = [session(0, 'a✓200 a✓200 a✓200')];
    expect(standingOf(ofA(sessions), 300, 0.2 * DAY)).toBe('known');
    expect(standingOf(ofA(sessions), 300, DAY)).toBe('due');
    expect(standingOf(ofA(sessions, new Map([['a', route('R25')]])), 300, 0)).toBe('changed');
  });

  test('the usual time is the median of the medians', () => {
    const routes = { a: '1', b: '2', c: '3' };
    const tries = ['a', 'b', 'c'].flatMap((need, at) => Array(4).fill(`${need}✓${200 + 100 * at}`)).join(' ');
    expect(usualMsOf(progressOf(foldSessions([session(0, tries, routes)]), () => null).values())).toBe(300);
    expect(usualMsOf([])).toBeNull();
  });
});
