import { writeFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { suggestCommand } from '../../src/cli/commands/suggest.ts';
import { accessibilityFaults, download, readExport } from './design-desk.ts';

test('a chord for Tab: two are tried on the board, one is taken, and the command line ranks the same', async ({
  page,
}, info) => {
  await page.goto('./');
  await page.getByRole('listbox', { name: 'Keys' }).waitFor();
  const exported = async () => {
    await page.getByRole('button', { name: 'Export', exact: true }).click();
    const text = await download(page, () =>
      page.getByRole('button', { name: 'Download: Neutral keymap' }).click(),
    );
    await page.keyboard.press('Escape');
    return text;
  };
  const before = await exported();
  const file = info.outputPath('before.json');
  writeFileSync(file, before);
  const ranked = JSON.parse(
    suggestCommand([file, '--action', '{"do":"key","code":"Tab"}', '--json']).output,
  ).suggestions;

  await page.getByRole('radio', { name: 'Accidents' }).check();
  await page.getByRole('button', { name: 'Suggest a chord…' }).click();
  await page.getByLabel('Does').selectOption('key');
  await page.getByLabel('Key', { exact: true }).fill('Tab');
  await page.getByRole('option', { name: 'Tab', exact: true }).first().click();

  const list = page.getByRole('listbox', { name: 'Suggested chords' });
  await expect(list.getByRole('option')).toHaveCount(10);
  expect(await accessibilityFaults(page)).toEqual([]);
  await list.focus();
  for (const at of [0, 1]) {
    await page.keyboard.press('ArrowDown');
    const { keys, missesPer1000Uses } = ranked[at];
    const row = list.getByRole('option', { selected: true });
    await expect(row).toContainText(`about ${Math.round(missesPer1000Uses)} misses in 1,000 uses`);
    const lit = page.locator('[data-drawing][data-lit=true]');
    await expect
      .poll(() => lit.evaluateAll((all) => all.map((one) => one.getAttribute('data-drawing')).sort()))
      .toEqual([...keys].sort());
  }
  await page.keyboard.press('Enter');
  await expect(page.getByText(/gives Tab\./)).toBeVisible();

  const after = readExport(await exported());
  const { id: _, ...chord } = ranked[1].chord;
  expect(after.chords?.at(-1)).toMatchObject(chord);
  expect(after.chords?.length).toBe((readExport(before).chords?.length ?? 0) + 1);
  await page.getByRole('button', { name: /^Undo: Make chord Tab/ }).click();
  expect(await exported()).toBe(before);
});
