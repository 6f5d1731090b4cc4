import { describe, expect, it } from 'vitest';
import { factsOf } from '../../../src/core/findings/facts.ts';
import { protectLetters } from '../../../src/core/findings/letter-protections.ts';
import { designAfter } from '../../../src/core/findings/sound-mend.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { createRunCounter } from '../../../src/core/needs/counts-runs.ts';
import { protectionEdit } from '../../../src/core/typist/protections.ts';
import { accidentsOf, design, factsFor, type Sketch } from './design.ts';

const text = 'aba cab ab a bad cafe hag if high dig';
const counter = createRunCounter();
counter.add(text);
const counts = counter.counts();
const typing = { text };
/** Shift on both index fingers, Control on both little ones, a layer under the left thumb. */
const layers = {
  base: 'a⇩ControlLeft b c d⇩ShiftLeft e⇩ShiftRight f g h⇩ControlRight Space⇩@up i',
  up: '· 1 · · · · · · · ·',
};
const sketch: Sketch = { layers, typing, timing: { holdBy: 'press-inside' }, needs: ['A', 'E', 'F', '1'] };
const WISH = { most: 20, mostMisses: 600 };

describe('protections for letters', () => {
  it('are none where nothing is known of the typing', () => {
    expect(protectLetters(factsFor({ layers }), counts, WISH)).toBeNull();
  });

  it('leave what is no letter alone, and give the same to a modifier on both sides', () => {
    const found = protectLetters(factsFor(sketch), counts, WISH);
    expect(found?.enough).toBe(true);
    expect(found?.before).toBeGreaterThan(100);
    expect(found?.holds.map(({ key }) => key)).not.toContain('LT');
    const changeOf = (key: string) => found?.holds.find((each) => each.key === key)?.change;
    expect(changeOf('L4')).toEqual(changeOf('R4'));
    expect(changeOf('L1')).toEqual(changeOf('R1'));
  });

  it('say what the design really has afterwards, and hurt no need that could be spared', () => {
    const facts = factsFor(sketch);
    const found = protectLetters(facts, counts, WISH);
    if (found === null) throw new Error('There are none.');
    const after = designAfter(facts, [protectionEdit(found)]);
    if (after === null) throw new Error('The change is refused.');
    const again = factsOf(after, usHost, undefined, undefined, accidentsOf(after, typing));
    const left = protectLetters(again, counts, WISH);
    expect(left).toMatchObject({ changes: 0, enough: true });
    expect(left?.before).toBeCloseTo(found.after, 9);
    expect(found.hurt).toEqual([]);
    expect(again.needs.every(({ route }) => route !== null && !route.clumsy)).toBe(true);
  });

  it('say so where nothing is enough', () => {
    const found = protectLetters(factsFor(sketch), counts, { most: 0, mostMisses: 100 });
    expect(found?.enough).toBe(false);
    expect(found?.after).toBeGreaterThan(0);
  });

  it('a design without hold/tap letters needs none', () => {
    const plain = { typing, layers: { base: 'a b c d e f g h i j' } };
    expect(protectLetters(factsFor(plain), counts, WISH)).toMatchObject({
      changes: 0,
      before: 0,
      enough: true,
    });
    expect(design(plain).layers.length).toBe(1);
  });
});
