import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { readKeymap } from '../../src/core/keymap/read.ts';
import { writeKeymap } from '../../src/core/keymap/write.ts';
import { download, readExport } from './design-desk.ts';
import { choose, drop, importFile, nameField, openPage, paste, rename, shellFaults } from './keeping.ts';

const almanac = readFileSync('demo-layouts/two-shore-almanac.json', 'utf8');

function nameIn(text: string): string {
  const read = readKeymap(text);
  if (!read.ok) throw new Error('not a keymap');
  return read.value.name;
}

test('a change is still there after the page is loaded again', async ({ page }) => {
  await openPage(page);
  await rename(page, 'Kept through a reload');
  await expect(page.getByText('Saved', { exact: true })).toBeVisible();
  await page.reload();
  await expect(nameField(page)).toHaveValue('Kept through a reload');
});

test('a tab that ends as soon as a change is said to be saved has lost nothing', async ({
  page,
  context,
}) => {
  await openPage(page);
  await rename(page, 'Kept through a crash');
  await expect(page.getByText('Saved', { exact: true })).toBeVisible();
  // Ends the renderer without any of the events that a page gets when it is closed.
  const devtools = await context.newCDPSession(page);
  devtools.send('Page.crash').catch(() => {});
  await page.waitForEvent('crash');
  const next = await context.newPage();
  await openPage(next);
  await expect(nameField(next)).toHaveValue('Kept through a crash');
});

test('a second tab on the same design says so and overwrites nothing', async ({ page, context }) => {
  await openPage(page);
  await rename(page, 'Held by the first tab');
  const second = await context.newPage();
  await openPage(second);
  await expect(second.getByText('This design is open in another tab.')).toBeVisible();
  await expect(nameField(second)).toHaveCount(0);
  await second.keyboard.press('Control+z');
  await expect(second.getByRole('status', { name: 'Notices' })).toContainText('can only be looked at');
  await rename(page, 'Changed by the first tab');
  await page.reload();
  await expect(nameField(page).or(page.getByText('open in another tab'))).toBeVisible();
});

test('the second tab gets the design when the first one is closed, with its last change', async ({
  page,
  context,
}) => {
  await openPage(page);
  const second = await context.newPage();
  await openPage(second);
  await expect(second.getByText('This design is open in another tab.')).toBeVisible();
  await rename(page, 'Last words of the first tab');
  await expect(page.getByText('Saved', { exact: true })).toBeVisible();
  await page.close();
  await expect(nameField(second)).toHaveValue('Last words of the first tab');
});

test('taking over takes the last change along, and the first tab can only look on', async ({
  page,
  context,
}) => {
  await openPage(page);
  const second = await context.newPage();
  await openPage(second);
  await rename(page, 'Changed just before');
  await second.getByRole('button', { name: 'Take over here' }).click();
  await expect(nameField(second)).toHaveValue('Changed just before');
  await expect(page.getByText('This design is open in another tab.')).toBeVisible();
  await rename(second, 'Changed after');
  await page.getByRole('button', { name: 'Take over here' }).click();
  await expect(nameField(page)).toHaveValue('Changed after');
});

test('a copy opened in the second tab leaves the first tab its design', async ({ page, context }) => {
  await openPage(page);
  await rename(page, 'Original');
  await expect(page.getByText('Saved', { exact: true })).toBeVisible();
  const second = await context.newPage();
  await openPage(second);
  await second.getByRole('button', { name: 'Open a copy here' }).click();
  await expect(nameField(second)).toHaveValue('Original, copy');
  await rename(second, 'Gone another way');
  await expect(nameField(page)).toHaveValue('Original');
  await page.getByRole('button', { name: 'Designs', exact: true }).click();
  await expect(page.getByRole('menuitemradio', { name: 'Gone another way' })).toBeVisible();
});

