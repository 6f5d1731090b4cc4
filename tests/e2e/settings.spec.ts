import { expect, type Page, test } from '@playwright/test';
import { accessibilityFaults, key } from './design-desk.ts';
import { choose, openPage } from './keeping.ts';

/** Opens the field that finds everything, types into it and takes the first of what it finds. */
async function find(page: Page, words: string, first: string | RegExp): Promise<void> {
  await page.keyboard.press('Control+k');
  const field = page.getByRole('combobox', { name: 'Find anything' });
  await expect(field).toBeFocused();
  await field.fill(words);
  await expect(page.getByRole('listbox', { name: 'Found' }).getByRole('option').first()).toContainText(first);
  await page.keyboard.press('Enter');
}

test('what a person settles holds at once, on every design, and after a reload', async ({ page }) => {
  await openPage(page);
  await choose(page, 'More', 'Settings…');
  await page.getByRole('radio', { name: 'Dark' }).check();
  await page.getByRole('radio', { name: 'Nothing moves' }).check();
  await page.getByRole('checkbox', { name: '3 Numbers' }).uncheck();
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Done' }).click();
  const look = page.locator('html');
  await expect(look).toHaveAttribute('data-theme', 'dark');
  const rungs = page.locator('[data-drawing="L14"] [data-layer="3"]');
  await expect(rungs).toHaveCount(0);
  await page.reload();
  await expect(look).toHaveAttribute('data-motion', 'less');
  await expect(page.locator('[data-drawing="L14"]')).toBeVisible();
  await expect(rungs).toHaveCount(0);
  await find(page, 'settings', 'Settings…');
  await page.getByRole('checkbox', { name: '3 Numbers' }).check();
  await page.getByRole('button', { name: 'Done' }).click();
  await expect(rungs).not.toHaveCount(0);
});

test('one field finds dialogs, desks, keys, layers, findings and needs, and shows what is chosen', async ({
  page,
}) => {
  await openPage(page);
  await find(page, 'computers', 'Computers…');
  await expect(page.getByRole('dialog', { name: 'Computers' })).toBeVisible();
  await page.getByRole('button', { name: 'Done' }).click();
  await find(page, 'sheet desk', 'Sheet desk');
  await expect(page.getByRole('img', { name: /^Sheet, page 1/ })).toBeVisible();
  // From another desk, a key and its card are shown where they are.
  await find(page, 'right index home', 'right index home');
  await expect(key(page, 'R22')).toBeVisible();
  await expect(page.getByRole('dialog', { name: /right index home/i })).toBeVisible();
  await page.keyboard.press('Escape');
  await find(page, 'Numbers', 'Numbers');
  await expect(page.locator('[data-layer="numbers"][data-front="true"]')).toBeVisible();
  await find(page, 'measure your typing', 'Measure your typing…');
  await expect(page.getByRole('dialog', { name: /measure|figures/i })).toBeVisible();
});

test('other words than its own name find a command too', async ({ page }) => {
  await openPage(page);
  await find(page, 'host layout', 'Computers…');
  await expect(page.getByRole('dialog', { name: 'Computers' })).toBeVisible();
});
