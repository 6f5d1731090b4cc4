/** `npm start`: builds the page if its sources are newer, serves it on this machine and says where. Takes `--port N` and `--strict-port`. */
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { build, preview } from 'vite';
import { isStale } from './newest.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const { values } = parseArgs({
  options: { port: { type: 'string', default: '4173' }, 'strict-port': { type: 'boolean', default: false } },
});

const sources = ['src', 'public', 'demo-layouts', 'index.html', 'vite.config.ts', 'package-lock.json'];
const toBuild = isStale(
  join(root, 'dist/index.html'),
  sources.map((name) => join(root, name)),
);
if (toBuild) {
  console.log('Building the page …');
  await build({ root, logLevel: 'warn' });
}

// Port taken: Vite takes the next one unless told to be strict, and the address that is printed says which.
const server = await preview({
  root,
  logLevel: 'warn',
  preview: { host: '127.0.0.1', port: Number(values.port), strictPort: values['strict-port'] },
});
console.log(`Handful is at ${server.resolvedUrls?.local[0]}  (Ctrl+C ends it)`);

function stop() {
  // A browser keeps its connections open, and the server would wait for them.
  server.httpServer.closeAllConnections?.();
  server.close().then(
    () => process.exit(0),
    () => process.exit(1),
  );
}

for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.once(signal, stop);

// npm hands a signal to the shell that it started, and not every shell hands it on: without that shell nobody is left
// who wants the server.
if (process.env.npm_lifecycle_event === 'start') {
  const shell = process.ppid;
  setInterval(() => process.ppid !== shell && stop(), 500).unref();
}