test('a broken file gets its sentences, and the open design stays as it was', async ({ page }) => {
  await openPage(page);
  await rename(page, 'Stays as it was');
  const broken = JSON.stringify({ ...JSON.parse(almanac), layers: [{ id: 'base', name: 7, places: {} }] });
  const dialog = page.getByRole('dialog', { name: 'This cannot be read as a keymap' });
  for (const bring of [
    () => importFile(page, 'broken.json', broken),
    () => drop(page, { text: broken, asFile: true }),
    () => drop(page, { text: broken, asFile: false }),
    () => paste(page, broken),
  ]) {
    await bring();
    await expect(dialog).toContainText('layers[0].name: found 7, expected');
    await dialog.getByRole('button', { name: 'Close' }).last().click();
    await expect(nameField(page)).toHaveValue('Stays as it was');
  }
  await page.reload();
  await expect(nameField(page)).toHaveValue('Stays as it was');
  await page.getByRole('button', { name: 'Designs', exact: true }).click();
  await expect(page.getByRole('menuitemradio')).toHaveCount(1);
});

test('text from a file is never markup', async ({ page }) => {
  await openPage(page);
  const name = '<img src=x onerror="document.title=1">';
  await importFile(page, 'markup.json', JSON.stringify({ ...JSON.parse(almanac), name }));
  await expect(nameField(page)).toHaveValue(name);
  await expect(page.getByRole('status', { name: 'Notices' })).toContainText(name);
  await expect(page.locator('img')).toHaveCount(0);
});

test('what is exported reads back equal, by file and by clipboard', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openPage(page);
  await importFile(page, 'almanac.json', almanac);
  await expect(nameField(page)).toHaveValue(nameIn(almanac));
  await page.getByRole('button', { name: 'Export', exact: true }).click();
  const text = await download(page, () =>
    page.getByRole('button', { name: 'Download: Neutral keymap' }).click(),
  );
  const original = readKeymap(almanac);
  expect(original).toMatchObject({ ok: true });
  expect(readExport(text)).toEqual(original.ok ? original.value : null);
  expect(writeKeymap(readExport(text))).toBe(text);
  await page.getByRole('button', { name: 'Copy: Neutral keymap' }).click();
  await expect(page.getByText('Copied.')).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(text);
});

test('the worksheet comes as Markdown and as CSV', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'Export', exact: true }).click();
  const markdown = await download(page, () =>
    page.getByRole('button', { name: 'Download: Worksheet, Markdown' }).click(),
  );
  expect(markdown).toMatch(/^# Beacon log/);
  const csv = await download(page, () =>
    page.getByRole('button', { name: 'Download: Worksheet, CSV' }).click(),
  );
  expect(csv.split('\r\n')[0]).toContain('HID usage');
});

test('the published schema is where the page says', async ({ page }) => {
  await openPage(page);
  await page.getByRole('button', { name: 'Export', exact: true }).click();
  const address = await page
    .getByRole('link', { name: 'JSON Schema of the neutral keymap' })
    .getAttribute('href');
  const answer = await page.request.get(address ?? '');
  expect(answer.ok()).toBe(true);
  expect(await answer.json()).toMatchObject({ $schema: 'https://json-schema.org/draft/2020-12/schema' });
});

