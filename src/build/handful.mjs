/**
 * `npm run -s handful -- …`: the command line. Vite bundles it into one file when a source is newer; the bundle starts
 * in a fraction of the time that reading the TypeScript sources one by one would take.
 */
import { mkdirSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { isStale } from './newest.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const bundle = join(root, '.cache/handful.mjs');

async function makeBundle() {
  const { build } = await import('vite');
  // Under a name of its own first: two commands that start at once must not read a half-written file.
  const own = `handful-${process.pid}.mjs`;
  await build({
    root,
    configFile: false,
    publicDir: false,
    logLevel: 'error',
    ssr: { noExternal: true, target: 'node' },
    build: {
      ssr: 'src/cli/main.ts',
      target: 'node20',
      outDir: '.cache/bundling',
      emptyOutDir: false,
      rolldownOptions: { output: { entryFileNames: own, codeSplitting: false } },
    },
  });
  mkdirSync(join(root, '.cache'), { recursive: true });
  renameSync(join(root, '.cache/bundling', own), bundle);
}

const sources = ['src/core', 'src/cli', 'src/build/handful.mjs', 'package-lock.json'];
if (
  isStale(
    bundle,
    sources.map((name) => join(root, name)),
  )
) {
  await makeBundle();
}
await import(pathToFileURL(bundle).href);
