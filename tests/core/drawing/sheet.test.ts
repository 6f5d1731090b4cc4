import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadHost } from '../../../src/cli/host-tables.ts';
import { type SheetWish, sheetPages, sheetSvgs } from '../../../src/core/drawing/sheet.ts';
import type { SheetOptions } from '../../../src/core/drawing/sheet-paper.ts';
import type { HostLayout } from '../../../src/core/host/host-layout.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { readKeymap } from '../../../src/core/keymap/read.ts';
import type { Binding, Keymap } from '../../../src/core/keymap/types.ts';
import { grownKeymapArbitrary } from '../arbitraries/grown-keymap.ts';
import { sheetFaults } from './sheet-faults.ts';
import { projectType } from './sheet-type-of-project.ts';
import { smallDesign } from './small-design.ts';

const type = projectType();

const CHOICES: readonly SheetOptions[] = (['a4', 'letter'] as const).flatMap((paper) =>
  (['portrait', 'landscape'] as const).map((turn) => ({ paper, turn, ink: 'colour' as const })),
);
const [A4_PORTRAIT = { paper: 'a4', turn: 'portrait', ink: 'colour' }, A4_LANDSCAPE = A4_PORTRAIT] = CHOICES;

function faultsOf(wish: SheetWish): readonly string[] {
  return sheetPages(wish).flatMap((page) => sheetFaults(page, type));
}

/** Every text of a sheet, page after page. */
function textsOf(wish: SheetWish): readonly string[] {
  return sheetPages(wish).flatMap(({ marks }) =>
    marks.flatMap((mark) => (mark.mark === 'text' ? [mark.text] : [])),
  );
}

function demo(file: string): { keymap: Keymap; host: HostLayout } {
  const read = readKeymap(readFileSync(`demo-layouts/${file}`, 'utf8'));
  if (!read.ok) throw new Error(read.problem[0]?.sentence);
  const [first] = read.value.hosts;
  const host = first === undefined ? undefined : loadHost(first);
  if (host?.ok !== true) throw new Error('no host table');
  return { keymap: read.value, host: host.value };
}

const DEMOS = readdirSync('demo-layouts').filter((file) => file.endsWith('.json'));

/** The small design with that many layers above its base, a letter on every key of each. */
function withLayers(upper: number): Keymap {
  const [base] = smallDesign.layers;
  if (base === undefined) throw new Error('the small design has no layer');
  const letter: Binding = { tap: { do: 'char', char: 'x' } };
  const layers = Array.from({ length: upper }, (_, at) => ({
    id: `l${at}`,
    name: `Level ${at + 1}`,
    places: { M: letter, I: letter, T: letter },
  }));
  const places = { ...base.places, T: { tap: { do: 'key', code: 'Space' } } } as const;
  return { ...smallDesign, layers: [{ ...base, places }, ...layers], chords: [] };
}

describe('nothing on a sheet is too small, off its page or key, or over another text', () => {
  const cases = DEMOS.flatMap((file) =>
    CHOICES.map((choice) => [file, choice.paper, choice.turn, choice] as const),
  );

  test.each(cases)('%s on %s, %s', (file, _paper, _turn, choice) => {
    expect(faultsOf({ ...demo(file), ...choice, type })).toEqual([]);
  });

  test('on random designs, some with turned keys, many layers and characters without a glyph', () => {
    const keymaps = grownKeymapArbitrary({ minKeys: 4, maxKeys: 22, maxLayers: 9, maxChords: 8 });
    fc.assert(
      fc.property(
        keymaps,
        fc.constantFrom(...CHOICES),
        fc.integer({ min: -4, max: 4 }),
        (keymap, choice, turn) => {
          const keys = keymap.board.keys.map((key, at) => ({ ...key, rotation: at % 3 === 0 ? turn : 0 }));
          const board = { ...keymap.board, keys };
          expect(faultsOf({ keymap: { ...keymap, board }, host: usHost, ...choice, type })).toEqual([]);
        },
      ),
      { numRuns: 10, seed: 11 },
    );
  });

  test('on a board whose keys are specks, where everything goes into the notes', () => {
    const [first, ...rest] = smallDesign.board.keys;
    if (first === undefined) throw new Error('the small design has no key');
    const board = { ...smallDesign.board, keys: [{ ...first, x: -2000, width: 5, height: 5 }, ...rest] };
    const wish = { keymap: { ...smallDesign, board }, host: usHost, ...A4_LANDSCAPE, type };
    expect(faultsOf(wish)).toEqual([]);
    expect(textsOf(wish).join(' ')).toContain('held: Left Control');
  });
});

