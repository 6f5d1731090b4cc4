import { expect, type Locator, type Page, test } from '@playwright/test';
import { accessibilityFaults, chip, clearKeys, drag, half, key, LOWEST_ROW, tabTo } from './design-desk.ts';
import { openPage } from './keeping.ts';

/** The folder of real source code that is counted: this project's own. */
const SOURCE = 'src/core';

const list = (page: Page, name: string) => page.locator(`[data-list=${JSON.stringify(name)}]`);
const bar = (page: Page, name: string) => list(page, name).getByRole('img');
const ownText = (page: Page) => page.getByRole('region', { name: 'Your text' });
const showCoverage = (page: Page) => page.getByRole('radio', { name: 'Coverage' }).check();
const chooseFolder = (page: Page) => page.locator('[data-chooses=folder]').setInputFiles(SOURCE);

/** A new 36-key design for Polish and Rust, on a computer that is set to Polish, without its signs and its right Alt. */
async function openPolishAndRust(page: Page) {
  await openPage(page);
  await page.getByRole('button', { name: 'Designs', exact: true }).click();
  await page.getByRole('menuitem', { name: 'New design…' }).click();
  const dialog = page.getByRole('dialog', { name: 'New design' });
  await dialog.getByLabel('Name').fill('Dolina, 36 keys');
  await dialog.getByLabel(/^Host layout/).selectOption('pl');
  await dialog.getByRole('checkbox', { name: /^Rust/ }).check();
  await dialog.getByLabel('Add a language').selectOption('cldr:pl');
  await dialog.getByRole('button', { name: 'Make the design' }).click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await page.getByRole('button', { name: /^1 Numbers/ }).click();
  await clearKeys(page, [...LOWEST_ROW, 'R24']);
  await showCoverage(page);
}

test('Polish and Rust: what is missing, what another computer changes, and a folder of source code as weight', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openPolishAndRust(page);
  await expect(list(page, 'cldr:pl')).toContainText(/\d+ of \d+ reached/);
  await expect(list(page, 'cldr:pl')).toContainText(/Missing:.* ł /);
  await expect(list(page, 'rust')).toContainText('Missing:');

  for (const [need, place] of [
    ['ą', 'L33'],
    ['ż', 'L32'],
  ] as const) {
    await drag(page, chip(page, `need ${need}`), half(page, place, 'tap'));
    await expect(chip(page, `need ${need}`)).toHaveAttribute('data-status', 'reached');
  }
  await expect(list(page, 'cldr:pl')).not.toContainText(/Missing:.*ą/);

  const onLinux = (await bar(page, 'cldr:pl').getAttribute('aria-label')) ?? '';
  await page.getByRole('button', { name: /^Typed on / }).click();
  const computers = page.getByRole('dialog', { name: 'Computers' });
  await computers.getByLabel('System').selectOption('macos');
  await computers.getByLabel('Host layout').selectOption('us mac');
  const changed = computers.getByRole('region', { name: 'What has changed' });
  await expect(changed).toContainText(/\d+ characters moved, compared with Linux, Polish/);
  await changed.getByText(/^Moved \(\d+\)$/).click();
  await expect(changed.getByRole('row', { name: /^ą/ })).toContainText(/AltGr \+ A.*, then A/);
  await computers.getByRole('button', { name: 'Done' }).click();
  await expect(bar(page, 'cldr:pl')).toHaveAccessibleName(/two strokes: [1-9]/);
  await expect(bar(page, 'cldr:pl')).not.toHaveAccessibleName(onLinux);

  await chooseFolder(page);
  await expect(ownText(page)).toContainText(/^core: [\d,]+ characters in \d+ files, counted on/);
  await expect(list(page, 'own text')).toContainText(/[\d.]+ % of [\d,]+ characters reached/);
  await expect(list(page, 'cldr:pl')).toContainText('characters reached');
  await expect(page.getByRole('definition').first()).toHaveText(/^[12]\.\d\d$/);
  const fingers = page.getByRole('table', { name: 'Share of the presses by finger' });
  await expect(fingers.getByRole('row')).toHaveCount(6);
  await expect(fingers).toContainText(/left hand \d\d\.\d %/);

  await page.getByRole('radio', { name: 'each need once' }).check();
  await expect(list(page, 'cldr:pl')).toContainText(/\d+ of \d+ reached/);

  await page.getByRole('button', { name: 'Copy as Markdown' }).click();
  await expect(page.getByText('Copied.')).toBeVisible();
  const markdown = await page.evaluate(() => navigator.clipboard.readText());
  expect(markdown).toContain('# What Dolina, 36 keys reaches');
  expect(markdown).toMatch(/\| Polish \| \d+ \|/);
  expect(markdown).toMatch(/\d\.\d\d presses per character/);
});

