import { expect, type Locator, type Page, test } from '@playwright/test';
import type { Keymap } from '../../src/core/keymap/types.ts';
import { accessibilityFaults, download, key, readExport, tabTo } from './design-desk.ts';
import { choose, openPage } from './keeping.ts';
import { pdfLineLengths, pdfPages } from './pdf-lines.ts';

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
const bound = (page: Page) => page.getByRole('region', { name: 'What is bound', exact: true });
const heading = (page: Page) => page.getByRole('heading', { level: 2 }).filter({ hasText: 'mm' });

async function openEditor(page: Page): Promise<void> {
  await openPage(page);
  await button(page, 'Change the board…').click();
  await expect(button(page, 'Back to the keys')).toBeVisible();
}

/** A number of a field by its label, finished with Enter. */
async function setNumber(page: Page, label: string, value: number): Promise<void> {
  const field = page.getByRole('spinbutton', { name: label });
  await field.fill(String(value));
  await field.press('Enter');
}

async function exported(page: Page): Promise<Keymap> {
  await button(page, 'Export').click();
  const text = await download(page, () => button(page, 'Download: Neutral keymap').click());
  await page.keyboard.press('Escape');
  return readExport(text);
}

async function middle(thing: Locator): Promise<{ x: number; y: number }> {
  const box = await thing.boundingBox();
  if (box === null) throw new Error(`${thing} is not there`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

test('from 36 keys to 40 with splayed columns, and every binding keeps its place', async ({ page }) => {
  await openPage(page);
  const before = await exported(page);
  await button(page, 'Change the board…').click();
  await button(page, 'Add an outer column').click();
  await setNumber(page, 'Below home row', 0);
  await setNumber(page, 'Splay, outwards, number', 16);
  await button(page, /^Column 3 from the middle, middle finger/).click();
  await setNumber(page, 'Splay, outwards, number', 6);
  await expect(heading(page)).toContainText('40 keys');
  await expect(bound(page)).toContainText('All 127 bindings keep their place.');
  await expect(page.getByText('No caps overlap, and every finger reaches its keys.')).toBeVisible();
  await button(page, 'Use this board').click();

  await expect(page.locator('[data-key]')).toHaveCount(40);
  const after = await exported(page);
  expect(after.layers).toEqual(before.layers);
  expect(after.chords).toEqual(before.chords);
  expect(after.board.madeFrom?.columns.map(({ keys, splayDeg }) => [keys, splayDeg])).toEqual([
    ...(before.board.madeFrom?.columns ?? []).map(({ keys, splayDeg }, at) => [
      keys,
      at === 2 ? 6 : splayDeg,
    ]),
    [2, 16],
  ]);
  // One step of the design.
  await page.keyboard.press('Control+z');
  await expect(page.locator('[data-key]')).toHaveCount(36);
  expect(await exported(page)).toEqual(before);
});

test('what loses its place is told before it does, and comes back with one undo', async ({ page }) => {
  await openEditor(page);
  await page.getByRole('combobox', { name: 'Begin anew with a ready board' }).selectOption('34 keys, split');
  await expect(bound(page)).toContainText('lose their place');
  await expect(bound(page).getByRole('listitem').first()).toContainText('left outer thumb – Letters: Escape');
  await button(page, 'Use this board').click();
  const dialog = page.getByRole('dialog', { name: 'Some of it has no place on this board' });
  await expect(dialog.getByRole('listitem').first()).toContainText('left outer thumb – Letters: Escape');
  await dialog.getByRole('button', { name: 'Go on with the board' }).click();
  await expect(heading(page)).toContainText('34 keys');
  await button(page, 'Use this board').click();
  await dialog.getByRole('button', { name: 'Use it and let these go' }).click();
  await expect(page.locator('[data-key]')).toHaveCount(34);
  await page.keyboard.press('Control+z');
  await expect(key(page, 'LT3')).toHaveAttribute('aria-label', /Escape/);
});

test('a key is dragged and falls into place; Escape leaves no trace; fingers are painted across keys', async ({
  page,
}) => {
  await openEditor(page);
  const at = await middle(key(page, 'R35'));
  const label = (await key(page, 'R35').getAttribute('aria-label')) ?? '';
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x + 60, at.y + 50, { steps: 6 });
  await expect(key(page, 'R35')).not.toHaveAttribute('aria-label', label);
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await expect(key(page, 'R35')).toHaveAttribute('aria-label', label);
  await expect(button(page, 'Nothing to undo on this board')).toBeVisible();

  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x + 30, at.y + 40, { steps: 6 });
  await page.mouse.up();
  await expect(button(page, 'Undo: Move a key')).toBeVisible();
  await expect(page.getByText('2 keys are placed by hand.')).toBeVisible();

  await page.getByRole('radio', { name: 'Fingers' }).check();
  await page.getByRole('combobox', { name: 'Finger to paint' }).selectOption('Ring finger');
  const [from, to] = [await middle(key(page, 'R15')), await middle(key(page, 'R25'))];
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 6 });
  await page.mouse.up();
  await expect(button(page, 'Undo: Give 2 keys to the ring finger')).toBeVisible();
  await expect(key(page, 'L15')).toHaveAttribute('aria-label', /ring/);

  const handle = await middle(page.locator('[data-grip=half][data-hand=right]'));
  await page.mouse.move(handle.x, handle.y);
  await page.mouse.down();
  await page.mouse.move(handle.x + 40, handle.y, { steps: 4 });
  await page.mouse.up();
  await expect(button(page, 'Undo: Move a half')).toBeVisible();
  await expect(page.getByRole('spinbutton', { name: 'Gap between the halves, number' })).not.toHaveValue(
    '70',
  );
});

