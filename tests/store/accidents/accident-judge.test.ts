// @vitest-environment node
import { describe, expect, test } from 'vitest';
import { USUAL_LIMITS } from '../../../src/core/findings/accident-limits.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { usTable } from '../../../src/core/host/us-table.ts';
import { createRunCounter, type RunCounts } from '../../../src/core/needs/counts-runs.ts';
import { estimateAccidents } from '../../../src/core/typist/accidents.ts';
import { personAt } from '../../../src/core/typist/person.ts';
import { pressRunsOf } from '../../../src/core/typist/press-runs.ts';
import { AccidentJudge, type TypedDesign } from '../../../src/workers/accident-judge.ts';
import { chordOver, keyOf, plainKeymap } from '../../core/typist/plain-keymap.ts';

const counter = createRunCounter();
counter.add('There were other errors, and they are rarer here; a sad alas was heard at last. ~'.repeat(20));
const english = counter.counts();
const keymap = plainKeymap({ A: { hold: { do: 'key', code: 'ControlLeft' }, holdBy: 'press-inside' } }, [
  chordOver('ER', 60),
]);
const person = personAt(75);
/** As it comes out of a message: everything a copy. */
const design = (number: number, of = keymap): TypedDesign =>
  structuredClone({ number, keymap: of, needs: [], person, limits: USUAL_LIMITS });

/** With a text and a host layout, as it is before the first question. */
function judgeOf(counts: RunCounts): AccidentJudge {
  const judge = new AccidentJudge();
  judge.setHost(usTable);
  judge.setText(counts);
  return judge;
}

describe('the judge of accidents', () => {
  test('has no answer before there is a text', () => {
    const judge = new AccidentJudge();
    judge.setHost(usTable);
    expect(judge.judge(design(1))).toBeNull();
    expect(judge.protect(design(1), { most: 5, mostMisses: 600 })).toBeNull();
  });

  test('adds up the estimate, and finds what it says', () => {
    const judge = judgeOf(english);
    const judged = judge.judge(design(1));
    const { chords, holds } = estimateAccidents(keymap, pressRunsOf(keymap, usHost, english), person);
    const all = [...chords, ...holds].reduce((sum, each) => sum + (each.misfiresPer1000Words ?? 0), 0);
    expect(judged?.overview.misfires).toBeCloseTo(all, 9);
    expect(judged?.findings.map(({ rule }) => rule)).toEqual(
      expect.arrayContaining(['chord-fires-while-typing', 'letter-hold-misfires']),
    );
    expect(judged?.untypable).toBeGreaterThan(0);
  });

  test('knows the same number again, and another design by another', () => {
    const judge = judgeOf(english);
    const [chord] = keymap.chords ?? [];
    if (chord === undefined) throw new Error('There is no chord.');
    expect(judge.studyChord(design(1), chord)?.points.length).toBeGreaterThan(30);
    expect(judge.studyHold(design(1), { key: keyOf.get('A') ?? '', layer: 'base' })?.table.length).toBe(15);
    const bare = judge.judge(design(2, plainKeymap()));
    expect(bare?.overview).toMatchObject({ misfires: 0, offences: [] });
  });

  test('another text brings other figures for the same number', () => {
    const judge = judgeOf(english);
    const before = judge.judge(design(1))?.overview.misfires ?? 0;
    judge.setText({ total: 4, after: new Map([['', [{ char: 'q', count: 4 }]]]) });
    expect(judge.judge(design(1))?.overview.misfires).toBeLessThan(before / 10);
  });
});
