import { fc, test as propertyTest } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import type { ReadProblem } from '../../../src/core/keymap/problem.ts';
import { checkKeymap, readKeymap } from '../../../src/core/keymap/read.ts';
import { writeKeymap } from '../../../src/core/keymap/write.ts';
import { documentArbitrary } from '../arbitraries/keymap-document.ts';
import { mutated, mutationArbitrary } from './mutations.ts';
import { A, boardKey, chord, layer, small, toLayer } from './small.ts';

const start = small([layer('base', { k1: { tap: A } }), layer('sym')], [chord('c', ['k1', 'k2'])]);

function problems(value: unknown): ReadProblem[] {
  const read = checkKeymap(value);
  return read.ok ? [] : read.problem;
}

function sentences(value: unknown): string[] {
  return problems(value).map(({ sentence }) => sentence);
}

const acting = (action: unknown) => ({
  ...start,
  layers: [{ id: 'base', name: 'Base', places: { k1: { tap: action } } }],
});

describe('a document that is none is refused with path, found and expected', () => {
  test.each<[string, string, string, unknown]>([
    ['', 'null', 'an object', null],
    ['', 'a list of 2', 'an object', [1, 2]],
    ['format', 'nothing', '"neutral-keymap"', {}],
    ['format', '"other"', '"neutral-keymap"', { ...start, format: 'other' }],
    ['version', 'nothing', 'a version that this program reads: 1', { format: 'neutral-keymap' }],
    ['version', '"1"', 'a version that this program reads: 1', { ...start, version: '1' }],
    ['version', 'neutral-keymap version 0', 'a version that this program reads: 1', { ...start, version: 0 }],
    [
      'version',
      'neutral-keymap version 3, which is newer',
      'a version that this program reads: 1',
      { ...start, version: 3, layers: 'of another shape' },
    ],
    ['name', 'nothing', 'a text', { ...start, name: undefined }],
    ['name', '12', 'a text', { ...start, name: 12 }],
    ['name', '"a\\nb"', '1 to 80 characters on one line', { ...start, name: 'a\nb' }],
    ['extra', 'a field of that name', 'no such field', { ...start, extra: 1 }],
    [
      'hosts[0].system',
      '"amiga"',
      '"linux", "windows" or "macos"',
      { ...start, hosts: [{ ...start.hosts[0], system: 'amiga' }] },
    ],
    [
      'board.keys[0].width',
      '4',
      '5 at least',
      { ...start, board: { name: 'b', keys: [{ ...boardKey('k1', 0), width: 4 }] } },
    ],
    [
      'board.keys[0].home',
      '"yes"',
      'true or false',
      { ...start, board: { name: 'b', keys: [{ ...boardKey('k1', 0), home: 'yes' }] } },
    ],
    [
      'board.keys[0].id',
      '"two words"',
      '1 to 16 of A-Z a-z 0-9 _ - (and not __proto__)',
      { ...start, board: { name: 'b', keys: [boardKey('two words', 0)] } },
    ],
    ['layers', 'an empty list', 'one item at least', { ...start, layers: [] }],
    ['layers', 'an object', 'a list', { ...start, layers: {} }],
    [
      'layers[0].places',
      'a list of 1',
      'an object',
      { ...start, layers: [{ id: 'a', name: 'A', places: [1] }] },
    ],
    [
      'layers[0].places["k 1"]',
      '"k 1"',
      '1 to 16 of A-Z a-z 0-9 _ - (and not __proto__)',
      { ...start, layers: [{ id: 'a', name: 'A', places: { 'k 1': { tap: A } } }] },
    ],
    [
      'layers[0].places.k1',
      'an object',
      'tap, hold or both',
      { ...start, layers: [{ id: 'a', name: 'A', places: { k1: {} } }] },
    ],
    ['layers[0].places.k1.tap.code', '"Foo"', 'a W3C code', acting({ do: 'key', code: 'Foo' })],
    ['layers[0].places.k1.tap.code', 'nothing', 'a W3C code', acting({ do: 'key' })],
    ['layers[0].places.k1.tap', '"KeyA"', 'an object', acting('KeyA')],
    [
      'layers[0].places.k1.tap.do',
      '"macro"',
      '"key", "char", "text", "nothing", "layer", "modifier", "repeat", "word-shift" or "board"',
      acting({ do: 'macro' }),
    ],
    [
      'layers[0].places.k1.tap.with[0]',
      '"KeyB"',
      '"ControlLeft", "ControlRight", "ShiftLeft", "ShiftRight", "AltLeft", "AltRight", "MetaLeft" or "MetaRight"',
      acting({ do: 'key', code: 'KeyA', with: ['KeyB'] }),
    ],
    ['layers[0].places.k1.tap.char', '"ab"', 'one character', acting({ do: 'char', char: 'ab' })],
    ['chords[0].keys', 'a list of 1', '2 items at least', { ...start, chords: [chord('c', ['k1'])] }],
    [
      'chords[0].windowMs',
      'Infinity',
      'a number',
      { ...start, chords: [chord('c', ['k1', 'k2'], { windowMs: 1 / 0 })] },
    ],
    [
      'chords[0].keys[1]',
      '"k9"',
      'the id of a key of the board',
      { ...start, chords: [chord('c', ['k1', 'k9'])] },
    ],
    [
      'board.madeFrom.columns[0].keys',
      '2.5',
      'a whole number',
      { ...start, board: { ...start.board, madeFrom: { columns: [{ finger: 'index', keys: 2.5 }] } } },
    ],
  ])('%s: found %s, expected %s', (path, found, expected, value) => {
    expect(problems(value)).toContainEqual({
      path,
      found,
      expected,
      sentence: `${path === '' ? 'The document' : path}: found ${found}, expected ${expected}.`,
    });
  });

  test('all that is wrong with the shape is told at once, each with its own path', () => {
    expect(sentences({ ...start, name: 3, hosts: [], wrong: 0, 'not so': 1 })).toEqual([
      'name: found 3, expected a text.',
      'hosts: found an empty list, expected one item at least.',
      'wrong: found a field of that name, expected no such field.',
      '["not so"]: found a field of that name, expected no such field.',
    ]);
  });

  test('a hundred problems are enough', () => {
    const keys = Array.from({ length: 150 }, (_, index) => ({ ...boardKey(`k${index}`, 0), x: 'left' }));
    expect(problems({ ...start, board: { name: 'b', keys } })).toHaveLength(100);
  });
});

