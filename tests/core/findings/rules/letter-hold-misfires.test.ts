import { describe, expect, it } from 'vitest';
import { findAll } from '../../../../src/core/findings/find-all.ts';
import { letterHoldMisfires } from '../../../../src/core/findings/rules/letter-hold-misfires.ts';
import { design, factsFor, inShort, type Sketch, says } from '../design.ts';
import { afterMend } from '../taking-a-mend.ts';

const layers = { base: 'a⇩ShiftLeft b c d e f g h i Space⇩ControlLeft' };
const typing = { text: 'aba cab ab a bad cafe' };
const sketch = { layers, typing };

describe('letter-hold-misfires', () => {
  it('says so of a letter, and not of what else has a hold', () => {
    expect(inShort(says(letterHoldMisfires, sketch))).toEqual(['misfires | L1 | base | ']);
  });

  it.each<[string, Sketch]>([
    ['nothing is known of the typing', { layers }],
    ['the letter is never typed', { ...sketch, typing: { text: 'bed bed' } }],
    ['its hold is blank', { ...sketch, layers: { base: 'a⇩∅ b c d e f g h i Space' } }],
    ['so much is let pass', { ...sketch, typing: { ...typing, limits: { holdPer1000Words: 100_000 } } }],
  ])('keeps quiet when %s', (_, near) => {
    expect(says(letterHoldMisfires, near)).toEqual([]);
  });

  it('takes the place of the general note about letters without protection', () => {
    const rules = (each: Sketch) => findAll(factsFor(each)).map(({ rule }) => rule);
    expect(rules({ layers })).toContain('letter-hold-unprotected');
    expect(rules(sketch)).toContain('letter-hold-misfires');
    expect(rules(sketch)).not.toContain('letter-hold-unprotected');
  });

  it('offers the gentlest timings that are enough', () => {
    const [found] = says(letterHoldMisfires, { ...sketch, timing: { holdBy: 'press-inside' } });
    const before = Number(found?.data.misfiresPer1000Words);
    expect(found?.mends.length).toBeGreaterThan(0);
    for (const mend of found?.mends ?? []) {
      const keymap = afterMend(design({ ...sketch, timing: { holdBy: 'press-inside' } }), mend);
      const timing = keymap.layers[0]?.places.L1;
      const after = says(letterHoldMisfires, {
        ...sketch,
        timing: { ...timing } as Sketch['timing'] & object,
      });
      expect(before).toBeGreaterThan(2);
      expect(after).toEqual([]);
    }
  });
});
