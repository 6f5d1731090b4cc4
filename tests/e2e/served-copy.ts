import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join, normalize } from 'node:path';

const KINDS: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

/** A copy of the built page on a server of its own, so that a test can put a newer version in its place. */
export async function servedCopy() {
  const folder = mkdtempSync(join(tmpdir(), 'handful-page-'));
  cpSync('dist', folder, { recursive: true });
  const server = createServer((request, answer) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const file = join(folder, normalize(pathname === '/' ? '/index.html' : pathname));
    try {
      answer.setHeader('Content-Type', KINDS[extname(file)] ?? 'text/plain');
      answer.end(readFileSync(file));
    } catch {
      answer.statusCode = 404;
      answer.end();
    }
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  return {
    folder,
    address: `http://127.0.0.1:${port}/`,
    close: async () => {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
