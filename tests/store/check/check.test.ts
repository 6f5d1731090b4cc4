// @vitest-environment node
import { describe, expect, test } from 'vitest';
import { checkPlan } from '../../../src/core/check/steps.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { type KeptResult, NO_CHECK, readCheck, resultsFor } from '../../../src/store/check/kept-check.ts';
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

async function opened(values = memoryKeyValue(), design = 'one') {
  const store = makeCheck(values, () => 5000);
  await store.getState().open(design);
  return { values, state: () => store.getState() };
}

describe('a check', () => {
  test('is there again at the next visit, stopped where it was', async () => {
    const { values, state } = await opened();
    state().note(result('base k1 tap', 'wrong'));
    state().note(result('base k2 tap', 'silent'));
    state().tick('base k3 tap', true);
    await state().written();
    const later = await opened(values);
    expect(later.state().check).toEqual({
      begunAt: 5000,
      results: [result('base k1 tap', 'wrong'), result('base k2 tap', 'silent')],
      byEye: ['base k3 tap'],
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

  test('begun anew, nothing of the old one is left', async () => {
    const { values, state } = await opened();
    state().note(result('base k1 tap', 'wrong'));
    state().startOver();
    await state().written();
    expect((await opened(values)).state().check.results).toEqual([]);
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

test.each([[null], ['text'], [{ begunAt: 'now', results: [], byEye: [] }], [{ begunAt: 1 }]])(
  'what is no check is none: %j',
  (stored) => {
    expect(readCheck(stored)).toBeNull();
  },
);

test('of a stored check only what can be read is taken', () => {
  const stored = { begunAt: 1, results: [result('a', 'right'), { step: 'b' }, 7], byEye: ['c', 4] };
  expect(readCheck(stored)).toEqual({ begunAt: 1, results: [result('a', 'right')], byEye: ['c'] });
});
