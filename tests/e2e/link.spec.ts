import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { download } from './design-desk.ts';
import { importFile, nameField, openPage, rename } from './keeping.ts';

const almanac = readFileSync('demo-layouts/two-shore-almanac.json', 'utf8');

async function exported(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'Export', exact: true }).click();
  const text = await download(page, () =>
    page.getByRole('button', { name: 'Download: Neutral keymap' }).click(),
  );
  await page.keyboard.press('Escape');
  return text;
}

test('a link opened in a second, clean profile gives the same file, and is sent to nobody', async ({
  page,
  browser,
}) => {
  await openPage(page);
  await importFile(page, 'almanac.json', almanac);
  await expect(nameField(page)).toHaveValue(/almanac/);
  await rename(page, 'Sent by link');
  await page.getByRole('button', { name: 'Export', exact: true }).click();
  const link = await page.getByRole('textbox', { name: 'Link to this design' }).inputValue();
  await page.keyboard.press('Escape');
  const text = await exported(page);

  const other = await browser.newContext();
  const theirs = await other.newPage();
  const asked: string[] = [];
  theirs.on('request', (request) => asked.push(request.url() + (request.postData() ?? '')));
  await theirs.goto(link);
  await expect(nameField(theirs)).toHaveValue('Sent by link');
  await expect(theirs.getByRole('status', { name: 'Notices' })).toContainText('beside your own designs');
  expect(await exported(theirs)).toBe(text);
  expect(theirs.url()).not.toContain('#');
  const packed = link.slice(link.indexOf('.', link.indexOf('#')) + 1, link.indexOf('#') + 60);
  expect(asked.length).toBeGreaterThan(0);
  expect(asked.filter((request) => request.includes(packed))).toEqual([]);
  // Their own design is still there, and the same link does not bring a second copy.
  await theirs.goto(link);
  await expect(theirs.getByRole('status', { name: 'Notices' })).toContainText('just as you keep it already');
  await theirs.getByRole('button', { name: 'Designs', exact: true }).click();
  await expect(theirs.getByRole('menuitemradio')).toHaveCount(2);
  await other.close();
});

test('a broken link gets its sentence and changes nothing', async ({ page }) => {
  await openPage(page);
  await rename(page, 'Stays as it was');
  await page.evaluate(() => {
    location.hash = 'design=1.eJwrSS0uAQAEXQHB';
  });
  const dialog = page.getByRole('dialog', { name: 'This cannot be read as a keymap' });
  await expect(dialog).toContainText('The link was not imported');
  await dialog.getByRole('button', { name: 'Close' }).last().click();
  await expect(nameField(page)).toHaveValue('Stays as it was');
  await page.getByRole('button', { name: 'Designs', exact: true }).click();
  await expect(page.getByRole('menuitemradio')).toHaveCount(1);
});

test('the menu copies the link', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openPage(page);
  await page.getByRole('button', { name: 'Designs', exact: true }).click();
  await page.getByRole('menuitem', { name: 'Copy a link to this design' }).click();
  await expect(page.getByRole('status', { name: 'Notices' })).toContainText('Copied a link');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(/#design=1\.[\w-]+$/);
});
