import { createServer } from 'node:net';
import { defineConfig } from '@playwright/test';
import { findBrowser } from './src/build/find-browser.mjs';

/** A port that nobody listens on now. */
function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address !== null ? address.port : 4173));
    });
  });
}

// The workers read this file again, and must come to the port that the first reading chose.
process.env.HANDFUL_PORT ??= String(await freePort());
const address = `http://127.0.0.1:${process.env.HANDFUL_PORT}/`;
const browser = findBrowser();

export default defineConfig({
  testDir: 'tests/e2e',
  outputDir: 'test-results',
  fullyParallel: true,
  forbidOnly: process.env.CI !== undefined,
  workers: 2,
  // A busy machine takes several times as long as a quiet one; only what hangs should fail for its time, ms.
  timeout: 90_000,
  expect: { timeout: 20_000 },
  reporter: 'list',
  use: {
    baseURL: address,
    viewport: { width: 1440, height: 900 },
    screenshot: 'only-on-failure',
    // What a test sees is what it asked the server for; the tests about working without a network let it in again.
    serviceWorkers: 'block',
    launchOptions: {
      ...(browser === undefined ? {} : { executablePath: browser }),
      // For containers: no sandbox without a user, no graphics card, and no calls home from the browser itself.
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        '--disable-quic',
        '--no-first-run',
        // Compiling beside what runs costs a third of the time on a machine whose cores are all at work anyway.
        '--js-flags=--no-concurrent-recompilation',
      ],
    },
  },
  webServer: {
    command: `node src/build/start.mjs --strict-port --port ${process.env.HANDFUL_PORT}`,
    url: address,
    reuseExistingServer: false,
    timeout: 120_000,
  },
});
