/** The built page in a headless browser, for scripts that look at it or measure it. */
import { chromium } from '@playwright/test';
import { preview } from 'vite';
import { findBrowser } from './find-browser.mjs';

/** Serves dist and starts a browser; `close` ends both. Undefined where the machine has no browser. */
export async function openBuiltPage(root, port) {
  const executablePath = findBrowser();
  if (executablePath === undefined) return undefined;
  const server = await preview({ root, logLevel: 'warn', preview: { port } });
  const browser = await chromium.launch({
    executablePath,
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run'],
  });
  return {
    address: server.resolvedUrls?.local[0] ?? '',
    browser,
    async close() {
      await browser.close();
      await server.close();
    },
  };
}

/** Opens a keymap file in the page as a person does, and waits until its board is drawn. */
export async function importDesign(page, file, name) {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Designs' }).click();
  await page.getByRole('menuitem', { name: 'Import a file…' }).click();
  await (await chooser).setFiles(file);
  await page.waitForFunction(
    (wanted) => [...document.querySelectorAll('input')].some(({ value }) => value === wanted),
    name,
  );
  await page.locator('[data-key]').first().waitFor();
}
