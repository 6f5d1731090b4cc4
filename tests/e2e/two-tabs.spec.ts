import { expect, type Page, test } from '@playwright/test';
import { nameField, openPage, rename, shellFaults } from './keeping.ts';

async function bindOn(page: Page, key: string, sign: string): Promise<void> {
  await page.locator(`[data-key=${key}]`).focus();
  await page.keyboard.press(sign);
  await expect(page.getByRole('button', { name: /^Undo: Bind/ })).toBeVisible();
}

const label = (page: Page, key: string) => page.locator(`[data-key=${key}]`).getAttribute('aria-label');

test('two tabs that both changed a design are brought together, with a choice where both changed the same', async ({
  page,
  context,
}) => {
  await openPage(page);
  await rename(page, 'Shared');
  await expect(page.getByText('Saved', { exact: true })).toBeVisible();
  const second = await context.newPage();
  await openPage(second);
  await second.getByRole('button', { name: 'Open a copy here' }).click();
  await expect(nameField(second)).toHaveValue('Shared, copy');
  await expect(second.getByText('This is a copy of “Shared”')).toBeVisible();
  // Each tab changes a key of its own, and both change one in different ways.
  await bindOn(page, 'L21', '1');
  await bindOn(page, 'L22', '2');
  await expect(page.getByText('Saved', { exact: true })).toBeVisible();
  await bindOn(second, 'R21', '3');
  await bindOn(second, 'L22', '4');
  await second.getByRole('button', { name: 'Bring both together…' }).click();
  const dialog = second.getByRole('dialog', { name: 'Bring together with “Shared”' });
  await expect(dialog.getByRole('region', { name: 'Changed here' })).toContainText('became 3');
  await expect(dialog.getByRole('region', { name: 'Changed there' })).toContainText('became 1');
  const bring = dialog.getByRole('button', { name: 'Bring both together' });
  await expect(bring).toBeDisabled();
  expect(await shellFaults(second)).toEqual([]);
  await dialog.getByRole('radio', { name: /^here: 4/ }).check();
  await bring.click();
  await expect(dialog).toHaveCount(0);
  await expect(nameField(second)).toHaveValue('Shared');
  for (const [key, sign] of [
    ['L21', '1'],
    ['R21', '3'],
    ['L22', '4'],
  ] as const) {
    await expect.poll(() => label(second, key)).toMatch(new RegExp(`: ${sign}`));
  }
  // The first tab can only look on now, and what it had is a step back.
  await expect(page.getByText('This design is open in another tab.')).toBeVisible();
  await second.getByRole('button', { name: 'Undo: Bring both together' }).click();
  await expect.poll(() => label(second, 'L22')).toMatch(/: 2/);
  await second.getByRole('button', { name: 'Designs', exact: true }).click();
  await expect(second.getByRole('menuitemradio')).toHaveCount(1);
});

test('kept apart, both stay designs of their own', async ({ page, context }) => {
  await openPage(page);
  await rename(page, 'Shared');
  await expect(page.getByText('Saved', { exact: true })).toBeVisible();
  const second = await context.newPage();
  await openPage(second);
  await second.getByRole('button', { name: 'Open a copy here' }).click();
  await second.getByRole('button', { name: 'Keep them as two designs' }).click();
  await expect(second.getByText('This is a copy of')).toHaveCount(0);
  await second.reload();
  await expect(nameField(second)).toHaveValue('Shared, copy');
  await expect(second.getByText('This is a copy of')).toHaveCount(0);
});