test('several designs are kept: one is opened, duplicated, renamed and deleted', async ({ page }) => {
  await openPage(page);
  await importFile(page, 'almanac.json', almanac);
  await expect(nameField(page)).toHaveValue(nameIn(almanac));
  const dialog = page.getByRole('dialog', { name: 'Designs' });
  const all = () => choose(page, 'Designs', 'All designs and demonstrations…');
  const more = async (name: string, item: string) => {
    await dialog.getByRole('button', { name: `More for ${name}`, exact: true }).click();
    await page.getByRole('menuitem', { name: item }).click();
  };
  await all();
  await more(nameIn(almanac), 'Duplicate');
  await expect(nameField(page)).toHaveValue(`${nameIn(almanac)}, copy`);
  await all();
  await more(nameIn(almanac), 'Rename');
  await dialog.getByRole('textbox').fill('Renamed from the list');
  await dialog.getByRole('textbox').press('Enter');
  await expect(dialog.getByText('Renamed from the list')).toBeVisible();
  await more(`${nameIn(almanac)}, copy`, 'Delete…');
  await dialog.getByRole('button', { name: 'Delete it' }).click();
  await expect(dialog.getByRole('button', { name: /^More for/ })).toHaveCount(2);
  await dialog.getByRole('button', { name: /^Renamed from the list/ }).click();
  await expect(nameField(page)).toHaveValue('Renamed from the list');
});

test('a stored design that is damaged is told and left where it is', async ({ page }) => {
  await openPage(page);
  await rename(page, 'About to be damaged');
  await expect(page.getByText('Saved', { exact: true })).toBeVisible();
  const damage = (write: boolean) =>
    page.evaluate(async (write) => {
      const database = await new Promise<IDBDatabase>((resolve, reject) => {
        const opening = indexedDB.open('handful');
        opening.onsuccess = () => resolve(opening.result);
        opening.onerror = () => reject(opening.error);
      });
      const records = database.transaction('designs', 'readwrite').objectStore('designs');
      const keys = await new Promise<IDBValidKey[]>((resolve) => {
        const asking = records.getAllKeys();
        asking.onsuccess = () => resolve(asking.result);
      });
      const stands = keys.filter((each) => String(each).startsWith('design:'));
      const damaged = { changedAt: 5, keymap: { name: 'About to be damaged', layers: 'torn' } };
      if (write) records.put(damaged, stands[0] ?? '');
      const stored = await new Promise<unknown[]>((resolve) => {
        const asking = records.getAll();
        asking.onsuccess = () => resolve(asking.result);
      });
      database.close();
      // Another design has been added meanwhile, under an id that may come before.
      return stored.map((each) => JSON.stringify(each)).find((text) => text.includes('torn'));
    }, write);
  // From a page of the same address that keeps nothing itself.
  await page.goto('./neutral-keymap.schema.json');
  const torn = await damage(true);
  expect(torn).toContain('About to be damaged');
  await page.goto('./');
  const dialog = page.getByRole('dialog', { name: '“About to be damaged” cannot be opened' });
  await expect(dialog).toContainText('nothing of it is deleted');
  await dialog.getByRole('button', { name: 'Go on with another design' }).click();
  await expect(nameField(page)).toHaveValue(/Beacon log/);
  await page.goto('./neutral-keymap.schema.json');
  expect(await damage(false)).toBe(torn);
});

test('a new design is made from three answers and types from the start', async ({ page }) => {
  await openPage(page);
  await choose(page, 'Designs', 'New design…');
  const dialog = page.getByRole('dialog', { name: 'New design' });
  await dialog.getByRole('textbox', { name: 'Name' }).fill('Harbour office');
  await dialog.getByRole('radio', { name: '42 keys, split' }).check();
  await dialog.getByRole('radio', { name: /18 × 17 mm/ }).check();
  await dialog.getByRole('combobox', { name: /^Host layout/ }).selectOption({ label: 'German' });
  await expect(dialog.getByRole('radio', { name: 'QWERTZ' })).toBeChecked();
  await dialog.getByRole('checkbox', { name: /^Sound, media/ }).check();
  await dialog.getByRole('textbox', { name: 'Other characters' }).fill('äöüß€');
  await dialog.getByRole('button', { name: 'Make the design' }).click();
  await expect(nameField(page)).toHaveValue('Harbour office');
  await expect(page.locator('[data-key]')).toHaveCount(42);
  await page.getByRole('button', { name: 'Export', exact: true }).click();
  const text = await download(page, () =>
    page.getByRole('button', { name: 'Download: Neutral keymap' }).click(),
  );
  const keymap = readExport(text);
  expect(keymap.hosts).toEqual([{ system: 'linux', layout: 'de', variant: '' }]);
  expect(keymap.board.madeFrom).toMatchObject({ pitchXMm: 18, pitchYMm: 17 });
  expect(keymap.needs?.lists).toContain('media');
  expect(keymap.needs?.own).toEqual(['ä', 'ö', 'ü', 'ß', '€']);
});

