// @vitest-environment happy-dom
import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { samePlain } from '../../../src/core/base/same-plain.ts';
import { dropId, targetOf } from '../../../src/ui/board/drop-id.ts';
import { keyLights } from '../../../src/ui/board/key-lights.ts';
import { newChordDraft, whyNoChord } from '../../../src/ui/board/new-chord.ts';
import { roundedPath } from '../../../src/ui/board/rounded-path.ts';
import { tabStopOf } from '../../../src/ui/board/tab-stop.ts';
import { board36, design } from './sample.ts';

describe('lights', () => {
  test('number a route’s steps on their keys, held ones marked', () => {
    const order = [
      { key: 'LT1', held: true },
      { key: 'R22', held: false },
      { key: 'R22', held: false },
    ];
    const lit = { why: '(', keys: ['LT1', 'R22', 'R23'], chords: [], layers: [], order };
    expect([...keyLights(lit)]).toEqual([
      ['LT1', '1_'],
      ['R22', '2 3'],
      ['R23', ''],
    ]);
    expect(keyLights(null).size).toBe(0);
  });
});

describe('a new chord', () => {
  test('is live on the layer in front and gives nothing yet', () => {
    const draft = newChordDraft(['R22', 'R23'], 'base');
    expect(draft).toMatchObject({ keys: ['R22', 'R23'], layers: ['base'], action: { do: 'nothing' } });
  });

  test.each([
    [['R22'], /two keys/],
    [['R21', 'R22', 'R23', 'R24', 'R25', 'RT1'], /five keys/],
  ])('is refused of %j', (keys, why) => {
    expect(whyNoChord(design(), keys)).toMatch(why);
    expect(whyNoChord(design(), ['R22', 'R23'])).toBeNull();
  });
});

describe('the tab stop', () => {
  test.each([
    ['R23', 'R23'],
    [null, 'L22'],
    ['gone', 'L22'],
  ])('after a focus on %s it is %s', (focused, stop) => {
    expect(tabStopOf(board36(), focused)).toBe(stop);
  });

  test('is the first key where no home key is known', () => {
    const board = board36();
    const keys = board.keys.map((key) => ({ ...key, home: false }));
    expect(tabStopOf({ ...board, keys }, null)).toBe(board.keys[0]?.id);
  });
});

describe('drop targets', () => {
  test('are found from any element within a half of a key', () => {
    document.body.innerHTML = '<div data-key="R22"><p data-side="hold"><b></b></p><i></i></div>';
    expect(targetOf(document.querySelector('b'))).toEqual({ key: 'R22', side: 'hold' });
    expect(targetOf(document.querySelector('i'))).toBeNull();
    expect(targetOf(null)).toBeNull();
    expect(dropId({ key: 'R22', side: 'hold' })).toBe('key:R22:hold');
  });
});

describe('a rounded outline', () => {
  test('keeps corners no rounder than half their edges', () => {
    const triangle = [
      { x: 0, y: 0 },
      { x: 4, y: 0 },
      { x: 0, y: 3 },
    ];
    expect(roundedPath(triangle, 99)).toBe(
      'M0.00 1.50Q0.00 0.00 2.00 0.00L2.00 0.00Q4.00 0.00 2.00 1.50L2.00 1.50Q0.00 3.00 0.00 1.50Z',
    );
  });
});

describe('equal content', () => {
  test.prop([fc.jsonValue(), fc.jsonValue()])('is told as JSON tells it', (one, other) => {
    const copy = JSON.parse(JSON.stringify(one));
    expect(samePlain(copy, JSON.parse(JSON.stringify(copy)))).toBe(true);
    const sorted = (value: unknown) =>
      JSON.stringify(value, (_, part) => (isObject(part) ? entriesOf(part) : part));
    expect(samePlain(copy, JSON.parse(JSON.stringify(other)))).toBe(
      sorted(copy) === sorted(JSON.parse(JSON.stringify(other))),
    );
  });

  test.each([
    [[], {}],
    [{ a: 1 }, { b: 1 }],
    [[1, 2], [1]],
    [{ a: undefined }, {}],
    [null, {}],
  ])('%j is not %j', (one, other) => {
    expect(samePlain(one, other)).toBe(false);
  });
});

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function entriesOf(value: object): unknown {
  return ['object', ...Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1))];
}
