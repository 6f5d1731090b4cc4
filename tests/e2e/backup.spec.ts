import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { download } from './design-desk.ts';
import { choose, importFile, nameField, openPage, rename, shellFaults } from './keeping.ts';

const almanac = readFileSync('demo-layouts/two-shore-almanac.json', 'utf8');

const dialog = (page: Page) => page.getByRole('dialog', { name: 'Backup' });

async function backUp(page: Page): Promise<string> {
  await choose(page, 'More', 'Backup…');
  return download(page, () => dialog(page).getByRole('button', { name: 'Save a backup file' }).click());
}

async function offer(page: Page, text: string): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await dialog(page).getByRole('button', { name: 'Choose a backup file…' }).click();
  await (await chooser).setFiles({
    name: 'backup.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
}

test('a backup is brought back in a clean profile: designs, versions and settings', async ({
  page,
  browser,
}) => {
  await openPage(page);
  await importFile(page, 'almanac.json', almanac);
  await expect(nameField(page)).toHaveValue(/almanac/);
  await rename(page, 'Backed up');
  await choose(page, 'Designs', 'Versions of this design…');
  await page.getByRole('textbox', { name: 'Keep the design as it is now, as' }).fill('Before packing');
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await page.keyboard.press('Escape');
  await choose(page, 'More', 'Dark');
  const text = await backUp(page);

  const other = await browser.newContext();
  const theirs = await other.newPage();
  await openPage(theirs);
  await choose(theirs, 'More', 'Backup…');
  await offer(theirs, text);
  const plan = dialog(theirs).getByRole('region', { name: 'What the backup brings' });
  await expect(plan).toContainText('Backed up');
  expect(await shellFaults(theirs)).toEqual([]);
  await plan.getByRole('button', { name: 'Bring it back' }).click();
  // Their own design is the one that stays open; the others lie beside it.
  await expect(dialog(theirs)).toHaveCount(0);
  await expect(nameField(theirs)).toHaveValue(/^Beacon log/);
  await expect(theirs.locator('html')).toHaveAttribute('data-theme', 'dark');
  await choose(theirs, 'Designs', 'Backed up');
  await expect(nameField(theirs)).toHaveValue('Backed up');
  await choose(theirs, 'Designs', 'Versions of this design…');
  await expect(theirs.getByRole('list', { name: 'Kept versions' })).toContainText('Before packing');
  await theirs.keyboard.press('Escape');
  await choose(theirs, 'More', 'Backup…');
  await offer(theirs, text);
  await expect(dialog(theirs)).toContainText(/All of it is here already|here just so/);
  await other.close();
});

test('a file that is no backup gets its sentence and changes nothing', async ({ page }) => {
  await openPage(page);
  await rename(page, 'Stays as it was');
  await choose(page, 'More', 'Backup…');
  await offer(page, almanac);
  await expect(dialog(page).getByRole('alert')).toContainText('expected a backup file');
  await offer(page, '{"format":"handful-backup","version":99}');
  await expect(dialog(page).getByRole('alert')).toContainText('version 99');
  await page.keyboard.press('Escape');
  await page.reload();
  await expect(nameField(page)).toHaveValue('Stays as it was');
});