describe('the ladder', () => {
  test.each([
    { upper: 0, boards: 1 },
    { upper: 3, boards: 1 },
    { upper: 9, boards: 2 },
    { upper: 31, boards: 6 },
  ])('$upper rungs take $boards boards', ({ upper, boards }) => {
    const wish = { keymap: withLayers(upper), host: usHost, ...A4_LANDSCAPE, type };
    const caps = sheetPages(wish).flatMap(({ marks }) =>
      marks.filter((mark) => mark.mark === 'box' && mark.stroke === 'hairline' && mark.width > 10),
    );
    expect(caps).toHaveLength(boards * smallDesign.board.keys.length);
    expect(textsOf(wish).filter((text) => text === 'x')).toHaveLength(upper * 3);
  });

  test('says at each rung how one gets in', () => {
    const texts = textsOf({ keymap: smallDesign, host: usHost, ...A4_PORTRAIT, type });
    expect(texts.slice(texts.indexOf('The ladder'))).toEqual(
      expect.arrayContaining([
        '=Both',
        'On while Base and Up are on.',
        'Up',
        'Held by left thumb.',
        'Always on.',
      ]),
    );
  });

  test('has only the rungs that are wanted', () => {
    const texts = textsOf({ keymap: smallDesign, host: usHost, layers: ['up'], ...A4_PORTRAIT, type });
    expect(texts).toContain('ł');
    expect(texts).not.toContain('=Both');
  });
});

describe('chords', () => {
  test('stand in the table under the number of their outline', () => {
    const texts = textsOf({ keymap: smallDesign, host: usHost, ...A4_LANDSCAPE, type });
    const from = texts.indexOf('within');
    expect(texts.slice(from + 1, from + 5)).toEqual(['1', '{ + -', 'Tab (on Base, Up)', '45 ms']);
    // The second chord plays two keys that lie apart: each has an outline with its number, and the table a row.
    expect(texts.filter((text) => text === '2').length).toBeGreaterThanOrEqual(3);
  });

  test('layers that all of them share are said once', () => {
    const [first, second] = smallDesign.chords ?? [];
    if (first === undefined || second === undefined) throw new Error('the small design has two chords');
    const chords = [first, second].map((chord) => ({ ...chord, layers: ['up'] }));
    const texts = textsOf({ keymap: { ...smallDesign, chords }, host: usHost, ...A4_LANDSCAPE, type });
    expect(texts).toContain('All of them on Up only.');
    expect(texts).toContain('Tab');
    expect(texts.join(' ')).not.toContain('(on');
  });

  test('a key in the table goes by its name where it types no short text', () => {
    const texts = textsOf({ keymap: smallDesign, host: usHost, ...A4_LANDSCAPE, type });
    expect(texts.join(' ')).toContain('{ + Ctrl C');
  });
});

describe('what comes with Shift, and holds of chords', () => {
  const [base, ...upper] = smallDesign.layers;
  const onShift = { do: 'char', char: 'ß' } as const;
  const grown: Keymap = {
    ...smallDesign,
    layers: [
      {
        id: 'base',
        name: 'Base',
        places: { ...base?.places, I: { tap: { do: 'char', char: 's' }, onShift } },
      },
      ...upper,
    ],
    chords: [
      {
        id: 'c1',
        keys: ['M', 'I'],
        windowMs: 45,
        action: { do: 'key', code: 'Tab' },
        hold: { do: 'key', code: 'AltLeft' },
        onShift,
      },
    ],
  };

  test('stand on the key under the sign for Shift, and in the table in words', () => {
    const texts = textsOf({ keymap: grown, host: usHost, ...A4_LANDSCAPE, type }).join(' ');
    expect(texts).toContain('s ⇧ß');
    expect(texts).toContain('under Shift, where that gives something of its own');
    expect(texts.replace(/\s+/g, ' ')).toMatch(/Tab \(under Shift .*ß\), .*held: .*Left Alt/);
  });
});

describe('a sheet as SVG', () => {
  const wish: SheetWish = { keymap: smallDesign, host: usHost, ...A4_LANDSCAPE, type };
  const hostile = { ...smallDesign, name: 'A <script>alert("1")</script> & ]]> \u0001' };

  test('is the size of its paper and loads nothing', () => {
    const [svg = ''] = sheetSvgs(wish);
    expect(svg).toMatch(
      /^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" width="297mm" height="210mm" viewBox="0 0 297 210"/,
    );
    expect(svg).not.toMatch(/<text|<style|<script|<image|url\(|https?:(?!\/\/www\.w3\.org\/2000\/svg)/);
    const defined = new Set([...svg.matchAll(/id="(l\d+)"/g)].map(([, id]) => id));
    const used = new Set([...svg.matchAll(/href="#(l\d+)"/g)].map(([, id]) => id));
    expect(used).toEqual(defined);
  });

  test('takes what a file says as text', () => {
    const [svg = ''] = sheetSvgs({ ...wish, keymap: hostile });
    expect(svg).not.toContain('<script');
    expect(svg).toContain(
      '<title>A &lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; ]]&gt;  </title>',
    );
  });

  test('in black has one colour and the white of the paper', () => {
    const [svg = ''] = sheetSvgs({ ...wish, ink: 'black' });
    expect(new Set(svg.match(/#[0-9a-f]{6}\b/g))).toEqual(new Set(['#000000', '#ffffff']));
  });
});
