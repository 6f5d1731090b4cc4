import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { lineCommand } from '../../../../src/ui/desks/rehearse/time-line/line-command.ts';
import {
  fitted,
  moved,
  pxOf,
  tickMs,
  tickText,
  withInView,
  zoomed,
} from '../../../../src/ui/desks/rehearse/time-line/view.ts';

const ends = fc.double({ min: 1, max: 1e6, noNaN: true });
const widths = fc.integer({ min: 50, max: 3000 });

describe('the view of a stream', () => {
  test.prop([ends, widths])('fitted, all of it is to be seen', (endMs, width) => {
    const view = fitted(endMs, width);
    expect(pxOf(view, 0)).toBeGreaterThanOrEqual(0);
    expect(pxOf(view, endMs)).toBeLessThanOrEqual(width);
  });

  test.prop([fc.double({ min: 0.1, max: 0.9, noNaN: true })])(
    'zooming in keeps the time under the pointer where it is',
    (share) => {
      const view = fitted(10_000, 1000);
      const near = zoomed(view, share * 1000, 0.5, 10_000, 1000);
      const t = view.from + share * 1000 * view.msPerPx;
      expect(pxOf(near, t)).toBeCloseTo(share * 1000, 6);
      expect(near.msPerPx).toBeCloseTo(view.msPerPx / 2, 9);
    },
  );

  test('zooming out ends at the whole, zooming in at a twentieth of a millisecond a pixel', () => {
    const whole = fitted(10_000, 1000);
    expect(zoomed(whole, 300, 2, 10_000, 1000)).toEqual(whole);
    expect(zoomed(whole, 300, 1e-9, 10_000, 1000).msPerPx).toBe(0.05);
  });

  test('moving stops a little beyond both ends', () => {
    const near = zoomed(fitted(10_000, 1000), 0, 0.1, 10_000, 1000);
    expect(moved(near, -1e6, 10_000, 1000).from).toBeCloseTo(-0.04 * 1000 * near.msPerPx, 6);
    const last = moved(near, 1e6, 10_000, 1000);
    expect(pxOf(last, 10_000)).toBeCloseTo(960, 6);
  });

  test('a moment is brought into view, and one that is in view moves nothing', () => {
    const near = zoomed(fitted(10_000, 1000), 0, 0.1, 10_000, 1000);
    const brought = withInView(near, 7000, 10_000, 1000);
    expect(pxOf(brought, 7000)).toBeCloseTo(900, 6);
    expect(withInView(brought, 6900, 10_000, 1000)).toBe(brought);
  });

  test.each([
    [0.05, 5],
    [0.5, 50],
    [1, 100],
    [2, 200],
    [12, 1000],
  ])('at %d ms a pixel a tick every %d ms', (msPerPx, expected) => {
    expect(tickMs({ from: 0, msPerPx })).toBeCloseTo(expected, 9);
  });

  test.each([
    [250, 50, '250 ms'],
    [1250, 50, '1.25 s'],
    [0, 2000, '0 s'],
    [4000, 2000, '4 s'],
  ])('the tick at %d ms, one every %d: %s', (t, step, expected) => {
    expect(tickText(t, step)).toBe(expected);
  });
});

describe('keys on the time line', () => {
  const pressed = (key: string, more = {}) =>
    lineCommand({ key, shiftKey: false, ctrlKey: false, altKey: false, metaKey: false, ...more });
  test.each([
    ['ArrowRight', {}, { do: 'beside', way: 1 }],
    ['ArrowLeft', { shiftKey: true }, { do: 'step', ms: -1 }],
    ['End', {}, { do: 'end', at: 'last' }],
    ['+', { shiftKey: true }, { do: 'zoom', closer: true }],
    ['0', {}, { do: 'whole' }],
    ['ArrowLeft', { altKey: true }, null],
    ['constructor', {}, null],
  ])('%s with %o', (key, more, expected) => {
    expect(pressed(key, more)).toEqual(expected);
  });
});
