import { describe, expect, test } from 'vitest';
import { accidentsCommand } from '../../src/cli/commands/accidents.ts';
import { usHost } from '../../src/core/host/us.ts';
import { estimateAccidents } from '../../src/core/typist/accidents.ts';
import { personAt } from '../../src/core/typist/person.ts';
import { pressRunsOf } from '../../src/core/typist/press-runs.ts';
import { chordOver, english, keyOf, plainKeymap } from '../core/typist/plain-board.ts';
import { folderOfFiles } from './folder-of-files.ts';

const keymap = plainKeymap({ A: { hold: { do: 'key', code: 'ControlLeft' }, holdAfterMs: 150 } }, [
  chordOver('ER', 60),
  chordOver('ASDFG', 60),
]);
const write = folderOfFiles();
const design = write('design.json', keymap);
const text = write('text.txt', 'error here, ere the terror errs. '.repeat(50));
const outcomeOf = (...args: string[]) => accidentsCommand([design, ...args]);
const jsonOf = (...args: string[]) => JSON.parse(outcomeOf('--json', ...args).output);

describe('accidents --json', () => {
  test('has the figures of the estimate, with the fields that are promised', () => {
    const { chords, holds, delay } = jsonOf('--wpm', '75');
    const estimate = estimateAccidents(keymap, pressRunsOf(keymap, usHost, english), personAt(75));
    expect(chords).toEqual([
      {
        id: 'chord-ER',
        misfiresPer1000Words: estimate.chords[0]?.misfiresPer1000Words,
        missesPer1000Uses: estimate.chords[0]?.missesPer1000Uses,
        interval: null,
      },
      {
        id: 'chord-ASDFG',
        misfiresPer1000Words: null,
        missesPer1000Uses: estimate.chords[1]?.missesPer1000Uses,
        interval: null,
      },
    ]);
    expect(holds).toMatchObject([{ key: keyOf.get('A'), layer: 'base', interval: null }]);
    expect(holds[0].misfiresPer1000Words).toBe(estimate.holds[0]?.misfiresPer1000Words);
    expect(delay.map(({ key }: { key: string }) => key)).toContain(keyOf.get('E'));
  });

  test('faster typists set the chord off more, and hold the letter less', () => {
    const [slow, fast] = [jsonOf('--wpm', '30'), jsonOf('--wpm', '95')];
    expect(fast.chords[0].misfiresPer1000Words).toBeGreaterThan(5 * slow.chords[0].misfiresPer1000Words);
    expect(fast.holds[0].misfiresPer1000Words).toBeLessThan(slow.holds[0].misfiresPer1000Words);
  });

  test('a text of one’s own decides', () => {
    expect(jsonOf('--text', text).chords[0].misfiresPer1000Words).toBeGreaterThan(
      3 * jsonOf().chords[0].misfiresPer1000Words,
    );
  });

  test('a simulation gives an interval about its rate, and the same again for the same seed', () => {
    const args = ['--simulate', '3000', '--seed', '5'];
    const first = jsonOf(...args);
    expect(jsonOf(...args)).toEqual(first);
    expect(first.simulation).toMatchObject({ words: 3000, seed: 5, stoppedBy: 'words' });
    const [low, high] = first.holds[0].interval;
    expect(low).toBeLessThan(first.simulation.holds[0].misfiresPer1000Words.rate);
    expect(high).toBeGreaterThan(first.simulation.holds[0].misfiresPer1000Words.rate);
  });
});

test('accidents for people says whose typing it is about', () => {
  const { output, exitCode } = outcomeOf('--simulate', '500', '--seed', '2');
  expect(exitCode).toBe(0);
  expect(output).toMatch(/chord-ER +\d/);
  expect(output).toMatch(/chord-ASDFG +simulate/);
  expect(output).toMatch(/left little home on base +\d/);
  expect(output).toContain('seed 2');
  expect(output).toContain('public/typist.md');
});

test.each([
  [['--text', 'nonsense'], /no ready text is called "nonsense"; there are english/],
  [['--wpm', '0'], /expected words per minute/],
  [['--wpm', ''], /expected words per minute/],
  [['--simulate', '-1'], /simulate/],
  [['--seed', '1.5'], /--seed: found "1.5"/],
  [['second.json'], /wants one design/],
])('%j is refused', (args, sentence) => {
  let problem = '';
  try {
    const outcome = outcomeOf(...args);
    expect([outcome.output, outcome.exitCode]).toEqual(['', 2]);
    problem = outcome.problem;
  } catch (error) {
    // `main.ts` turns what the reader of options throws into the same refusal.
    problem = error instanceof Error ? error.message : '';
  }
  expect(problem).toMatch(sentence);
});
