import { describe, expect, it } from 'vitest';
import { findAll } from '../../../src/core/findings/find-all.ts';
import { findingId } from '../../../src/core/findings/finding-id.ts';
import { chord, factsFor, type Sketch } from './design.ts';

const base = 'a b c d ShiftLeft ControlLeft AltLeft MetaLeft @up Space';
const idsOf = (rule: string, sketch: Sketch) =>
  findAll(factsFor(sketch))
    .filter((finding) => finding.rule === rule)
    .map(findingId);

describe('the id of a finding', () => {
  it('stays while numbers and further parts change', () => {
    const twins = (windowMs: number, first: string) => ({
      layers: { base, up: '· · · · · · · · · ·' },
      chords: [chord(first, 'L1 L2', 60, 'Tab'), chord('later', 'L1 L2', windowMs, 'Enter')],
    });
    expect(idsOf('chords-with-same-keys', twins(45, 'one'))).toEqual(
      idsOf('chords-with-same-keys', twins(70, 'two')),
    );
    const lost = (up: string) =>
      idsOf('layer-never-entered', { layers: { base: base.replace('@up', 'x'), up } });
    expect(lost('1 · · · · · · · · ·')).toEqual(lost('· 2 3 · · · · · · ·'));
  });

  it('tells places, needs and pairs of chords apart', () => {
    const ids = [
      ...idsOf('need-missing', { layers: { base }, needs: ['y', 'z', 'key:F5'] }),
      ...idsOf('key-unreachable', { layers: { base, up: '· · · · · · · · x ·' } }),
      ...idsOf('chord-inside-chord', {
        layers: { base },
        chords: [
          chord('small', 'L1 L2', 45, 'Tab'),
          chord('large', 'L1 L2 L3', 65, 'Enter'),
          chord('huge', 'L1 L2 L3 L4', 65, 'Escape'),
        ],
      }),
    ];
    expect(ids).toHaveLength(3 + 1 + 3);
    expect(new Set(ids).size).toBe(ids.length);
  });
});
