import { readFileSync } from 'node:fs';
import { fc, test as propertyTest } from '@fast-check/vitest';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { keymapJsonSchema } from '../../../src/core/keymap/json-schema.ts';
import { checkKeymap, readKeymap } from '../../../src/core/keymap/read.ts';
import { checkShape } from '../../../src/core/keymap/shape-problems.ts';
import { untame } from '../../../src/core/keymap/tame.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { writeKeymap } from '../../../src/core/keymap/write.ts';
import { documentArbitrary } from '../arbitraries/keymap-document.ts';
import { mutated, mutationArbitrary } from './mutations.ts';
import { A, boardKey, chord, layer, small, toLayer } from './small.ts';

const bySchema = new Ajv2020({ strict: true }).compile(keymapJsonSchema());

/** What the reader says of the shape alone. */
function byReader(value: unknown): boolean {
  return untame(value) === undefined && checkShape(value).ok;
}

test('the published schema is the one that the program reads by (src/build/write-schema.ts writes it)', () => {
  const published: unknown = JSON.parse(readFileSync('public/neutral-keymap.schema.json', 'utf8'));
  expect(published).toEqual(keymapJsonSchema());
});

describe('schema and reader agree on the shape', () => {
  propertyTest.prop([documentArbitrary()], { numRuns: 200 })('of valid documents', (keymap) => {
    expect(bySchema(JSON.parse(writeKeymap(keymap)))).toBe(true);
  });

  test('of documents with one change, valid and broken by the hundred', () => {
    const count = { valid: 0, broken: 0 };
    const changed = fc.tuple(documentArbitrary({ maxKeys: 4, maxLayers: 3 }), mutationArbitrary);
    void fc.assert(
      fc.property(changed, ([keymap, mutation]) => {
        const value = mutated(keymap, mutation);
        const valid = byReader(value);
        count[valid ? 'valid' : 'broken'] += 1;
        expect(bySchema(value), JSON.stringify(bySchema.errors)).toBe(valid);
      }),
      { numRuns: 1500 },
    );
    expect(count.valid).toBeGreaterThan(100);
    expect(count.broken).toBeGreaterThan(300);
  }, 30_000);

  const start = small([layer('base', { k1: { tap: A } }), layer('sym')], [chord('c', ['k1', 'k2'])]);
  const on = (binding: unknown) => ({
    ...start,
    layers: [{ id: 'base', name: 'Base', places: { k1: binding } }],
  });
  const act = (action: unknown) => on({ tap: action });
  test.each<[boolean, string, unknown]>([
    [true, 'as it is', start],
    [true, 'with a schema', { $schema: 'anything', ...start }],
    [false, 'a list', [start]],
    [false, 'no layers', { ...start, layers: [] }],
    [false, 'a keymap of version 2', { ...start, version: 2 }],
    [false, 'another format', { ...start, format: 'other' }],
    [false, 'a name of two lines', { ...start, name: 'a\nb' }],
    [true, 'a name of 80 characters outside the first plane', { ...start, name: '𝄞'.repeat(80) }],
    [false, 'a name of 81', { ...start, name: 'n'.repeat(81) }],
    [false, 'a binding of neither', on({ holdAfterMs: 200 })],
    [true, 'a binding of a hold alone', on({ hold: A })],
    [true, 'a result under Shift beside a tap', on({ tap: A, onShift: { do: 'char', char: ';' } })],
    [false, 'a result under Shift without a tap', on({ hold: A, onShift: { do: 'char', char: ';' } })],
    [false, 'a layer under Shift', on({ tap: A, onShift: toLayer('sym') })],
    [true, 'repeat', act({ do: 'repeat' })],
    [true, 'Shift for one word', act({ do: 'word-shift' })],
    [
      true,
      'a chord with a hold',
      { ...start, chords: [chord('c', ['k1', 'k2'], { hold: A, holdAfterMs: 150 })] },
    ],
    [false, 'an unknown action', act({ do: 'macro' })],
    [false, 'an action without do', act({ code: 'KeyA' })],
    [false, 'a field of another action', act({ do: 'char', char: 'a', code: 'KeyA' })],
    [false, 'a code that is none', act({ do: 'key', code: 'keya' })],
    [false, 'a modifier action with a letter', act({ do: 'modifier', code: 'KeyA', mode: 'latch' })],
    [false, 'a modifier while held', act({ do: 'modifier', code: 'ShiftLeft', mode: 'while-held' })],
    [true, 'with a modifier around', act({ do: 'key', code: 'KeyA', with: ['ShiftLeft'] })],
    [false, 'with a letter around', act({ do: 'key', code: 'KeyA', with: ['KeyB'] })],
    [false, 'no character', act({ do: 'char', char: '' })],
    [true, '64 characters of text', act({ do: 'text', text: '𝄞'.repeat(64) })],
    [false, '65 characters of text', act({ do: 'text', text: 't'.repeat(65) })],
    [false, 'a chord of one key', { ...start, chords: [chord('c', ['k1'])] }],
    [false, 'a chord of six keys', { ...start, chords: [chord('c', ['a', 'b', 'c', 'd', 'e', 'f'])] }],
    [false, 'a chord live on no layer', { ...start, chords: [chord('c', ['k1', 'k2'], { layers: [] })] }],
    [false, 'a window beyond 10 s', { ...start, chords: [chord('c', ['k1', 'k2'], { windowMs: 10_000.5 })] }],
    [true, 'a window of a fraction', { ...start, chords: [chord('c', ['k1', 'k2'], { windowMs: 0.5 })] }],
    [false, '201 keys', { ...start, board: { name: 'b', keys: Array(201).fill(boardKey('k1', 0)) } }],
    [false, 'no keys', { ...start, board: { name: 'b', keys: [] } }],
    [false, 'nine computers', { ...start, hosts: Array(9).fill(start.hosts[0]) }],
    [false, 'no computer', { ...start, hosts: [] }],
    [false, 'a place named with a space', { ...start, layers: [layer('base', { 'k 1': { tap: A } })] }],
    [false, 'onWhile of one layer', { ...start, layers: [layer('base'), layer('a', {}, ['base'])] }],
  ])('%s: %s', (valid, _, value) => {
    expect([bySchema(value), byReader(value)]).toEqual([valid, valid]);
  });
});

