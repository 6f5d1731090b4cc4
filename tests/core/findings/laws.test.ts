import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { factsOf } from '../../../src/core/findings/facts.ts';
import { findAll, SEVERITIES } from '../../../src/core/findings/find-all.ts';
import { findingId } from '../../../src/core/findings/finding-id.ts';
import { RULES } from '../../../src/core/findings/registry.ts';
import { usHost } from '../../../src/core/host/us.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { keymapArbitrary } from '../arbitraries/keymap-arbitrary.ts';
import { accidentsOf, type Typing } from './design.ts';
import { faultsOfMend, findingsOf } from './taking-a-mend.ts';

const NEEDS = ['a', 'Q', '!', ' ', '~', '≥', 'key:Enter', 'key:ShiftLeft', 'shortcut:Control+KeyC'] as const;

/** A few of the random keymaps take long to find routes for; a slow machine stops at what it has, ms. */
const LIMIT = { interruptAfterTimeLimit: 10_000 };

/** Typing that sets much off: quick, with limits at which every rule about accidents has something to say. */
const TYPINGS: readonly Typing[] = [
  { text: 'abcabd dad ba cab abba add.', wpm: 99, limits: { chordPer1000Words: 0.2, delayMs: 20 } },
  { text: 'a bc d, ab', wpm: 60, spread: 2, limits: { holdPer1000Words: 0.1, frequentPer1000Words: 1 } },
];

/** Random keymaps that ask for some needs, waive some, and name a list that is not known at times. */
const designs: fc.Arbitrary<Keymap> = fc
  .tuple(
    keymapArbitrary({ maxKeys: 7 }),
    fc.subarray([...NEEDS]),
    fc.subarray([...NEEDS], { maxLength: 2 }),
    fc.subarray(['no-such-list']),
  )
  .map(([keymap, own, waived, lists]) => ({
    ...keymap,
    needs: { lists, own, waived: waived.map((need) => ({ need, why: 'never used' })) },
  }));

describe('for random keymaps', { timeout: 60_000 }, () => {
  test.prop([designs], { numRuns: 300, ...LIMIT })(
    'taking any mend removes its finding and brings no worse one',
    (keymap) => {
      const faults = findingsOf(keymap, usHost).flatMap((finding) =>
        finding.mends.flatMap((mend) => faultsOfMend(keymap, usHost, finding, mend)),
      );
      expect(faults).toEqual([]);
    },
  );

  test.prop([designs, fc.constantFrom(...TYPINGS)], { numRuns: 25, ...LIMIT })(
    'taking any mend does so too where it is known what typing does to the design',
    (keymap, typing) => {
      const accidents = (design: Keymap) => accidentsOf(design, typing);
      const faults = findingsOf(keymap, usHost, accidents).flatMap((finding) =>
        finding.mends.flatMap((mend) => faultsOfMend(keymap, usHost, finding, mend, accidents)),
      );
      expect(faults).toEqual([]);
    },
  );

  test.prop([designs], { numRuns: 300, ...LIMIT })(
    'the same design gives the same findings and is left as it was',
    (keymap) => {
      const before = JSON.stringify(keymap);
      const twin: Keymap = JSON.parse(before);
      expect(findingsOf(twin, usHost)).toEqual(findingsOf(keymap, usHost));
      expect(JSON.stringify(keymap)).toBe(before);
    },
  );

  test.prop([designs], { numRuns: 300, ...LIMIT })(
    'findings are sorted by harm, then by rule, and none has the id of another',
    (keymap) => {
      const findings = findingsOf(keymap, usHost);
      const rank = findings.map(({ severity, rule }) => [
        SEVERITIES.indexOf(severity),
        RULES.findIndex(({ id }) => id === rule),
      ]);
      const sorted = rank.toSorted(
        ([harm = 0, rule = 0], [otherHarm = 0, other = 0]) => harm - otherHarm || rule - other,
      );
      expect(rank).toEqual(sorted);
      expect(new Set(findings.map(findingId)).size).toBe(findings.length);
    },
  );

  test.prop([designs], { numRuns: 300, ...LIMIT })(
    'every finding is about parts that exist and says so in whole sentences',
    (keymap) => {
      const keys = new Set(keymap.board.keys.map(({ id }) => id));
      const layers = new Set(keymap.layers.map(({ id }) => id));
      const chords = new Set(keymap.chords?.map(({ id }) => id));
      for (const finding of findAll(factsOf(keymap, usHost))) {
        expect(finding.subjects.keys.filter((id) => !keys.has(id))).toEqual([]);
        expect(finding.subjects.layers.filter((id) => !layers.has(id))).toEqual([]);
        expect(finding.subjects.chords.filter((id) => !chords.has(id))).toEqual([]);
        expect(finding.message).toMatch(/^[^a-z].*\.$/su);
        expect(finding.message).not.toMatch(/undefined|NaN|null|Infinity|layer-\d|\[object/);
        for (const { title } of finding.mends) expect(title).not.toMatch(/undefined|NaN|layer-\d|\[object/);
      }
    },
  );
});
