/**
 * Runs a TypeScript file of this project under Node: `node src/build/run.mjs src/build/write-schema.ts [ARGUMENTS]`.
 * Node 20 does not read TypeScript, and Vite, which is here anyway, does. The file sees `process.argv` as if Node had run it itself.
 */
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

const [script, ...rest] = process.argv.slice(2);
if (script === undefined) {
  console.error('usage: node src/build/run.mjs FILE.ts [ARGUMENTS]');
  process.exit(2);
}
const file = resolve(script);
process.argv = [process.execPath, file, ...rest];
await runnerImport(file, {
  root: fileURLToPath(new URL('../..', import.meta.url)),
  configFile: false,
  logLevel: 'warn',
});
