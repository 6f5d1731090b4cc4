/**
 * Writes public/sheet-type.json, the outlines of the letters that a printed sheet is set in: `npm run type`. They come
 * from openly licensed fonts of the package registry (SIL Open Font License 1.1, whose text is written beside them).
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import opentype, { type Font } from 'opentype.js';

const require = createRequire(import.meta.url);

/** Of the fonts with thousands of signs only those that keymaps come with: arrows, operators, keys, shapes, marks. */
const SIGNS: readonly (readonly [from: number, to: number])[] = [
  [0x2190, 0x21ff],
  [0x2200, 0x228f],
  [0x2300, 0x23cf],
  [0x25a0, 0x25ff],
  [0x2710, 0x2718],
];

/** Where each face takes its letters from, the first that has one. */
const FACES = {
  sans: [
    ...subsets('source-sans-3', '400-normal', ['latin', 'latin-ext', 'vietnamese', 'greek', 'cyrillic']),
    { file: fileOf('noto-sans-math', 'latin', '400-normal'), only: SIGNS },
  ],
  serif: subsets('source-serif-4', '400-normal', ['latin', 'latin-ext']),
  italic: subsets('source-serif-4', '400-italic', ['latin', 'latin-ext']),
};

interface Source {
  readonly file: string;
  readonly only: typeof SIGNS | null;
}

function subsets(family: string, style: string, names: readonly string[]): readonly Source[] {
  return names.map((name) => ({ file: fileOf(family, name, style), only: null }));
}

function fileOf(family: string, subset: string, style: string): string {
  return require.resolve(`@fontsource/${family}/files/${family}-${subset}-${style}.woff`);
}

function opened(file: string): Font {
  return opentype.parse(new Uint8Array(readFileSync(file)).buffer);
}

/** Every character that a font has a glyph for, by its code point. */
function pointsOf(font: Font): readonly number[] {
  const points = new Set<number>();
  for (let index = 0; index < font.glyphs.length; index++) {
    for (const point of font.glyphs.get(index).unicodes) points.add(point);
  }
  return [...points].sort((one, other) => one - other);
}

/** Advance and outline of one sign in thousandths of the size, y downwards; the outline in steps from point to point. */
function glyphText(font: Font, point: number): string {
  const glyph = font.charToGlyph(String.fromCodePoint(point));
  const scale = 1000 / font.unitsPerEm;
  let at = [0, 0];
  let start = at;
  const to = (x = 0, y = 0) => [Math.round(x * scale), Math.round(-y * scale)];
  const steps = glyph.path.commands.map((step) => {
    if (step.type === 'Z') {
      at = start;
      return 'z';
    }
    if (step.type === 'C') throw new Error('an outline of this font is cubic');
    const points = [...(step.type === 'Q' ? [to(step.x1, step.y1)] : []), to(step.x, step.y)];
    const way = points.flatMap(([x = 0, y = 0]) => [x - (at[0] ?? 0), y - (at[1] ?? 0)]);
    at = points.at(-1) ?? at;
    if (step.type === 'M') start = at;
    return step.type === 'L' && way.every((part) => part === 0)
      ? ''
      : step.type.toLowerCase() + way.join(' ');
  });
  return `${Math.round((glyph.advanceWidth ?? 0) * scale)} ${steps.join('').replace(/ -/g, '-')}`;
}

function faceOf(sources: readonly Source[]): Record<string, string> {
  const glyphs: Record<string, string> = {};
  for (const { file, only } of sources) {
    const font = opened(file);
    for (const point of pointsOf(font)) {
      const sign = String.fromCodePoint(point);
      const wanted =
        point > 0x1f && (only === null || only.some(([from, to]) => point >= from && point <= to));
      if (wanted && !Object.hasOwn(glyphs, sign)) glyphs[sign] = glyphText(font, point);
    }
  }
  return glyphs;
}

function packageAndVersion(family: string): string {
  const { name, version }: { name: string; version: string } = require(`@fontsource/${family}/package.json`);
  return `${name} ${version}`;
}

const faces = Object.fromEntries(Object.entries(FACES).map(([name, sources]) => [name, faceOf(sources)]));
const from = ['source-sans-3', 'source-serif-4', 'noto-sans-math'].map(packageAndVersion);
const json = JSON.stringify({ licence: 'OFL-1.1', from, faces });
writeFileSync('public/sheet-type.json', `${json}\n`);
writeFileSync(
  'public/sheet-type-licence.txt',
  readFileSync(require.resolve('@fontsource/source-sans-3/LICENSE')),
);
for (const [name, glyphs] of Object.entries(faces)) console.log(name, Object.keys(glyphs).length, 'signs');
console.log(`${Math.round(json.length / 1000)} kB`);