test('undo and redo by keyboard and by the buttons that name the step', async ({ page }) => {
  await openPage(page);
  const before = await nameField(page).inputValue();
  await rename(page, 'One step further');
  await page.getByRole('button', { name: /^Undo: / }).click();
  await expect(nameField(page)).toHaveValue(before);
  for (const [keys, name] of [
    ['Control+Shift+z', 'One step further'],
    ['Control+z', before],
    ['Control+y', 'One step further'],
    ['Meta+z', before],
    ['Meta+Shift+z', 'One step further'],
  ] as const) {
    await page.getByRole('heading', { name: 'Handful' }).click();
    await page.keyboard.press(keys);
    await expect(nameField(page)).toHaveValue(name);
  }
  await expect(page.getByRole('button', { name: 'Nothing to redo' })).toBeVisible();
});

test('menus are worked by keyboard alone', async ({ page }) => {
  await openPage(page);
  const button = page.getByRole('button', { name: 'Designs', exact: true });
  await button.focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('menuitem', { name: 'New design…' })).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('menu')).toHaveCount(0);
  await expect(button).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('End');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog', { name: 'Designs' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(button).toBeFocused();
});

test('a need is found by its name and put on a key, by keyboard alone', async ({ page }) => {
  await openPage(page);
  await page.keyboard.press('Control+k');
  const finder = page.getByRole('dialog', { name: /^Find anything/ });
  await expect(finder.getByRole('combobox')).toBeFocused();
  await page.keyboard.type('`');
  await expect(finder.getByRole('option').first()).toContainText('missing');
  await page.keyboard.press('Enter');
  await expect(finder).toHaveCount(0);
  await page.locator('[data-key=L11]').focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: /^Undo: / })).toBeVisible();
  await page.keyboard.press('Control+k');
  await page.keyboard.type('all designs');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog', { name: 'Designs' })).toBeVisible();
});

test('light and dark are chosen, kept, and else follow the computer', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await openPage(page);
  const theme = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  expect(await theme()).toBe('rgb(21, 24, 28)');
  await choose(page, 'More', 'Light');
  await expect.poll(theme).toBe('rgb(251, 248, 242)');
  await page.reload();
  await expect.poll(theme).toBe('rgb(251, 248, 242)');
  await choose(page, 'More', 'Light or dark as the computer is');
  await expect.poll(theme).toBe('rgb(21, 24, 28)');
  await page.emulateMedia({ colorScheme: 'light' });
  await expect.poll(theme).toBe('rgb(251, 248, 242)');
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`axe finds nothing in the menus and dialogs, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await openPage(page);
    const openings = [
      () => choose(page, 'Designs', 'New design…'),
      () => choose(page, 'Designs', 'All designs and demonstrations…'),
      () => choose(page, 'More', 'Help and keyboard…'),
      () => page.keyboard.press('Control+k'),
      () => page.getByRole('button', { name: 'Export', exact: true }).click(),
      () => paste(page, '{"format": "neutral-keymap"}'),
      () => page.getByRole('button', { name: 'Designs', exact: true }).click(),
    ];
    for (const open of openings) {
      await open();
      await expect(page.getByRole('dialog').or(page.getByRole('menu'))).toBeVisible();
      expect(await shellFaults(page)).toEqual([]);
      await page.keyboard.press('Escape');
      await expect(page.getByRole('dialog').or(page.getByRole('menu'))).toHaveCount(0);
    }
  });
}
