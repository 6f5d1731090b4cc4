import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { judgeImport, roomOf } from './judge-import.ts';
import { codeOnly, filesBelow, importsOf } from './read-source.ts';
import { ROOMS } from './rooms.ts';

const sources = filesBelow('src', ['.ts', '.tsx']).map((path) => ({
  path,
  text: readFileSync(path, 'utf8'),
}));

describe('the house', () => {
  test('every file of src imports only from rooms that its own may use', () => {
    const offences = sources.flatMap(({ path, text }) =>
      importsOf(text).flatMap((specifier) => judgeImport(path, specifier) ?? []),
    );
    expect(offences, offences.join('\n')).toEqual([]);
  });

  test('every file of src lies in a room', () => {
    expect(sources.filter(({ path }) => roomOf(path) === undefined).map(({ path }) => path)).toEqual([]);
  });

  test('the sources were found, and imports in them', () => {
    expect(sources.length).toBeGreaterThan(10);
    expect(sources.flatMap(({ text }) => importsOf(text)).length).toBeGreaterThan(sources.length);
  });

  // The compiler keeps page and machine out of core (it has neither's types there); these it would let pass.
  test('core knows no clock, no chance and no global object', () => {
    const forbidden = /\b(?:Date|Math\.random|globalThis|eval|Function\()/;
    const offences = sources
      .filter(({ path }) => path.startsWith('src/core/'))
      .flatMap(({ path, text }) =>
        codeOnly(text)
          .split('\n')
          .flatMap((line, at) => {
            const found = forbidden.exec(line)?.[0];
            return found === undefined
              ? []
              : [`${path}:${at + 1} uses ${found}: let the caller hand it in as an argument.`];
          }),
      );
    expect(offences, offences.join('\n')).toEqual([]);
  });

  test('no source or test file has more than 400 lines', () => {
    const files = [
      ...filesBelow('src', ['.ts', '.tsx', '.mjs', '.css']),
      ...filesBelow('tests', ['.ts', '.tsx']),
    ];
    const long = files
      .map((path) => ({ path, lines: readFileSync(path, 'utf8').trimEnd().split('\n').length }))
      .filter(({ lines }) => lines > 400)
      .map(({ path, lines }) => `${path} has ${lines} lines: give each of its concepts a file of its own.`);
    expect(long, long.join('\n')).toEqual([]);
  });

  test('file names say one thing in kebab case, and no folder is a drawer for odds and ends', () => {
    const odd = filesBelow('src', [''])
      .filter((path) => !/^src(?:\/[a-z0-9]+(?:-[a-z0-9]+)*)+(?:\.[a-z0-9]+)+$/.test(path))
      .concat(
        sources
          .map(({ path }) => path)
          .filter((path) => /\b(?:utils?|helpers?|common|misc|index)\b/.test(path)),
      );
    expect(odd, odd.join('\n')).toEqual([]);
  });

  test('the room table names each room once, and a room imports only rooms that stand above it', () => {
    const names = ROOMS.map(({ room }) => room);
    expect(new Set(names).size).toBe(names.length);
    for (const [at, { room, mayImport }] of ROOMS.entries()) {
      for (const name of mayImport.filter((other) => !other.endsWith('/*') && other !== 'demo-layouts')) {
        expect(names.slice(0, at), `${room} may import ${name}`).toContain(name);
      }
    }
  });
});

describe('the judge', () => {
  test.each([
    ['src/core/keymap/read.ts', '../engine/play.ts', /may not.*Move what both need/],
    ['src/core/coverage/cost.ts', '../findings/find.ts', /may not/],
    ['src/core/keymap/read.ts', 'node:fs', /only src\/build and src\/cli know Node/],
    ['src/core/keymap/read.ts', 'react', /imports the package react/],
    ['src/ui/widgets/button.tsx', '../../core/keymap/types.ts', /hand it what it shows as props/],
    ['src/ui/desks/design/desk.tsx', '../sheet/page.ts', /of another desk/],
    ['src/store/bench.ts', '../ui/board/board.tsx', /store knows no face/],
    ['src/cli/main.ts', '../build/bench.ts', /may not/],
    ['src/odd/thing.ts', './other.ts', /lies in no room/],
  ])('%s must not import %s', (path, specifier, sentence) => {
    expect(judgeImport(path, specifier)).toMatch(sentence);
  });

  test.each([
    ['src/core/engine/play.ts', '../host/host-layout.ts'],
    ['src/core/keymap/schema.ts', 'zod/mini'],
    ['src/ui/desks/design/desk.tsx', './needs/list.tsx'],
    ['src/ui/desks/design/desk.tsx', '../../board/board.tsx'],
    ['src/ui/app/main.tsx', '../desks/design/desk.tsx'],
    ['src/cli/commands/check.ts', 'node:util'],
    ['src/workers/count.ts', '../core/needs/count.ts'],
  ])('%s may import %s', (path, specifier) => {
    expect(judgeImport(path, specifier)).toBeUndefined();
  });

  test('imports are found in every form, and not in comments', () => {
    const source = [
      "import a, { b } from './a.ts';",
      "import type {\n  C,\n  D,\n} from './c.ts';",
      "import './style.css';",
      "export { e } from './e.ts';",
      "const later = () => import('./later.ts');",
      "new Worker(new URL('./worker.ts', import.meta.url));",
      "// import x from './comment.ts';",
      "/* import y from './block.ts'; */",
      "const quote = /[\"'/]/; import z from './after-quote.ts';".replace('; ', ';\n'),
    ].join('\n');
    expect(importsOf(source).sort()).toEqual(
      ['./a.ts', './after-quote.ts', './c.ts', './e.ts', './later.ts', './style.css', './worker.ts'].sort(),
    );
  });

  test('what stands in strings and comments is no code', () => {
    expect(
      codeOnly("const a = 'Date'; // Date\nconst b = `Date`; /* Date */ const c = /Date/;"),
    ).not.toContain('Date');
    expect(codeOnly("const a = 'x'; const now = Date;")).toContain('Date');
  });
});