test('the own text stays for the next visit, weighs any design, and is gone when it is forgotten', async ({
  page,
}) => {
  await openPage(page);
  await showCoverage(page);
  await expect(ownText(page)).toContainText('Drop what you have typed here');
  await chooseFolder(page);
  await expect(ownText(page)).toContainText('core:');
  await page.reload();
  await showCoverage(page);
  await expect(ownText(page)).toContainText(/core: [\d,]+ characters/);
  await ownText(page).getByRole('button', { name: 'Forget it' }).click();
  await expect(ownText(page)).toContainText('Drop what you have typed here');
  await page.reload();
  await showCoverage(page);
  await expect(list(page, 'ascii')).toBeVisible();
  await expect(ownText(page)).not.toContainText('core:');
});

/** Lets files go over a place, as a drag from the desktop does. */
async function dropFiles(page: Page, onto: Locator, files: readonly { name: string; text: string }[]) {
  const data = await page.evaluateHandle((all) => {
    const transfer = new DataTransfer();
    for (const { name, text } of all) transfer.items.add(new File([text], name));
    return transfer;
  }, files);
  for (const type of ['dragenter', 'dragover', 'drop']) {
    await onto.dispatchEvent(type, { dataTransfer: data });
  }
}

test('files that are dropped on their place are counted and not imported', async ({ page }) => {
  await openPage(page);
  await showCoverage(page);
  await dropFiles(page, ownText(page), [{ name: 'letter.json', text: '{"a": "żółw żółw"}' }]);
  await expect(ownText(page)).toContainText(/letter.json: 18 characters in one file/);
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.getByText('Let go to import')).toHaveCount(0);
  await expect(list(page, 'own text')).toContainText(/Missing:.*ż/);
  await page.getByRole('button', { name: /^Ask for the \d+ missing/ }).click();
  await expect(chip(page, 'need ż')).toHaveAttribute('data-status', 'missing');
  await dropFiles(page, ownText(page), [{ name: 'picture.bin', text: 'P\u0000K' }]);
  await expect(ownText(page).getByRole('status')).toHaveText(/There is no text in that. 1 file was left out/);
});

test('what costs most lights its route up on the board, by pointer and by keyboard', async ({ page }) => {
  await openPage(page);
  await showCoverage(page);
  const dearest = page.locator('[data-costly]').first();
  const badges = page.locator('[data-drawing][data-lit=true]');
  await dearest.hover();
  await expect(badges.first()).toBeVisible();
  await page.mouse.move(700, 4);
  await expect(badges).toHaveCount(0);
  await tabTo(page, dearest);
  await expect(badges.first()).toBeVisible();
});

test('a language is found by its own name, and a need let off with its reason', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'Choose what you type…' }).click();
  const dialog = page.getByRole('dialog', { name: 'What you type' });
  await dialog.getByRole('searchbox', { name: 'Search languages' }).fill('polski');
  await dialog.getByRole('checkbox', { name: /^Polish, letters polski/ }).check();
  await dialog.getByRole('button', { name: 'Done' }).click();
  await expect(chip(page, 'need ń')).toHaveAttribute('data-status', 'missing');

  await chip(page, 'need ń').hover();
  await page.getByRole('button', { name: 'Let off…' }).click();
  await page.getByLabel('Why ń need not be typed').fill('only in one name');
  await page.getByRole('button', { name: 'Let off', exact: true }).click();
  await expect(chip(page, 'need ń')).toHaveCount(0);
  await page.getByRole('button', { name: 'Choose what you type…' }).click();
  await expect(dialog.getByRole('listitem').filter({ hasText: 'only in one name' })).toContainText('ń');
  await dialog.getByRole('button', { name: 'Ask for it again' }).click();
  await dialog.getByRole('button', { name: 'Done' }).click();
  await expect(chip(page, 'need ń')).toHaveAttribute('data-status', 'missing');
});

test('axe finds nothing in the coverage, without a text and with one, light and dark', async ({ page }) => {
  await openPage(page);
  await showCoverage(page);
  await expect(key(page, 'L21')).toBeVisible();
  expect(await accessibilityFaults(page)).toEqual([]);
  await chooseFolder(page);
  await expect(ownText(page)).toContainText('core:');
  await page.getByText('Shortcuts: hands and fingers').click();
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    expect(await accessibilityFaults(page)).toEqual([]);
  }
});
