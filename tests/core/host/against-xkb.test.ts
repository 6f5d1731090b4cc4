import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readComposeFile } from '../../../src/build/tables/compose-file.ts';
import { howToType } from '../../../src/build/tables/how-to-type.ts';
import type { StrokeDigest } from '../../../src/build/tables/stroke-digest.ts';
import { xkbVersions } from '../../../src/build/tables/xkb-sources.ts';
import { hostFromTable } from '../../../src/core/host/host-from-table.ts';
import type { Stroke } from '../../../src/core/host/host-layout.ts';
import type { HostTable } from '../../../src/core/host/host-table.ts';
import { TYPING_CODES } from '../../../src/core/host/typing-codes.ts';
import { shippedTable } from './shipped-tables.ts';
import { routeLine } from './strokes.ts';

/** What `xkbcli how-to-type` (libxkbcommon) and libX11's Compose file say, written down by `npm run tables`. */
const digest: StrokeDigest = JSON.parse(
  readFileSync(new URL('./data/how-to-type.json', import.meta.url), 'utf8'),
);
const COMPOSE_FILE = '/usr/share/X11/locale/en_US.UTF-8/Compose';
const isSameXkb = xkbVersions() === digest.versions;

/** Ours in XKB's words: the modifier of level 3 is Mod5 there, and either Shift is Shift. */
function xkbWords(line: string): string {
  return line.replaceAll('AltRight+', 'Mod5+').replaceAll('ShiftLeft+', 'Shift+');
}

function words(text: string | undefined): readonly string[] {
  return (text ?? '').split(' ').filter((word) => word !== '');
}

/** What XKB says, less strokes that need a level 3 which no key of the layout chooses. */
function reachable(strokes: readonly string[], table: HostTable): readonly string[] {
  return strokes.filter((stroke) => table.level3 !== null || !stroke.includes('Mod5'));
}

/** The strokes of the table that give a dead key, without those that hold a modifier in vain. */
function deadStrokes(table: HostTable, dead: string): readonly string[] {
  const prefixes = ['', 'Shift+', 'Mod5+', 'Shift+Mod5+'];
  return TYPING_CODES.flatMap((code) =>
    prefixes.flatMap((prefix, at) => {
      const row = table.keys[code] ?? [];
      const vain = row.slice(0, at).some((text, fewer) => text === dead && (fewer & at) === fewer);
      return row[at] === dead && !vain ? [`${prefix}${code}`] : [];
    }),
  );
}

const layouts = Object.entries(digest.strokes);

test('the digest covers every layout and a good part of its characters', () => {
  expect(layouts.length).toBe(36);
  for (const [, strokes] of layouts) expect(Object.keys(strokes).length).toBeGreaterThan(150);
});

describe.each(layouts)('%s agrees with libxkbcommon', (name, strokes) => {
  const table = shippedTable(name.replace(' ', '-'));
  const host = hostFromTable(table);

  test('on every character that one stroke types, and on those that none does', () => {
    for (const [char, said] of Object.entries(strokes)) {
      if (char.startsWith('dead_')) continue;
      const single = host.routesOf(char).filter((route) => route.length === 1);
      const ours = single
        .map((route) => xkbWords(routeLine(route)))
        .filter((line) => !line.includes('Numpad'));
      expect([char, ours.toSorted()]).toEqual([char, reachable(words(said), table)]);
    }
  });

  test('on where the dead keys are', () => {
    for (const [dead, said] of Object.entries(strokes)) {
      if (!dead.startsWith('dead_')) continue;
      expect([dead, deadStrokes(table, dead).toSorted()]).toEqual([dead, reachable(words(said), table)]);
    }
  });

  test('on every sequence by which the Compose file makes one of its characters', () => {
    for (const [char, sequences] of Object.entries(digest.compose)) {
      const expected = sequences.flatMap((sequence) => linesOf(sequence, strokes, table));
      const ours = host.routesOf(char).map((route) => xkbWords(routeLine(route)));
      expect([char, expected.filter((line) => !ours.includes(line))]).toEqual([char, []]);
    }
  });
});

/** Every way to press a sequence of dead keys and a character, by XKB's own strokes. */
function linesOf(
  sequence: string,
  strokes: Readonly<Record<string, string>>,
  table: HostTable,
): readonly string[] {
  // The space is a character too: a sequence that ends in it ends in two spaces.
  const parts = sequence.endsWith('  ') ? [...words(sequence), ' '] : words(sequence);
  return parts.reduce<readonly string[]>(
    (lines, part) =>
      lines.flatMap((line) =>
        reachable(words(strokes[part]), table).map((stroke) => `${line} ${stroke}`.trim()),
      ),
    [''],
  );
}

test('dead keys make nothing else but what the Compose file or Unicode canonical composition says', () => {
  for (const [name, strokes] of layouts) {
    const table = shippedTable(name.replace(' ', '-'));
    const host = hostFromTable(table);
    for (const char of Object.keys(strokes)) {
      for (const route of char.startsWith('dead_') ? [] : host.routesOf(char)) {
        if (route.length === 1) continue;
        const sequence = route.map((stroke) => outputOf(table, stroke)).join(' ');
        const isListed = digest.compose[char]?.includes(sequence) ?? false;
        // Unicode: the character, taken apart, is its letter and one mark for each of the dead keys.
        const isCanonical = [...char.normalize('NFD')].length >= route.length;
        expect([name, char, sequence, isListed || isCanonical]).toEqual([name, char, sequence, true]);
      }
    }
  }
});

function outputOf(table: HostTable, { code, with: modifiers }: Stroke): string {
  const combination = (modifiers.includes('ShiftLeft') ? 1 : 0) + (modifiers.includes('AltRight') ? 2 : 0);
  return table.keys[code]?.[combination] ?? '';
}

describe.skipIf(!isSameXkb)('the digest is what this machine says, which has the same XKB', () => {
  test('of every sixtieth character of each layout', () => {
    for (const [name, strokes] of layouts) {
      const [layout = '', variant = ''] = name.split(' ');
      const asked = Object.keys(strokes).filter((_, at) => at % 60 === layout.length + variant.length);
      const said = asked.map((output) => [output, howToType(layout, variant, output).join(' ')]);
      expect([name, said]).toEqual([name, asked.map((output) => [output, strokes[output]])]);
    }
  }, 60_000);

  test('of the results of the Compose file', () => {
    const results = readComposeFile(readFileSync(COMPOSE_FILE, 'utf8'))
      .filter(({ names }) => names.length <= 3)
      .map(({ result }) => result);
    expect([...new Set(results)].toSorted()).toEqual(Object.keys(digest.compose).toSorted());
  });
});
