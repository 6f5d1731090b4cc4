import { describe, expect, test } from 'vitest';
import { accidentsCommand } from '../../src/cli/commands/accidents.ts';
import { checkCommand } from '../../src/cli/commands/check.ts';
import { play } from '../../src/core/engine/play.ts';
import { typedText } from '../../src/core/host/typed.ts';
import { usHost } from '../../src/core/host/us.ts';
import { plainKeymap } from '../core/typist/plain-board.ts';
import { folderOfFiles } from './folder-of-files.ts';
import { twoKeyDesign } from './two-key-design.ts';

const file = folderOfFiles();
const design = file('design.json', twoKeyDesign);
const asking = (own: string[], lists: string[] = []) =>
  file('asking.json', { ...twoKeyDesign, needs: { lists, own, waived: [{ need: 'z', why: 'no use' }] } });
const checked = (...args: string[]) => JSON.parse(checkCommand([...args, '--json']).output);
const needsOf = (...args: string[]) => checked(...args).needs.map(({ need }: { need: string }) => need);

describe('check with a text or a speed', () => {
  const held = file(
    'held.json',
    plainKeymap({ A: { hold: { do: 'key', code: 'ControlLeft' }, holdBy: 'press-inside' } }),
  );
  const rulesOf = (...args: string[]) =>
    checked(held, '--needs', 'ascii', ...args).findings.map(({ rule }: { rule: string }) => rule);

  test('says also what typing sets off, by the figures of accidents', () => {
    expect(rulesOf()).not.toContain('letter-hold-misfires');
    expect(rulesOf('--wpm', '75')).toContain('letter-hold-misfires');
    const found = checked(held, '--text', 'english').findings.find(
      ({ rule }: { rule: string }) => rule === 'letter-hold-misfires',
    );
    const [hold] = JSON.parse(accidentsCommand([held, '--json']).output).holds;
    expect(found.data.misfiresPer1000Words).toBe(hold.misfiresPer1000Words);
  });

  test('refuses a text that there is not, with a sentence', () => {
    const outcome = checkCommand([held, '--text', 'no-such-text']);
    expect(outcome.exitCode).toBe(2);
    expect(outcome.problem).toMatch(/no-such-text/);
  });
});

describe('check --json', () => {
  test('prints findings and needs in the stated shape', () => {
    const { findings, needs } = checked(design, '--needs', file('mine.txt', 'a\nz\n'));
    for (const finding of findings) {
      expect(Object.keys(finding)).toEqual([
        'rule',
        'severity',
        'message',
        'keys',
        'layers',
        'chords',
        'data',
      ]);
    }
    expect(findings.map(({ rule }: { rule: string }) => rule)).toContain('need-missing');
    expect(needs.map(({ reachable }: { reachable: boolean }) => reachable)).toEqual([true, false]);
  });

  test('the events of every need, played, type exactly that need', () => {
    const reached = checked(design, '--needs', 'ascii').needs.filter(
      ({ reachable }: { reachable: boolean }) => reachable,
    );
    expect(reached.map(({ need }: { need: string }) => need).sort()).toEqual(
      [' ', '!', '1', 'A', 'a'].sort(),
    );
    for (const { need, events } of reached) {
      const played = play(twoKeyDesign, events, usHost);
      expect(played.ok && typedText(played.value.output, usHost)).toBe(need);
    }
  });
});

describe('which needs are checked', () => {
  test('ascii where the design has none', () => {
    expect(needsOf(design)).toHaveLength(95);
  });

  test("the design's own, less those let off", () => {
    expect(needsOf(asking(['a', 'z', 'key:Space']))).toEqual(['a', 'key:Space']);
  });

  test('lists and files that are named take their place, each need once', () => {
    const plain = file('plain.txt', 'ü\n \na\n');
    const json = file('list.json', { name: 'Mine', needs: ['key:F13', 'a'] });
    const needs = needsOf(asking(['q']), '--needs', plain, '--needs', json, '--needs', 'function-keys');
    expect(needs.slice(0, 4)).toEqual(['ü', ' ', 'a', 'key:F13']);
    expect(needs).toHaveLength(4 + 12);
  });

  test("a language's letters, from CLDR", () => {
    expect(needsOf(design, '--needs', 'cldr:pl:letters')).toEqual(expect.arrayContaining(['ą', 'Ź']));
  });

  test.each([
    [() => ['--needs', 'cldr:qq'], /no need list is called "cldr:qq"/],
    [() => ['--needs', 'no-such-list'], /no need list is called "no-such-list"; there are ascii, /],
    [() => ['--needs', file('bad.txt', 'a\nab\n')], /bad\.txt: line 2: found "ab"/],
  ])('what cannot be read is refused: exit code 2', (args, sentence) => {
    const { output, problem, exitCode } = checkCommand([design, ...args()]);
    expect([output, exitCode]).toEqual(['', 2]);
    expect(problem).toMatch(sentence);
  });

  test('a design that asks for a list that there is not: the validator says so', () => {
    const { findings, needs } = checked(asking(['a'], ['no-such-list']));
    expect(findings).toContainEqual(expect.objectContaining({ rule: 'need-list-unknown' }));
    expect(needs).toHaveLength(1);
  });
});

describe('the exit code', () => {
  test('0 where nothing is broken or missing, though there are notes', () => {
    const chord = { id: 'c', keys: ['A', 'B'], windowMs: 300, action: { do: 'key', code: 'Tab' } };
    const risky = file('risky.json', {
      ...twoKeyDesign,
      chords: [chord],
      needs: { lists: [], own: ['a'], waived: [] },
    });
    // On `us` the ł of the design would be broken.
    expect(checked(risky, '--host', 'pl').findings.length).toBeGreaterThan(0);
    expect(checkCommand([risky, '--host', 'pl']).exitCode).toBe(0);
  });

  test('1 where a need is missing', () => {
    expect(checkCommand([asking(['q'])]).exitCode).toBe(1);
  });

  test('1 where something is broken', () => {
    const empty = { id: 'lost', name: 'Lost', places: {} };
    const broken = { ...twoKeyDesign, layers: [...twoKeyDesign.layers, empty] };
    const asked = { ...broken, needs: { lists: [], own: ['a'], waived: [] } };
    const { output, exitCode } = checkCommand([file('broken.json', asked), '--json']);
    expect(JSON.parse(output).findings).toContainEqual(expect.objectContaining({ severity: 'broken' }));
    expect(exitCode).toBe(1);
  });
});

test('check for people says how many needs are reached, and a name from a file cannot steer the terminal', () => {
  const steering = file('steering.json', { ...twoKeyDesign, name: 'A\u001b[2Jb' });
  const { output } = checkCommand([steering]);
  expect(output.split('\n')[0]).toBe('A\ufffd[2Jb');
  expect(output).toMatch(/^Needs: 5 of 95 reached, 90 missing, \d+ clumsy$/m);
});
