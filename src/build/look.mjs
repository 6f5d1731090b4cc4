/**
 * `npm run look`: pictures of the built page at three sizes, light and dark, for the eye. Takes keymap files to open in
 * it (default: the page as it opens, and every file of demo-layouts). Writes into .cache/look/.
 */
import { mkdirSync, readdirSync, rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import { preview } from 'vite';
import { findBrowser } from './find-browser.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = join(root, '.cache/look');
const SIZES = [
  { name: 'wide', width: 1440, height: 900 },
  { name: 'middle', width: 1024, height: 768 },
  { name: 'phone', width: 390, height: 844 },
];

const named = process.argv.slice(2);
const demos = readdirSync(join(root, 'demo-layouts'))
  .filter((file) => file.endsWith('.json'))
  .map((file) => join(root, 'demo-layouts', file));
const designs = [undefined, ...(named.length > 0 ? named : demos)];

rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const server = await preview({ root, logLevel: 'warn', preview: { port: 4300 } });
const address = server.resolvedUrls?.local[0] ?? '';
const executablePath = findBrowser();
const browser = await chromium.launch({
  ...(executablePath === undefined ? {} : { executablePath }),
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run'],
});

for (const design of designs) {
  for (const { name, width, height } of SIZES) {
    for (const colorScheme of ['light', 'dark']) {
      const context = await browser.newContext({ viewport: { width, height }, colorScheme });
      const page = await context.newPage();
      page.on('console', (message) => message.type() === 'error' && console.error(message.text()));
      page.on('pageerror', (error) => console.error(String(error)));
      await page.goto(address);
      await page.getByRole('main').waitFor();
      if (design !== undefined) await page.locator('input[type=file]').first().setInputFiles(design);
      await page.waitForTimeout(400);
      const picture = `${design === undefined ? 'first' : basename(design, '.json')}-${name}-${colorScheme}.png`;
      await page.screenshot({ path: join(folder, picture) });
      console.log(picture);
      await context.close();
    }
  }
}
await browser.close();
await server.close();
