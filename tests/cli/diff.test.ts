import { describe, expect, test } from 'vitest';
import { diffCommand } from '../../src/cli/commands/diff.ts';
import { folderOfFiles } from './folder-of-files.ts';
import { twoKeyDesign } from './two-key-design.ts';

const write = folderOfFiles();
const changed = JSON.parse(JSON.stringify(twoKeyDesign).replace('"char":"1"', '"char":"("'));
const before = write('before.json', twoKeyDesign);
const after = write('after.json', changed);
const text = write('text.txt', 'a1(a'.repeat(20));
const run = (...args: string[]) => diffCommand([...args, '--text', text]);

describe('diff', () => {
  test('says where and what, and what it does', () => {
    const { output, exitCode } = run(before, after);
    expect(output).toMatch(/left index home, Up +1 became \(/);
    expect(output).toContain('Can no longer be typed: ! 1');
    expect(output).toMatch(/Relearning: \d+\.\d % of the presses of the text/);
    expect(exitCode).toBe(1);
  });

  test('the same file twice: nothing differs, exit code 0', () => {
    const { output, exitCode } = run(before, before);
    expect(output).toContain('Nothing differs.');
    expect(output).toContain('Relearning: 0.0 %');
    expect(exitCode).toBe(0);
  });

  test('--json has all of it as data', () => {
    const { output } = run(before, after, '--json');
    expect(JSON.parse(output)).toMatchObject({
      same: false,
      changes: [{ part: 'key', what: '1 became (', keys: ['A'], layer: 'up', chord: null }],
      needs: { gained: ['('], lost: ['!', '1'], cheaper: [], dearer: [] },
      accidents: { before: { misfiresPer1000Words: expect.any(Number) }, after: {} },
      // Of "a1(a" the earlier design lacks "(", the later one "1": "a" is one press, "(" two, all of them new to it.
      relearning: { presses: 80, changed: 40, percent: 50, untypable: 20 },
    });
  });
});

test.each([
  [[before], /wants two designs/],
  [[before, after, after], /wants two designs/],
  [[before, 'no-such-file.json'], /no-such-file.json could not be read/],
  [[before, after, '--wpm', '0'], /expected words per minute/],
])('%j is refused', (args, sentence) => {
  const { output, problem, exitCode } = run(...args);
  expect([output, exitCode]).toEqual(['', 2]);
  expect(problem).toMatch(sentence);
});
