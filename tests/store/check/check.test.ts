// @vitest-environment node
import { describe, expect, test } from 'vitest';
import { checkPlan } from '../../../src/core/check/steps.ts';
import { usHost } from '../../../src/core/host/us.ts';
import {
  type KeptLook,
  type KeptResult,
  keptLook,
  looksFor,
  NO_CHECK,
  readCheck,
  resultsFor,
} from '../../../src/store/check/kept-check.ts';
import { makeCheck } from '../../../src/store/check/make-check.ts';
import { memoryKeyValue } from '../../../src/store/keeping/key-value.ts';
import { A, B, layer, small } from '../../core/keymap/small.ts';

const result = (step: string, verdict: KeptResult['verdict'], expected = 'KeyA'): KeptResult => ({
  step,
  verdict,
  expected,
  strokes: [],
  otherCharacters: false,
  bounces: [],
  stuck: [],
});

const look = (step: string, verdict: KeptLook['verdict'], expected: string | null = 'KeyA'): KeptLook => ({
  step,
  verdict,
  expected,
});

async function opened(values = memoryKeyValue(), design = 'one') {
  let clock = 4000;
  const store = makeCheck(values, () => {
    clock += 1000;
    return clock;
  });
  await store.getState().open(design);
  return { values, state: () => store.getState() };
}

describe('a check', () => {
  test('is there again at the next visit, stopped where it was', async () => {
    const { values, state } = await opened();
    state().note(result('base k1 tap', 'wrong'));
    state().note(result('base k2 tap', 'silent'));
    state().look(look('base k3 tap', 'right'));
    state().look(look('base k4 tap', 'right'));
    state().look(look('base k4 tap', 'wrong'));
    state().look(look('base k5 tap', 'right'));
    state().unlook('base k5 tap');
    await state().written();
    const later = await opened(values);
    expect(later.state().check).toEqual({
      begunAt: 5000,
      lastAt: 11_000,
      results: [result('base k1 tap', 'wrong'), result('base k2 tap', 'silent')],
      byEye: [look('base k3 tap', 'right'), look('base k4 tap', 'wrong')],
    });
  });

  test('holds one result a step, the last one', async () => {
    const { state } = await opened();
    state().note(result('base k1 tap', 'wrong'));
    state().note(result('base k1 tap', 'right'));
    expect(state().check.results.map(({ verdict }) => verdict)).toEqual(['right']);
  });

  test('belongs to its design', async () => {
    const { values, state } = await opened();
    state().note(result('base k1 tap', 'wrong'));
    await state().written();
    expect((await opened(values, 'two')).state().check).toEqual(NO_CHECK);
  });

  test('taken up again, it has what another tab has taken down since', async () => {
    const here = await opened();
    const elsewhere = await opened(here.values);
    elsewhere.state().note(result('base k1 tap', 'right'));
    await elsewhere.state().written();
    await here.state().open('one');
    here.state().note(result('base k2 tap', 'right'));
    await here.state().written();
    const later = await opened(here.values);
    expect(later.state().check.results.map(({ step }) => step)).toEqual(['base k1 tap', 'base k2 tap']);
  });

  test('begun anew, nothing of the old one is left', async () => {
    const { values, state } = await opened();
    state().note(result('base k1 tap', 'wrong'));
    state().startOver();
    await state().written();
    expect((await opened(values)).state().check.results).toEqual([]);
  });

  test('is gone for good once its design is; another design keeps its own', async () => {
    const { values, state } = await opened();
    state().note(result('base k1 tap', 'wrong'));
    const other = await opened(values, 'two');
    other.state().note(result('base k1 tap', 'right'));
    await other.state().written();
    await state().forget('one');
    expect(state().check).toEqual(NO_CHECK);
    expect(await values.names()).toEqual(['two']);
  });

  test('a write that fails is told', async () => {
    const values = { ...memoryKeyValue(), set: () => Promise.reject(new Error('The disk is full.')) };
    const { state } = await opened(values);
    state().note(result('base k1 tap', 'right'));
    await state().written();
    expect(state().failed).toBe('The disk is full.');
  });
});

test('results of what the design has changed since are passed over', () => {
  const { steps } = checkPlan(small([layer('base', { k1: { tap: A }, k2: { tap: B } })]), usHost);
  const kept = {
    ...NO_CHECK,
    results: [result('base k1 tap', 'right'), result('base k2 tap', 'right', 'KeyX')],
  };
  expect([...resultsFor(kept, steps).keys()]).toEqual(['base k1 tap']);
});

test('what was found by eye is passed over where the design has changed since, strokes or none', () => {
  const brighter = { do: 'board', label: 'brighter' } as const;
  const power = { do: 'key', code: 'Power' } as const;
  const { steps } = checkPlan(small([layer('base', { k1: { tap: brighter }, k2: { tap: power } })]), usHost);
  const [first, second] = steps;
  if (first === undefined || second === undefined) throw new Error('no steps');
  const looks = (byEye: readonly KeptLook[]) => [...looksFor({ ...NO_CHECK, byEye }, steps)];
  expect(looks([keptLook(first, 'wrong'), keptLook(second, 'right')])).toEqual([
    ['base k1 tap', 'wrong'],
    ['base k2 tap', 'right'],
  ]);
  expect(looks([look('base k1 tap', 'wrong', 'other'), look('base k2 tap', 'right', 'KeyA')])).toEqual([]);
  expect(looks([look('base k1 tap', 'right', null)])).toEqual([['base k1 tap', 'right']]);
});

test.each([
  [null],
  ['text'],
  [{ begunAt: 'now', results: [], byEye: [] }],
  [{ begunAt: 1 }],
  [{ begunAt: 1e300, results: [], byEye: [] }],
])('what is no check is none: %j', (stored) => {
  expect(readCheck(stored)).toBeNull();
});

test('of a stored check only what can be read is taken', () => {
  const byEye = ['c', 4, look('d', 'wrong'), { step: 'e', verdict: 'maybe' }];
  const spoiled = [[null], [{ code: 'KeyA' }], [{ code: 'KeyA', with: ['Hyper'], key: 'a', timeMs: 1 }]].map(
    (strokes) => ({ ...result('c', 'wrong'), strokes }),
  );
  const stored = { begunAt: 1, results: [result('a', 'right'), { step: 'b' }, 7, ...spoiled], byEye };
  expect(readCheck(stored)).toEqual({
    begunAt: 1,
    lastAt: 1,
    results: [result('a', 'right')],
    byEye: [look('c', 'right', null), look('d', 'wrong')],
  });
});
