import { describe, expect, it } from 'vitest';
import { findAll } from '../../../src/core/findings/find-all.ts';
import { findingRows, findingsInShort } from '../../../src/core/findings/rows.ts';
import { chord, factsFor, type Sketch } from './design.ts';

const all = 'a b ControlLeft AltLeft MetaLeft ShiftLeft g h i j';
const findings = (sketch: Sketch) => findAll(factsFor(sketch));

describe('findingRows', () => {
  it('says nothing of a design without findings', () => {
    const none = findings({ layers: { base: all } });
    expect(findingRows(none)).toEqual([]);
    expect(findingsInShort(none)).toBe('Nothing stands against this design');
  });

  it('groups by harm, then by rule, and leaves no finding out', () => {
    const found = findings({
      layers: { base: all.replace(' i ', ' · '), up: '· · · · · · · · · ·' },
      chords: [chord('short', 'L1 L2', 30, 'Tab'), chord('long', 'L1 R1', 300, 'Enter')],
    });
    const sections = findingRows(found);
    expect(
      sections.map(({ severity, count, groups }) => [severity, count, groups.map(({ rule }) => rule)]),
    ).toEqual([
      ['broken', 1, ['layer-never-entered']],
      ['risky', 2, ['chord-window-outside-hands']],
      ['note', 1, ['key-without-binding']],
    ]);
    expect(
      sections.flatMap(({ groups }) => groups.flatMap(({ rows }) => rows.map(({ finding }) => finding))),
    ).toEqual(found);
    expect(findingsInShort(found)).toBe('1 broken, 2 risky, 1 worth knowing');
  });

  it('folds a rule with more than three findings, and says how many can be mended', () => {
    const groupFor = (missing: readonly string[]) =>
      findingRows(findings({ layers: { base: all.replace(' i ', ' · ') }, needs: missing }))[0]?.groups[0];
    expect(groupFor(['1', '2', '3'])?.folded).toBe('');
    expect(groupFor(['1', '2', '3', '4'])?.folded).toBe(
      'Need missing from all layers: 4 findings, each with a mend',
    );
    expect(groupFor(['1', '2', '3', '≥'])?.folded).toBe(
      'Need missing from all layers: 4 findings, 3 with a mend',
    );
  });

  it('gives each row an id of its own that stays while numbers change', () => {
    const idsWith = (windowMs: number) =>
      findingRows(
        findings({ layers: { base: all }, chords: [chord('c', 'L1 L2', windowMs, 'Tab')] }),
      ).flatMap(({ groups }) => groups.flatMap(({ rows }) => rows.map(({ id }) => id)));
    expect(idsWith(30)).toEqual(idsWith(35));
    expect(idsWith(30)).toHaveLength(1);
  });
});