test('a new design goes on to its board, and what is done to it is there after the page is loaded again', async ({
  page,
}) => {
  await openPage(page);
  await choose(page, 'Designs', 'New design…');
  await page.getByRole('radio', { name: '36 keys, one piece' }).check();
  await button(page, 'Make it and shape the board…').click();
  await expect(heading(page)).toContainText('36 keys, one piece');
  await setNumber(page, 'Gap between the halves, number', 30);
  await expect(heading(page)).toContainText('36 keys, split');
  await page.reload();
  await button(page, 'Change the board…').click();
  await expect(page.getByRole('spinbutton', { name: 'Gap between the halves, number' })).toHaveValue('30');
  await button(page, 'Undo all').click();
  await expect(heading(page)).toContainText('36 keys, one piece');
  await page.keyboard.press('Control+z');
  await button(page, 'Use this board').click();
  await expect(button(page, 'Change the board…')).toBeVisible();
  expect((await exported(page)).board).toMatchObject({ name: '36 keys, split', madeFrom: { gapMm: 30 } });
});

test('all of it by keyboard: walk, move, turn, add, remove, give to a finger, undo', async ({ page }) => {
  await openEditor(page);
  await tabTo(page, page.locator('svg [data-key]:focus, svg [data-key]:focus-visible'));
  await page.keyboard.press('ArrowRight');
  const name = (await page.locator('[data-key]:focus').getAttribute('data-key')) ?? '';
  const focused = key(page, name);
  const before = (await focused.getAttribute('aria-label')) ?? '';
  await page.keyboard.press('Shift+ArrowUp');
  await page.keyboard.press('PageDown');
  await expect(focused).not.toHaveAttribute('aria-label', before);
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await expect(focused).toHaveAttribute('aria-label', before);
  await page.keyboard.press('Enter');
  await expect(page.locator('[data-key]')).toHaveCount(38);
  await page.keyboard.press('Digit3');
  await expect(button(page, 'Undo: Give a key to the middle finger')).toBeVisible();
  await page.keyboard.press('Delete');
  await expect(bound(page)).toContainText('lose their place');
  await expect(page.locator('[data-key]:focus')).toHaveCount(1);
});

test('a board is printed at its true size, on a page or a half on each', async ({ page }) => {
  await openEditor(page);
  await button(page, 'Print…').click();
  for (const [paper, width, pages] of [
    ['A4', 297, 1],
    ['US Letter', 279.4, 2],
  ] as const) {
    await page.getByRole('radio', { name: paper }).check();
    await expect(page.getByRole('dialog').getByRole('img')).toHaveCount(pages);
    const pdf = await page.pdf({ preferCSSPageSize: true });
    const sizes = pdfPages(pdf);
    expect(sizes).toHaveLength(pages);
    for (const size of sizes) expect(size.width).toBeCloseTo(width, 0);
    // The rule on each page: what a ruler laid on the paper would read.
    const lengths = pdfLineLengths(pdf);
    for (const length of lengths.slice(0, pages)) expect(Math.abs(length - 100)).toBeLessThan(0.05);
    expect(lengths[pages]).toBeLessThan(20);
  }
  const svg = await download(page, () => button(page, 'Save as SVG, page 1').click());
  expect(svg).toContain('width="279.4mm" height="215.9mm"');
});

test('axe finds nothing on the board editor and its dialogs, light and dark', async ({ page }) => {
  await openEditor(page);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    await key(page, 'R22').click();
    expect(await accessibilityFaults(page)).toEqual([]);
    await button(page, 'Print…').click();
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.keyboard.press('Escape');
  }
});
