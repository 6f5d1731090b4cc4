import { expect, type Page, test } from '@playwright/test';
import { choose, nameField, openPage, rename, shellFaults } from './keeping.ts';

const dialog = (page: Page) => page.getByRole('dialog', { name: 'Versions' });

async function bindOn(page: Page, key: string, sign: string): Promise<void> {
  await page.locator(`[data-key=${key}]`).focus();
  await page.keyboard.press(sign);
  await expect(page.getByRole('button', { name: /^Undo: Bind/ })).toBeVisible();
}

async function keep(page: Page, name: string): Promise<void> {
  await choose(page, 'Designs', 'Versions of this design…');
  await dialog(page).getByRole('textbox', { name: 'Keep the design as it is now, as' }).fill(name);
  await dialog(page).getByRole('button', { name: 'Keep', exact: true }).click();
  await expect(dialog(page).getByRole('list', { name: 'Kept versions' })).toContainText(name);
  await page.keyboard.press('Escape');
}

test('two versions are compared on the board, in words and in figures, and one is restored', async ({
  page,
}) => {
  await openPage(page);
  await keep(page, 'Before the trip');
  await bindOn(page, 'L22', 'e');
  await bindOn(page, 'L23', 's');
  await rename(page, 'After the trip');
  await choose(page, 'Designs', 'Versions of this design…');
  const differences = dialog(page).getByRole('region', { name: 'Differences' });
  await expect(differences).toContainText('3 differences');
  await expect(differences).toContainText('became “After the trip”');
  const row = differences.getByRole('button', { name: /left index home, Letters.*f became e/ });
  await expect(row).toBeVisible();
  const boards = dialog(page).getByRole('region', { name: 'Boards' });
  await expect(boards.getByRole('img', { name: 'After: 2 keys marked' })).toBeVisible();
  await row.click();
  await expect(boards.getByRole('img', { name: 'After: 1 key marked' })).toBeVisible();
  const figures = dialog(page).getByRole('region', { name: 'What it does to typing' });
  await expect(figures).toContainText(/\d+ % of the presses of the text .* change under the fingers/, {
    timeout: 20_000,
  });
  await expect(figures.getByRole('row', { name: /needs reached/ })).toContainText(/of/);
  expect(await shellFaults(page)).toEqual([]);
  // Any two: the first state with one that was kept just now.
  await dialog(page).getByRole('textbox', { name: 'Keep the design as it is now, as' }).fill('After it');
  await dialog(page).getByRole('button', { name: 'Keep', exact: true }).click();
  await dialog(page).getByRole('combobox', { name: 'Before' }).selectOption('Before the trip');
  await dialog(page).getByRole('combobox', { name: 'After' }).selectOption('After it');
  await expect(differences).toContainText('3 differences');
  await dialog(page).getByRole('combobox', { name: 'Before' }).selectOption('After it');
  await expect(differences).toContainText('Nothing differs.');
  await dialog(page).getByRole('combobox', { name: 'Before' }).selectOption('Before the trip');
  await dialog(page).getByRole('button', { name: 'Restore “Before the trip”' }).click();
  await expect(nameField(page)).toHaveValue(/^Beacon log/);
  await page.getByRole('button', { name: /^Undo: Restore/ }).click();
  await expect(nameField(page)).toHaveValue('After the trip');
});

test('versions and the history are there again after the page is loaded again', async ({ page }) => {
  await openPage(page);
  const first = await nameField(page).inputValue();
  await rename(page, 'One');
  await rename(page, 'Two');
  await keep(page, 'At two');
  await expect(page.getByText('Saved', { exact: true })).toBeVisible();
  await page.reload();
  await expect(nameField(page)).toHaveValue('Two');
  await page.getByRole('button', { name: 'Undo: Rename the design to Two' }).click();
  await page.getByRole('button', { name: 'Undo: Rename the design to One' }).click();
  await expect(nameField(page)).toHaveValue(first);
  await choose(page, 'Designs', 'Versions of this design…');
  // The one kept by itself is the state before the first change.
  await expect(dialog(page).getByRole('list', { name: 'Kept versions' }).getByRole('listitem')).toHaveCount(
    2,
  );
  await expect(dialog(page)).toContainText('By itself');
});
