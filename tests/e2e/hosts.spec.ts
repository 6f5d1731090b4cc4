import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { accessibilityFaults } from './design-desk.ts';
import { importFile, openPage } from './keeping.ts';

const almanac = readFileSync('demo-layouts/two-shore-almanac.json', 'utf8');

const dialog = (page: Page) => page.getByRole('dialog', { name: 'Computers' });
const computer = (page: Page, at: number) => dialog(page).getByRole('listitem', { name: `Computer ${at}` });
const changed = (page: Page) => dialog(page).getByRole('region', { name: 'What has changed' });

/** The finding that a need is missing; small letters and capitals are told apart. */
const missing = (page: Page, need: string) =>
  page.locator('[data-rule=need-missing]').filter({ hasText: new RegExp(`“${need}”`) });

/** The almanac, whose first computer is Linux in Polish, with its computers open. */
async function openComputers(page: Page) {
  await openPage(page);
  await importFile(page, 'almanac.json', almanac);
  await page.getByRole('button', { name: /^Typed on Linux, Polish/ }).click();
  await expect(computer(page, 1).getByLabel('Host layout')).toHaveValue('pl');
}

test('from Polish to us mac: what moves, and a key corrected spares a dead key', async ({ page }) => {
  await openComputers(page);
  await expect(changed(page)).toContainText('Nothing yet');
  await computer(page, 1).getByLabel('System').selectOption('macos');
  await computer(page, 1).getByLabel('Host layout').selectOption('us mac');
  await expect(computer(page, 1)).toContainText('approximation');
  await expect(changed(page)).toContainText(/\d+ characters moved, compared with Linux, Polish/);
  await changed(page)
    .getByText(/^Moved \(/)
    .click();
  const moved = changed(page).getByRole('row', { name: /^ł/ });
  await expect(moved).toContainText('then L');

  await computer(page, 1).getByText('Single keys that this computer reads otherwise').click();
  await computer(page, 1).getByLabel('Key', { exact: true }).selectOption('KeyL');
  await computer(page, 1).getByLabel('Pressed').selectOption('with Option');
  await computer(page, 1).getByLabel('Character', { exact: true }).fill('ł');
  await computer(page, 1).getByRole('button', { name: 'Correct', exact: true }).click();
  await expect(computer(page, 1).getByRole('row', { name: /L with Option/ })).toContainText('ł');
  // It is the same key with the same modifier again, so nothing has moved.
  await expect(moved).toHaveCount(0);

  await dialog(page).getByRole('button', { name: 'Done' }).click();
  await expect(page.getByRole('status', { name: 'Notices' })).toContainText(/characters moved/);
  await expect(page.getByRole('button', { name: /^Typed on macOS, English \(Macintosh\)/ })).toBeVisible();
  await expect(page.getByText('single keys differ')).toBeVisible();
  await expect(missing(page, 'ł')).toHaveCount(0);
});

test('two computers: needs side by side, and the order turned round in one step that can be undone', async ({
  page,
}) => {
  await openComputers(page);
  await dialog(page).getByRole('button', { name: 'Add a computer' }).click();
  const table = dialog(page).getByRole('region', { name: 'Needs on two computers' }).getByRole('table');
  await expect(table.getByRole('columnheader', { name: 'Linux, Polish' })).toBeVisible();
  const polishOnly = table.getByRole('row', { name: /✓ typed × missing/ });
  await expect(polishOnly.getByRole('listitem').filter({ hasText: /^ł$/ })).toHaveCount(1);
  await computer(page, 2).getByRole('button', { name: 'Make first' }).click();
  await expect(computer(page, 1).getByLabel('Host layout')).toHaveValue('us');
  await expect(table.getByRole('row', { name: /× missing ✓ typed/ })).toContainText('ł');
  await expect(changed(page)).toContainText('lost');
  await page.keyboard.press('Escape');
  await expect(
    page.getByRole('button', { name: /^Typed on Linux, English \(US\), and 1 more/ }),
  ).toBeVisible();
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('button', { name: /^Typed on Linux, Polish, and 1 more/ })).toBeVisible();
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`axe finds nothing in the computers, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await openComputers(page);
    await computer(page, 1).getByLabel('System').selectOption('macos');
    await computer(page, 1).getByLabel('Host layout').selectOption('us mac');
    await dialog(page).getByRole('button', { name: 'Add a computer' }).click();
    await computer(page, 1).getByText('Single keys that this computer reads otherwise').click();
    await computer(page, 1).getByLabel('Gives').selectOption('dead acute');
    await computer(page, 1).getByRole('button', { name: 'Correct', exact: true }).click();
    await changed(page)
      .getByText(/^Moved \(/)
      .click();
    await expect(computer(page, 1).getByRole('table')).toContainText('dead acute');
    expect(await accessibilityFaults(page)).toEqual([]);
  });
}
