/**
 * Writes the tables in public/hosts and the bundled one of `us`: `npm run tables`. Needs Debian's xkb-data,
 * libxkbcommon-tools and libx11-data; takes about half a minute.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { readComposeFile } from './tables/compose-file.ts';
import { hostTable } from './tables/host-tables.ts';
import { KeysymTable } from './tables/keysyms.ts';
import { LAYOUTS } from './tables/layouts.ts';

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

const missing = missingSource();
if (missing === null) {
  writeHosts();
} else {
  console.error(`The tables were left as they are: ${missing} is missing.`);
  process.exitCode = 1;
}