describe('what only the reader checks', () => {
  const base = layer('base', { k1: { tap: A } });
  const doing = (action: unknown) =>
    ({ ...small(), layers: [{ ...layer('base'), places: { k1: { tap: action } } }] }) as unknown as Keymap;
  const needing = (need: string) => ({ ...small(), needs: { lists: [], own: [need], waived: [] } });
  test.each<[string, unknown]>([
    ['board.keys[1].id', { ...small(), board: { name: 'b', keys: [boardKey('k1', 0), boardKey('k1', 1)] } }],
    ['layers[1].id', small([base, layer('base')])],
    ['chords[1].id', small([base], [chord('c', ['k1', 'k2']), chord('c', ['k1', 'k3'])])],
    ['layers[0].places.k9', small([layer('base', { k9: { tap: A } })])],
    ['layers[0].places.k1.tap.layer', small([layer('base', { k1: { tap: toLayer('none') } })])],
    ['layers[0].places.k1.tap.layer', small([layer('base', { k1: { tap: toLayer('base') } })])],
    ['layers[1].onWhile[1]', small([base, layer('a', {}, ['base', 'none'])])],
    ['layers[1].onWhile[1]', small([base, layer('a', {}, ['base', 'b']), layer('b')])],
    ['layers[1].onWhile[1]', small([base, layer('a', {}, ['base', 'base'])])],
    ['layers[0].onWhile[0]', small([layer('base', {}, ['a', 'b']), layer('a'), layer('b')])],
    ['chords[0].keys[1]', small([base], [chord('c', ['k1', 'k9'])])],
    ['chords[0].keys[1]', small([base], [chord('c', ['k1', 'k1'])])],
    ['chords[0].layers[0]', small([base], [chord('c', ['k1', 'k2'], { layers: ['none'] })])],
    ['chords[0].layers[1]', small([base], [chord('c', ['k1', 'k2'], { layers: ['base', 'base'] })])],
    ['chords[0].action.layer', small([base], [chord('c', ['k1', 'k2'], { action: toLayer('none') })])],
    ['layers[0].places.k1.tap.char', doing({ do: 'char', char: 'ab' })],
    ['layers[0].places.k1.tap.char', doing({ do: 'char', char: '\ud800' })],
    ['layers[0].places.k1.tap.text', doing({ do: 'text', text: 'a\udc00' })],
    [
      'layers[0].places.k1.onShift.code',
      small([layer('base', { k1: { tap: A, onShift: { do: 'key', code: 'AltLeft' } } })]),
    ],
    ['chords[0].hold.layer', small([base], [chord('c', ['k1', 'k2'], { hold: toLayer('none') })])],
    ['needs.own[0]', needing('ab')],
    ['needs.own[0]', needing('key:Foo')],
    ['needs.own[0]', needing('shortcut:KeyA')],
    [
      'needs.waived[0].need',
      { ...small(), needs: { lists: [], own: [], waived: [{ need: 'ab', why: 'x' }] } },
    ],
  ])('%s', (path, value) => {
    expect([bySchema(value), byReader(value)]).toEqual([true, true]);
    const read = checkKeymap(value);
    expect(!read.ok && read.problem.map((problem) => problem.path)).toContain(path);
  });

  test('the size of the file', () => {
    const text = `${writeKeymap(small())}${' '.repeat(2 * 1024 * 1024)}`;
    expect(bySchema(JSON.parse(text))).toBe(true);
    expect(readKeymap(text).ok).toBe(false);
  });
});
