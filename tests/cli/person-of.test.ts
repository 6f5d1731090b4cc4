import { expect, test } from 'vitest';
import { accidentsCommand } from '../../src/cli/commands/accidents.ts';
import { suggestCommand } from '../../src/cli/commands/suggest.ts';
import { personOf } from '../../src/cli/person-of.ts';
import { fitOf, personOfFit } from '../../src/core/typist/fit-person.ts';
import { writeMeasured } from '../../src/core/typist/measured-file.ts';
import { personAt } from '../../src/core/typist/person.ts';
import { chordOver, plainKeymap } from '../core/typist/plain-board.ts';
import { alone, typedBy } from '../core/typist/typed-stream.ts';
import { folderOfFiles } from './folder-of-files.ts';

const write = folderOfFiles();
const fileOf = (keystrokes: number) =>
  write(
    `typist-${keystrokes}.json`,
    writeMeasured({
      format: 'measured-typist',
      version: 1,
      measuredAt: 0,
      clockStepMs: 0.1,
      ...typedBy(alone(95), 1, keystrokes, 20),
    }),
  );
const file = fileOf(400);
const design = write('design.json', plainKeymap({}, [chordOver('ER', 60)]));

test('a file of what was measured is the person of its fit', () => {
  const expected = personOfFit(fitOf(typedBy(alone(95), 1, 400, 20)));
  expect(personOf({ typist: file })).toEqual({ ok: true, value: expected });
  expect(personOf({ wpm: '60' })).toEqual({ ok: true, value: personAt(60) });
});

test('accidents and suggestions are that person’s', () => {
  const misfires = (...args: string[]) =>
    JSON.parse(accidentsCommand([design, '--json', ...args]).output).chords[0].misfiresPer1000Words;
  expect(misfires('--typist', file)).toBeGreaterThan(1.5 * misfires('--wpm', '50'));
  const ranked = (...args: string[]) =>
    suggestCommand([design, '--json', '--keys', '2', '--action', '{"do":"key","code":"Tab"}', ...args])
      .output;
  expect(ranked('--typist', file)).not.toBe(ranked('--wpm', '95'));
});

test.each([
  [{ typist: file, wpm: '60' }, /give one of the two/],
  [{ typist: 'nowhere.json' }, /no such file/],
  [{ typist: write('broken.json', '{') }, /is not JSON/],
  [{ typist: design }, /not what was measured of a typist/],
  [{ typist: fileOf(60) }, /too little/],
])('%j is refused', (options, sentence) => {
  const person = personOf(options);
  expect(person.ok ? '' : person.problem).toMatch(sentence);
});
