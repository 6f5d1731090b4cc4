import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { importFile, nameField, openPage } from './keeping.ts';

const almanac = readFileSync('demo-layouts/two-shore-almanac.json', 'utf8');

const stack = (page: Page) => page.getByRole('region', { name: 'Layers' });
const order = (page: Page) =>
  stack(page)
    .locator('[data-layer]')
    .evaluateAll((sheets) => sheets.map((sheet) => sheet.getAttribute('data-layer')));

async function openAlmanac(page: Page): Promise<(string | null)[]> {
  await openPage(page);
  await importFile(page, 'almanac.json', almanac);
  await expect(nameField(page)).toHaveValue(/almanac/);
  return order(page);
}

test('a sheet dragged onto another takes its place, and one step back undoes it', async ({ page }) => {
  const before = await openAlmanac(page);
  const [top, next] = before;
  const from = await stack(page).locator(`[data-layer="${top}"]`).boundingBox();
  const to = await stack(page).locator(`[data-layer="${next}"]`).boundingBox();
  if (from === null || to === null) throw new Error('no sheets');
  await page.mouse.move(from.x + 60, from.y + from.height / 2);
  await page.mouse.down();
  await page.mouse.move(to.x + 60, to.y + to.height / 2, { steps: 6 });
  await expect(stack(page).locator(`[data-layer="${next}"]`)).toHaveAttribute('data-drop', 'below');
  await page.mouse.up();
  await expect.poll(() => order(page)).toEqual([next, top, ...before.slice(2)]);
  await page.getByRole('button', { name: /^Undo: Move layer/ }).click();
  await expect.poll(() => order(page)).toEqual(before);
});

test('Alt with an arrow moves the sheet in focus, which keeps the focus and says where it is', async ({
  page,
}) => {
  const before = await openAlmanac(page);
  const [top, next] = before;
  const face = stack(page).locator(`[data-layer="${next}"] > button`).first();
  await face.focus();
  await page.keyboard.press('Alt+ArrowUp');
  await expect.poll(() => order(page)).toEqual([next, top, ...before.slice(2)]);
  await expect(face).toBeFocused();
  await expect(stack(page).locator('output')).toContainText(/is number \d of \d now, above/);
  await page.keyboard.press('Alt+ArrowDown');
  await expect.poll(() => order(page)).toEqual(before);
  await expect(face).toBeFocused();
});

test('a layer is duplicated from its menu', async ({ page }) => {
  const before = await openAlmanac(page);
  const sheet = stack(page).locator(`[data-layer="${before[0]}"]`);
  const name = await sheet.locator('button > span').nth(1).textContent();
  await sheet.getByRole('button', { name: /^More for layer/ }).click();
  await page.getByRole('menuitem', { name: 'Duplicate' }).click();
  await expect(
    stack(page)
      .getByRole('button', { name: new RegExp(`${name}, copy`) })
      .first(),
  ).toHaveAttribute('aria-pressed', 'true');
  expect((await order(page)).slice(1)).toEqual(before);
});
