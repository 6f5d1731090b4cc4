import { expect, test } from 'vitest';
import { usHost } from '../../../../src/core/host/us.ts';
import type { Keymap } from '../../../../src/core/keymap/types.ts';
import { planOf, threeStates, togetherEdit } from '../../../../src/ui/app/together/together.ts';
import { A, chord, layer, small } from '../../../core/keymap/small.ts';

const base = small([layer('base', { k1: { tap: A } })], [chord('c1', ['k1', 'k2'])]);
const withTap = (key: string, code: 'KeyX' | 'KeyY', notes?: string): Keymap => ({
  ...base,
  ...(notes === undefined ? {} : { notes }),
  layers: [layer('base', { ...base.layers[0]?.places, [key]: { tap: { do: 'key', code } } })],
});

test('the name that the page gave a copy does not become the original’s; one that the typist gave does', () => {
  const branch = { of: 'a', base, name: 'Small, copy' };
  expect(threeStates(branch, { ...base, name: 'Small, copy' }, base).mine.name).toBe('Small');
  expect(threeStates(branch, { ...base, name: 'Own name' }, base).mine.name).toBe('Own name');
});

test('shows what each changed, and asks where both did', () => {
  const states = { base, mine: withTap('k1', 'KeyX', 'mine'), theirs: withTap('k1', 'KeyY') };
  const plan = planOf(states, new Map(), usHost);
  expect(plan.here).toEqual(['the notes differ', expect.stringMatching(/, Base: A became X$/)]);
  expect(plan.there).toEqual([expect.stringMatching(/, Base: A became Y$/)]);
  expect(plan.questions).toEqual([
    { part: 'place base k1', where: expect.stringMatching(/, Base$/), mine: 'X', theirs: 'Y' },
  ]);
  expect(plan.open).toBe(1);
  expect(planOf(states, new Map([['place base k1', 'mine']]), usHost).open).toBe(0);
});

test.each([
  [
    'chord',
    { ...base, chords: [] },
    { ...base, chords: [chord('c1', ['k1', 'k2'], { windowMs: 80 })] },
    'taken away',
    /Tab, .*window 80 ms, live on every layer/,
  ],
  ['notes', { ...base, notes: 'a\nb' }, { ...base, notes: 'c' }, '“a b”', /^“c”$/],
  [
    'timing',
    { ...base, timing: { holdAfterMs: 150 } },
    { ...base, timing: { holdAfterMs: 250 } },
    'hold after 150 ms',
    /^hold after 250 ms$/,
  ],
  [
    'timing that one put back to the usual',
    { ...base, timing: { holdAfterMs: 150 } },
    base,
    'hold after 150 ms',
    /^the usual$/,
    { ...base, timing: { holdAfterMs: 250 } },
  ],
] satisfies readonly (readonly [string, Keymap, Keymap, string, RegExp, Keymap?])[])(
  'words for a choice about %s',
  (_, mine, theirs, here, there, was: Keymap = base) => {
    const [question] = planOf({ base: was, mine, theirs }, new Map(), usHost).questions;
    expect(question?.mine).toBe(here);
    expect(question?.theirs).toMatch(there);
  },
);

test('nothing is brought together while there is something to choose', () => {
  const states = { base, mine: withTap('k1', 'KeyX'), theirs: withTap('k1', 'KeyY') };
  expect(togetherEdit(states, new Map())).toMatchObject({
    ok: false,
    problem: expect.stringContaining('changed meanwhile'),
  });
  const edit = togetherEdit(states, new Map([['place base k1', 'mine']]));
  expect(edit.ok && edit.value).toMatchObject({ edit: 'replace-design' });
  // One side that changed nothing: nothing to choose.
  expect(togetherEdit({ base, mine: base, theirs: withTap('k2', 'KeyX') }, new Map()).ok).toBe(true);
});
