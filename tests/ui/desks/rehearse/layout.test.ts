import { describe, expect, test } from 'vitest';
import type { Lane } from '../../../../src/core/rehearse/scene.ts';
import { fitsIn, layoutOf, ROW, RULER } from '../../../../src/ui/desks/rehearse/time-line/layout.ts';

const lanes = (count: number): readonly Lane[] =>
  Array.from({ length: count }, (_, at) => ({
    key: `K${at}`,
    label: `${at}`,
    hand: 'left',
    finger: 'index',
    startsFinger: at === 0,
    startsHand: at === 0,
  }));

describe('the layout of the time line', () => {
  test.each([1, 12, 36])('%d lanes lie between the ruler and the rows, none on another', (count) => {
    const { tops, laneHeight, whyTop, height } = layoutOf(lanes(count), 600, false, 0);
    expect(tops[0]).toBeGreaterThanOrEqual(RULER);
    for (const [at, top] of tops.entries())
      expect(top + laneHeight).toBeLessThanOrEqual(tops[at + 1] ?? whyTop);
    expect(height).toBe(600);
  });

  test('lanes fit as long as they need not be scrolled', () => {
    for (const count of [1, 5, 12, 20, 36])
      expect([count, fitsIn(lanes(count), 300, false)]).toEqual([
        count,
        layoutOf(lanes(count), 300, false, 0).height === 300,
      ]);
  });

  test('more lanes than fit make it higher; its rows stay at the foot of what is seen', () => {
    const top = layoutOf(lanes(60), 300, true, 0);
    expect(top.height).toBeGreaterThan(300);
    expect([top.scrollTop, top.whyTop, top.otherTop]).toEqual([0, 300 - 3 * ROW, 300 - ROW]);
    const scrolled = layoutOf(lanes(60), 300, true, 100);
    expect([scrolled.scrollTop, scrolled.whyTop]).toEqual([100, 400 - 3 * ROW]);
    const end = layoutOf(lanes(60), 300, true, 1e6);
    expect(end.outTop + 2 * ROW).toBe(end.height);
  });
});
