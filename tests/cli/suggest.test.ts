import { describe, expect, test } from 'vitest';
import { suggestCommand } from '../../src/cli/commands/suggest.ts';
import { checkKeymap } from '../../src/core/keymap/read.ts';
import { chordOver, keyOf, plainKeymap } from '../core/typist/plain-board.ts';
import { folderOfFiles } from './folder-of-files.ts';

const keymap = plainKeymap({}, [chordOver('DF', 50)]);
const design = folderOfFiles()('design.json', keymap);
const TAB = '{"do":"key","code":"Tab"}';
const outcomeOf = (...args: string[]) => suggestCommand([design, ...args]);
const jsonOf = (...args: string[]) => JSON.parse(outcomeOf('--json', '--action', TAB, ...args).output);

describe('suggest --json', () => {
  const { suggestions, considered, stoppedBy } = jsonOf();

  test('gives the ten best of all sets, the best first, each with its figures and reasons', () => {
    expect(suggestions.length).toBe(10);
    expect(considered).toBe(630 + 7140 + 58905);
    expect(stoppedBy).toBe('all');
    const costs = suggestions.map(({ cost }: { cost: number }) => cost);
    expect(costs).toEqual(costs.toSorted((one: number, other: number) => one - other));
    for (const suggestion of suggestions) {
      expect(suggestion.misfiresPer1000Words).toBeGreaterThanOrEqual(0);
      expect(suggestion.missesPer1000Uses).toBeGreaterThan(0);
      expect(suggestion.comfort.length).toBeGreaterThan(0);
    }
  });

  test('every one can be taken: the design with its chord is a design, and the chord is new', () => {
    for (const { chord } of suggestions) {
      expect(checkKeymap({ ...keymap, chords: [...(keymap.chords ?? []), chord] }).ok).toBe(true);
      expect([...chord.keys].sort()).not.toEqual([keyOf.get('D'), keyOf.get('F')].sort());
    }
  });

  test('--keys says how many', () => {
    for (const { keys } of jsonOf('--keys', '3').suggestions) expect(keys.length).toBe(3);
    expect(jsonOf('--keys', '2-3').considered).toBe(630 + 7140);
  });

  test('--hands says over which, and both together are all', () => {
    const [one, two] = ['one', 'two'].map((hands) => jsonOf('--keys', '2', '--hands', hands));
    expect(one.considered + two.considered).toBe(630);
    const halves = (keys: readonly string[]) =>
      new Set(keys.map((id) => keymap.board.keys.find((key) => key.id === id)?.hand)).size;
    for (const { keys } of one.suggestions) expect(halves(keys)).toBe(1);
    for (const { keys } of two.suggestions) expect(halves(keys)).toBe(2);
  });

  test('--layers is where it is live, by id or by name', () => {
    expect(jsonOf('--keys', '2', '--layers', 'Base').suggestions[0].chord.layers).toEqual(['base']);
  });
});

test('suggest for people names keys and reasons', () => {
  const { output, exitCode } = outcomeOf('--action', TAB);
  expect(exitCode).toBe(0);
  expect(output).toMatch(/left|right/);
  expect(output).toMatch(/neighbouring fingers|with thumb/);
  expect(output).toContain('66675 sets of keys looked at');
  expect(output).toContain('no medical advice');
});

test.each([
  [[], /wants an --action/],
  [['--action', 'Tab'], /is not JSON/],
  [['--action', '{"do":"dance"}'], /is no action/],
  [['--action', '{"do":"layer","layer":"nowhere","mode":"latch"}'], /--action: .*nowhere/],
  [['--action', TAB, '--keys', '5'], /--keys: found "5"/],
  [['--action', TAB, '--keys', '4-2'], /--keys: found "4-2"/],
  [['--action', TAB, '--window', '0'], /--window/],
  [['--action', TAB, '--hands', 'three'], /--hands: found "three"/],
  [['--action', TAB, '--layers', 'base, attic'], /no layer "attic"; there are base/],
])('%j is refused', (args, sentence) => {
  const { output, problem, exitCode } = outcomeOf(...args);
  expect([output, exitCode]).toEqual(['', 2]);
  expect(problem).toMatch(sentence);
});