describe('what is read is as it was written', () => {
  test('absent fields stay absent, order is kept, characters come in NFC', () => {
    const written = {
      ...small([layer('base', { k2: { tap: { do: 'char', char: 'e\u0301' } }, k1: { hold: A } })]),
      chords: [chord('c', ['k2', 'k1'], { action: { do: 'char', char: 'A\u030a' } })],
    };
    const read = checkKeymap(written);
    if (!read.ok) throw new Error(read.problem[0]?.sentence);
    expect(Object.keys(read.value)).not.toContain('timing');
    expect(Object.entries(read.value.layers[0]?.places ?? {})).toEqual([
      ['k2', { tap: { do: 'char', char: '\u00e9' } }],
      ['k1', { hold: A }],
    ]);
    expect(read.value.chords).toEqual([chord('c', ['k2', 'k1'], { action: { do: 'char', char: '\u00c5' } })]);
    expect(written.layers[0]?.places.k2).toEqual({ tap: { do: 'char', char: 'e\u0301' } });
  });

  test('a character that NFC makes too long is refused', () => {
    // U+1D160 is one code point of three in NFC (Unicode Character Database, CompositionExclusions.txt).
    const char = `\u{1D160}${'\u0301'.repeat(31)}`;
    expect([...char]).toHaveLength(32);
    expect(problems(acting({ do: 'char', char }))[0]).toMatchObject({
      path: 'layers[0].places.k1.tap.char',
      expected: '1 to 32 characters',
    });
  });

  test('a byte order mark is passed over', () => {
    expect(readKeymap(`\uFEFF${writeKeymap(start)}`).ok).toBe(true);
  });
});

