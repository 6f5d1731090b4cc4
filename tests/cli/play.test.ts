import { describe, expect, test } from 'vitest';
import { playCommand } from '../../src/cli/commands/play.ts';
import { folderOfFiles } from './folder-of-files.ts';
import { twoKeyDesign } from './two-key-design.ts';

const file = folderOfFiles();
const design = file('design.json', twoKeyDesign);
const aTap = file('a.json', [
  { t: 0, key: 'A', type: 'down' },
  { t: 50.5, key: 'A', type: 'up' },
]);
const upper = file('upper.json', {
  events: [
    { t: 0, key: 'B', type: 'down' },
    { t: 10, key: 'A', type: 'down' },
    { t: 60, key: 'A', type: 'up' },
    { t: 70, key: 'B', type: 'up' },
  ],
});

describe('play --json', () => {
  test('prints one line a file, in order, with output, text and trace', () => {
    const { output, problem, exitCode } = playCommand([design, aTap, upper, '--json']);
    expect([problem, exitCode]).toEqual(['', 0]);
    const lines = output.split('\n').map((line) => JSON.parse(line));
    expect(lines.map(({ text }) => text)).toEqual(['a', 'A']);
    expect(lines[0].output).toEqual([
      { t: 0, type: 'press', code: 'KeyA' },
      { t: 50.5, type: 'release', code: 'KeyA' },
    ]);
    expect(Object.keys(lines[1])).toEqual(['output', 'text', 'trace']);
  });

  test('characters are typed for the host layout that is asked for', () => {
    const up = file('up.json', [
      { t: 0, key: 'T', type: 'down' },
      { t: 10, key: 'B', type: 'down' },
      { t: 60, key: 'B', type: 'up' },
      { t: 70, key: 'T', type: 'up' },
    ]);
    expect(JSON.parse(playCommand([design, up, '--json']).output).text).toBe('');
    expect(JSON.parse(playCommand([design, up, '--json', '--host', 'pl']).output).text).toBe('ł');
  });
});

describe('corrections that the design states for a host', () => {
  const z = { code: 'KeyA', level: 'plain', gives: 'z' };
  const corrected = file('corrected.json', {
    ...twoKeyDesign,
    hosts: [
      { system: 'linux', layout: 'us', variant: '', corrections: [{ ...z, gives: 'q' }] },
      { system: 'macos', layout: 'us', variant: 'mac', corrections: [z] },
    ],
    layers: [{ id: 'base', name: 'Base', places: { A: { tap: { do: 'key', code: 'KeyA' } } } }],
  });
  const textOn = (...host: string[]) =>
    JSON.parse(playCommand([corrected, aTap, '--json', ...host]).output).text;

  test('hold for its first host, and for another of its hosts that is asked for', () => {
    expect(textOn()).toBe('q');
    expect(textOn('--host', 'us mac')).toBe('z');
    expect(textOn('--host', 'de')).toBe('a');
  });
});

describe('play for people', () => {
  test('prints the text and a table of what happened', () => {
    const { output } = playCommand([design, aTap]);
    expect(output.split('\n')[0]).toMatch(/a\.json: "a"$/);
    expect(output).toMatch(/^0 +press +KeyA$/m);
    expect(output).toMatch(/^50\.5 +release +KeyA$/m);
  });
});

describe('a stream that is refused', () => {
  test.each([
    [
      'a key that is down already',
      [
        { t: 0, key: 'A', type: 'down' },
        { t: 1, key: 'A', type: 'down' },
      ],
      1,
    ],
    [
      'a time that decreases',
      [
        { t: 5, key: 'A', type: 'down' },
        { t: 4, key: 'A', type: 'up' },
      ],
      1,
    ],
    ['an unknown key', [{ t: 0, key: 'Z', type: 'down' }], 0],
    ['an unknown type', [{ t: 0, key: 'A', type: 'press' }], 0],
    ['an entry that is no event', [{ t: 0, key: 'A', type: 'down' }, null], 1],
    ['a fault before an entry that is no event', [{ t: 0, key: 'Z', type: 'down' }, null], 0],
    ['a time that is text', [{ t: '0', key: 'A', type: 'down' }], 0],
  ])('%s: exit code 2 and the index', (_name, events, index) => {
    const { output, problem, exitCode } = playCommand([design, file('bad.json', events), '--json']);
    expect([output, exitCode]).toEqual(['', 2]);
    expect(problem).toContain(`bad.json: event ${index} is refused: `);
  });

  test('a time that overflows is not finite', () => {
    const bad = file('overflow.json', '[{ "t": 1e999, "key": "A", "type": "down" }]');
    expect(playCommand([design, bad]).problem).toContain('event 0 is refused');
  });

  test('the streams beside it are played all the same', () => {
    const bad = file('bad.json', [{ t: 0, key: 'Z', type: 'down' }]);
    const { output, exitCode } = playCommand([design, aTap, bad, upper, '--json']);
    expect(output.split('\n')).toHaveLength(2);
    expect(exitCode).toBe(2);
  });

  test.each([
    ['{"keys": []}', /expected a list of events/],
    ['[', /bad\.json is not JSON/],
  ])('%s is no stream', (text, sentence) => {
    const { problem, exitCode } = playCommand([design, file('bad.json', text)]);
    expect(problem).toMatch(sentence);
    expect(exitCode).toBe(2);
  });
});

describe('a design that cannot be opened', () => {
  const broken = { ...twoKeyDesign, layers: [] };
  test.each([
    ['missing', () => 'no-such-file.json', /no-such-file\.json could not be read: there is no such file/],
    ['a folder', () => '.', /is a folder/],
    ['not UTF-8', () => file('latin.json', new Uint8Array([0x7b, 0xff])), /not UTF-8/],
    ['too large', () => file('large.json', ' '.repeat(2 * 1024 * 1024 + 1)), /2097152 at most/],
    ['broken', () => file('broken.json', broken), /broken\.json: .*layers/],
    [
      'of an unknown host',
      () => file('host.json', { ...twoKeyDesign, hosts: [{ system: 'linux', layout: 'qq', variant: '' }] }),
      /no table for the host layout "qq"; there are us, .*de/,
    ],
  ])('%s: exit code 2 and a sentence', (_name, make, sentence) => {
    const { output, problem, exitCode } = playCommand([make(), aTap]);
    expect([output, exitCode]).toEqual(['', 2]);
    expect(problem).toMatch(sentence);
  });

  test('nothing to play', () => {
    expect(playCommand([design]).exitCode).toBe(2);
  });
});
