import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';

/** What lies beside the page but is no part of it. */
const LEFT_OUT = new Set(['handful.png', 'service-worker.js']);

/** Every file below a folder, by its path with slashes, in order. */
function filesIn(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .filter((file) => !LEFT_OUT.has(file) && !file.endsWith('.map'))
    .sort();
}

/** A name for what all files hold together: it changes when one of them does. */
function versionOf(folder: string, files: readonly string[]): string {
  const hash = createHash('sha256');
  for (const file of files)
    hash
      .update(file)
      .update('\0')
      .update(readFileSync(join(folder, file)));
  return hash.digest('hex').slice(0, 16);
}

/** Puts the service worker beside the built page, with the list of the page's files and their version. */
export function offlinePage(): Plugin {
  let folder = '';
  return {
    name: 'offline-page',
    apply: 'build',
    configResolved: (config) => {
      folder = join(config.root, config.build.outDir);
    },
    closeBundle: () => {
      const files = filesIn(folder);
      const source = readFileSync(fileURLToPath(new URL('./service-worker.js', import.meta.url)), 'utf8');
      // The page itself is asked for by its folder.
      const addresses = files.map((file) => (file === 'index.html' ? './' : `./${file}`));
      const script = source
        .replace('__VERSION__', JSON.stringify(versionOf(folder, files)))
        .replace('__FILES__', JSON.stringify(addresses));
      writeFileSync(join(folder, 'service-worker.js'), script);
    },
  };
}
