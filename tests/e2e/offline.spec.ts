import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { choose, nameField, openPage, rename } from './keeping.ts';
import { servedCopy } from './served-copy.ts';

test.use({ serviceWorkers: 'allow' });

/** Until the browser has the whole page. */
async function untilKept(page: Page): Promise<void> {
  await choose(page, 'More', 'Settings…');
  await expect(page.getByText('This page is kept in the browser')).toBeVisible({ timeout: 20_000 });
  await page.getByRole('button', { name: 'Done' }).click();
}

test('without a network the page opens, takes edits and finds them again', async ({ page, context }) => {
  await openPage(page);
  await untilKept(page);
  await context.setOffline(true);
  await rename(page, 'Written under way');
  await expect(page.getByText('Saved', { exact: true })).toBeVisible();
  await page.reload();
  await expect(nameField(page)).toHaveValue('Written under way');
  // A desk that was never open with a network, with its letters.
  await page.getByRole('radio', { name: 'Sheet' }).check();
  await expect(page.getByRole('img', { name: 'Sheet, page 1 of 1' })).toBeVisible();
});

test('a newer version says so, loses nothing, and is taken up when it is wanted', async ({ page }) => {
  const copy = await servedCopy();
  try {
    await page.goto(copy.address);
    await expect(nameField(page)).toBeVisible();
    await untilKept(page);
    await rename(page, 'Before the update');
    const html = join(copy.folder, 'index.html');
    writeFileSync(html, readFileSync(html, 'utf8').replace('lang="en"', 'lang="en" data-newer="yes"'));
    const worker = join(copy.folder, 'service-worker.js');
    writeFileSync(worker, readFileSync(worker, 'utf8').replace(/VERSION = "[0-9a-f]+"/, 'VERSION = "newer"'));
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    await expect(page.getByText('A newer version of Handful is ready.')).toBeVisible();
    await expect(page.locator('html')).not.toHaveAttribute('data-newer');
    await page.getByRole('button', { name: 'Use it now' }).click();
    await expect(page.locator('html')).toHaveAttribute('data-newer', 'yes');
    await expect(nameField(page)).toHaveValue('Before the update');
    await expect(page.getByText('A newer version of Handful is ready.')).toHaveCount(0);
  } finally {
    await copy.close();
  }
});

test('the page can be installed: its manifest and every icon of it are there', async ({ page }) => {
  await openPage(page);
  const address = await page.locator('link[rel="manifest"]').getAttribute('href');
  const manifest = await (await page.request.get(address ?? '')).json();
  expect(manifest).toMatchObject({ display: 'standalone', start_url: './' });
  for (const { src, sizes, type } of manifest.icons) {
    const icon = await page.request.get(src);
    expect(icon.headers()['content-type']).toContain(type);
    if (sizes === 'any') continue;
    // Width and height stand in the first chunk of a PNG (RFC 2083, 11.2.1).
    const bytes = await icon.body();
    expect(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`).toBe(sizes);
  }
});
