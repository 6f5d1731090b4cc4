import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const css = readFileSync('src/ui/app/theme.css', 'utf8');

/** The custom properties of a rule of theme.css that are plain colours. */
function colours(selector: string): ReadonlyMap<string, string> {
  const rule = css.split(`${selector} {`)[1]?.split('\n}')[0] ?? '';
  const found = rule.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g);
  return new Map([...found].map(([, name = '', colour = '']) => [name, colour]));
}

const light = colours(':root');
const dark = new Map([...light, ...colours(':root[data-theme="dark"]')]);

/** Relative luminance as WCAG 2.2 defines it. */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [lighter = 0, darker = 0] = [luminance(one), luminance(other)].toSorted((a, b) => b - a);
  return (lighter + 0.05) / (darker + 0.05);
}

const TEXTS = ['ink', 'muted', 'accent', 'broken', 'risky', 'note'];
const GROUNDS = ['paper', 'surface', 'sunken'];
const TINTED = [
  ['broken', 'broken-tint'],
  ['risky', 'risky-tint'],
  ['note', 'note-tint'],
  ['accent', 'accent-tint'],
  ['ink', 'accent-tint'],
  ['ink', 'broken-tint'],
  ['ink', 'risky-tint'],
  ['on-accent', 'accent'],
] as const;

describe.each([
  ['light', light],
  ['dark', dark],
])('the %s look', (_, tokens) => {
  const of = (name: string) => {
    const colour = tokens.get(name);
    if (colour === undefined) throw new Error(`theme.css has no --${name}`);
    return colour;
  };

  // WCAG 2.2, 1.4.3: 4.5 : 1 for text.
  test.each(TEXTS.flatMap((text) => GROUNDS.map((ground) => [text, ground] as const)))(
    '%s can be read on %s',
    (text, ground) => {
      expect(contrast(of(text), of(ground))).toBeGreaterThanOrEqual(4.5);
    },
  );

  test.each(TINTED)('%s can be read on %s', (text, ground) => {
    expect(contrast(of(text), of(ground))).toBeGreaterThanOrEqual(4.5);
  });

  // WCAG 2.2, 1.4.11: 3 : 1 for the edges of controls and the focus ring.
  test.each(GROUNDS)('edges and the focus ring can be seen on %s', (ground) => {
    expect(contrast(of('edge'), of(ground))).toBeGreaterThanOrEqual(3);
    expect(contrast(of('accent'), of(ground))).toBeGreaterThanOrEqual(3);
  });
});

test("contrast is reckoned as in WCAG's definition: black on white is 21 : 1", () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
});

test("the layers have Okabe and Ito's colours", () => {
  // Okabe and Ito, Color Universal Design (2008): the set without black, in their order.
  const okabeIto = ['#e69f00', '#56b4e9', '#009e73', '#f0e442', '#0072b2', '#d55e00', '#cc79a7'];
  expect(okabeIto.map((_, layer) => light.get(`layer-${layer}`))).toEqual(okabeIto);
});