describe('a hostile text is refused, not a crash', () => {
  const head = '{"format":"neutral-keymap","version":1';
  const sentencesOf = (text: string) => {
    const read = readKeymap(text);
    return read.ok ? [] : read.problem.map(({ sentence }) => sentence);
  };

  test.each<[string, string, string]>([
    ['nothing', '', 'No JSON: at line 1, column 1, found the end of the text, expected a value.'],
    ['a comma too many', '{"a": [1,\n 2,]}', 'No JSON: at line 2, column 4, found "]", expected a value.'],
    [
      'deep lists, not closed',
      '['.repeat(1e6),
      'No JSON: at line 1, column 1000001, found the end of the text, expected a value or ].',
    ],
    [
      'deep lists',
      `${'['.repeat(1e6)}${']'.repeat(1e6)}`,
      'The document: found a list of 1, expected an object.',
    ],
    [
      'a name for the prototype',
      `${head},"__proto__":{"name":"x"}}`,
      '__proto__: found a field of that name, expected no such field.',
    ],
    [
      'a long list',
      `${head},"chords":[${'0,'.repeat(9e5)}0]}`,
      'chords: found a list of 900001, expected 5000 at most.',
    ],
    [
      'many fields',
      `${head},${Array.from({ length: 9e4 }, (_, at) => `"f${at}":0`).join(',')}}`,
      'The document: found an object of 90002, expected 5000 at most.',
    ],
  ])('%s', (_, text, sentence) => {
    expect(sentencesOf(text)[0]).toBe(sentence);
  });

  test('depth inside a field that takes anything but an object', () => {
    const deep = `${head},"name":${'{"a":'.repeat(2e5)}1${'}'.repeat(2e5)}}`;
    expect(sentencesOf(deep)[0]).toMatch(/found more than 24 levels, expected 24 at most/);
  });

  test('__proto__ as the name of a place changes no object', () => {
    const text = writeKeymap(start).replace('"k1": {', '"__proto__": {');
    expect(sentencesOf(text)[0]).toMatch(/^layers\[0\]\.places.*__proto__.*expected no such field/);
    expect(Object.prototype).not.toHaveProperty('tap');
  });

  test('numbers beyond any bound', () => {
    expect(sentencesOf(writeKeymap(start).replace('"windowMs": 45', '"windowMs": 1e999'))).toEqual([
      'chords[0].windowMs: found Infinity, expected a number.',
    ]);
  });

  test('half a character', () => {
    expect(sentencesOf(JSON.stringify(acting({ do: 'char', char: '\ud83d' })))).toEqual([
      'layers[0].places.k1.tap.char: found "\\ud83d", expected one character.',
    ]);
  });

  test('a huge text in a field is cut in the sentence', () => {
    expect(sentencesOf(JSON.stringify({ ...start, name: 'n'.repeat(1e6) }))[0]?.length).toBeLessThan(150);
  });

  test('2 MiB of UTF-8 and not a byte more', () => {
    const limit = 2 * 1024 * 1024;
    const text = writeKeymap({ ...start, notes: '≥'.repeat(9000) });
    const room = limit - new TextEncoder().encode(text).length;
    expect(readKeymap(text + ' '.repeat(room)).ok).toBe(true);
    expect(sentencesOf(text + ' '.repeat(room + 1))).toEqual([
      'The document: found a larger text, expected 2 MiB (2097152 bytes) at most.',
    ]);
  });

  propertyTest.prop(
    [documentArbitrary({ maxKeys: 4, maxLayers: 2 }), fc.array(mutationArbitrary, { maxLength: 4 })],
    {
      numRuns: 500,
    },
  )('whatever is changed: read, or refused with a whole sentence', (keymap, mutations) => {
    const value = mutations.reduce<unknown>(mutated, keymap);
    const read = readKeymap(JSON.stringify(value));
    if (read.ok) expect(readKeymap(writeKeymap(read.value)).ok).toBe(true);
    else expect(read.problem[0]?.sentence).toMatch(/^\S.*: found .+, expected .+\.$/);
    for (const problem of read.ok ? [] : read.problem)
      expect(problem.expected).not.toMatch(/Invalid|undefined/);
  });

  propertyTest.prop([fc.jsonValue()], { numRuns: 500 })('any other JSON is refused', (value) => {
    expect(readKeymap(JSON.stringify(value)).ok).toBe(false);
  });
});

test('a layer action that leads to the base, and one to nowhere, are two different sentences', () => {
  expect(
    sentences(small([layer('base', { k1: { tap: toLayer('base') }, k2: { tap: toLayer('no') } })])),
  ).toEqual([
    'layers[0].places.k2.tap.layer: found "no", expected the id of a layer.',
    'layers[0].places.k1.tap.layer: found "base", expected a layer above the base, which is always on.',
  ]);
});
