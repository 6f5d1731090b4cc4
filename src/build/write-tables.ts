/**
 * Writes the tables in public/hosts and public/needs, the bundled one of `us`, and what the tests check the host
 * tables against: `npm run tables`. Needs Debian's xkb-data, libxkbcommon-tools and libx11-data; takes some minutes.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { languageFile, languageLists } from '../core/needs/language-table.ts';
import { readComposeFile } from './tables/compose-file.ts';
import { hostTable } from './tables/host-tables.ts';
import { KeysymTable } from './tables/keysyms.ts';
import { cldrLanguages, languageTable } from './tables/language-tables.ts';
import { LAYOUTS } from './tables/layouts.ts';
import { strokeDigest } from './tables/stroke-digest.ts';

const COMPOSE_FILE = '/usr/share/X11/locale/en_US.UTF-8/Compose';

function missingSource(): string | null {
  if (spawnSync('xkbcli', ['--version']).status !== 0) return 'xkbcli (Debian package libxkbcommon-tools)';
  if (!existsSync('/usr/share/X11/xkb/rules/evdev')) return 'the XKB data (Debian package xkb-data)';
  return existsSync(COMPOSE_FILE) ? null : `${COMPOSE_FILE} (Debian package libx11-data)`;
}

function writeHosts(): void {
  const keysyms = new KeysymTable();
  const compose = readComposeFile(readFileSync(COMPOSE_FILE, 'utf8'));
  mkdirSync('public/hosts', { recursive: true });
  const index = LAYOUTS.map(({ layout, variant, languages }) => {
    const table = hostTable(layout, variant, compose, keysyms);
    const file = `${[layout, variant].filter((part) => part !== '').join('-')}.json`;
    writeFileSync(`public/hosts/${file}`, `${JSON.stringify(table)}\n`);
    if (file === 'us.json') writeUsModule(JSON.stringify(table, null, 2));
    return { layout, variant, title: table.title, file, languages };
  });
  writeFileSync('public/hosts/index.json', `${JSON.stringify(index, null, 1)}\n`);
  const digest = strokeDigest(LAYOUTS, compose, keysyms);
  writeFileSync('tests/core/host/data/how-to-type.json', `${JSON.stringify(digest, null, 1)}\n`);
}

/** One table a language, and an index that tells which lists there are without loading any. */
function writeLanguages(): void {
  mkdirSync('public/needs', { recursive: true });
  const index = cldrLanguages().flatMap((language) => {
    const table = languageTable(language);
    if (table === null) return [];
    const file = languageFile(`cldr:${language}`) ?? '';
    writeFileSync(`public/needs/${file}`, `${JSON.stringify(table)}\n`);
    return languageLists(table).map(({ name, title, needs }) => ({ name, title, file, count: needs.length }));
  });
  writeFileSync('public/needs/index.json', `${JSON.stringify(index, null, 1)}\n`);
}

function writeUsModule(json: string): void {
  const head = [
    '// Generated out of XKB by `npm run tables`; not to be edited.',
    "import type { HostTable } from './host-table.ts';",
    '',
    '/** How XKB reads the keys under its layout `us`. */',
  ];
  writeFileSync(
    'src/core/host/us-table.ts',
    `${head.join('\n')}\nexport const usTable: HostTable = ${json};\n`,
  );
  spawnSync('npx', ['biome', 'check', '--write', 'src/core/host/us-table.ts']);
}

writeLanguages();
const missing = missingSource();
if (missing === null) {
  writeHosts();
} else {
  console.error(`The tables of host layouts were left as they are: ${missing} is missing.`);
  process.exitCode = 1;
}
