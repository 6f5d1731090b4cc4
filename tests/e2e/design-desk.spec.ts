import { expect, type Page, test } from '@playwright/test';
import { writeKeymap } from '../../src/core/keymap/write.ts';
import {
  accessibilityFaults,
  chip,
  clearKeys,
  download,
  drag,
  half,
  key,
  LOWEST_ROW,
  missingFinding,
  moreFindings,
  readExport,
  tabTo,
} from './design-desk.ts';

/** A fresh profile, and a new 36-key design whose signs have been taken off its second layer. */
async function openNewDesign(page: Page, press: (button: string) => Promise<void>) {
  await page.goto('./');
  await page.getByRole('listbox', { name: 'Keys' }).waitFor();
  await press('Designs');
  await press('New design…');
  await press('Make the design');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(key(page, 'L21')).toBeVisible();
  await page.getByRole('button', { name: /^1 Numbers/ }).click();
  await clearKeys(page, LOWEST_ROW);
  await page.getByRole('button', { name: /^0 Base/ }).click();
  await key(page, 'L22').focus();
}

test('with the pointer: needs onto the board, a chord of three, a missing need placed, the keymap taken away', async ({
  page,
}) => {
  const press = async (name: string) => {
    await page.getByRole('button', { name, exact: true }).or(page.getByRole('menuitem', { name })).click();
  };
  await openNewDesign(page, press);
  await moreFindings(page).click();
  await page.getByRole('button', { name: /^1 Numbers/ }).click();

  for (const [need, place] of [
    ['[', 'L33'],
    [']', 'L32'],
    ['-', 'R32'],
  ] as const) {
    await expect(missingFinding(page, need)).toBeVisible();
    await drag(page, chip(page, `need ${need}`), half(page, place, 'tap'));
    await expect(missingFinding(page, need)).toHaveCount(0);
  }

  await page.getByRole('button', { name: /^0 Base/ }).click();
  for (const id of ['L24', 'L23', 'L22']) await key(page, id).click({ modifiers: ['Shift'] });
  await page
    .getByRole('region', { name: 'Selected keys' })
    .getByRole('button', { name: 'Make chord' })
    .click();
  const card = page.getByRole('dialog', { name: /New chord of 3 keys/ });
  await card.getByLabel('Does').selectOption('key');
  await card.getByLabel('Key', { exact: true }).fill('Tab');
  await card.getByRole('option', { name: 'Tab', exact: true }).first().click();
  await card.getByRole('slider', { name: 'Window' }).fill('60');
  await card.getByLabel('Window, number').fill('45');
  await card.getByLabel('Window, number').press('Enter');
  await card.getByRole('button', { name: 'Make chord' }).click();
  await page.keyboard.press('Escape');

  await page.getByRole('button', { name: /^1 Numbers/ }).click();
  await expect(chip(page, 'need `')).toHaveAttribute('data-status', 'missing');
  await expect(missingFinding(page, '`')).toBeVisible();
  await drag(page, chip(page, 'need `'), half(page, 'L34', 'tap'));
  await expect(chip(page, 'need `')).toHaveAttribute('data-status', 'reached');
  await expect(missingFinding(page, '`')).toHaveCount(0);

  await press('Export');
  const text = await download(page, () =>
    page.getByRole('button', { name: 'Download: Neutral keymap' }).click(),
  );
  const keymap = readExport(text);
  expect(writeKeymap(keymap)).toBe(text);
  expect(keymap.chords).toMatchObject([
    { keys: ['L24', 'L23', 'L22'], windowMs: 45, action: { do: 'key', code: 'Tab' } },
  ]);
  const places = keymap.layers[1]?.places;
  expect(places).toMatchObject({
    L33: { tap: { do: 'char', char: '[' } },
    L32: { tap: { do: 'char', char: ']' } },
    R32: { tap: { do: 'char', char: '-' } },
    L34: { tap: { do: 'char', char: '`' } },
  });
});

test('with the keyboard alone: the same job', async ({ page }) => {
  const type = async (...keys: string[]) => {
    for (const one of keys) await page.keyboard.press(one);
  };
  const press = async (name: string) => {
    const item = page.getByRole('menuitem', { name });
    if ((await item.count()) === 0) await tabTo(page, page.getByRole('button', { name, exact: true }));
    await type('Enter');
  };
  await openNewDesign(page, press);
  const search = page.getByRole('searchbox', { name: 'Search needs' });
  const onBoard = page.locator('[data-key]');
  const showLayer = async (name: RegExp) => {
    await tabTo(page, page.getByRole('button', { name }));
    await type('Enter');
  };

  /** Finds a need, picks it up, walks from where the board has its focus, and puts it down. */
  const place = async (need: string, walk: readonly string[]) => {
    await tabTo(page, search);
    await type('ControlOrMeta+a');
    await page.keyboard.type(need);
    await expect(chip(page, `need ${need}`)).toBeVisible();
    await tabTo(page, chip(page, `need ${need}`));
    await type('Enter');
    await tabTo(page, onBoard);
    await type(...walk, 'Enter');
    await expect(missingFinding(page, need)).toHaveCount(0);
  };

  await showLayer(/^1 Numbers/);
  await tabTo(page, onBoard);
  await type('ArrowDown');
  await place('[', []);
  await place(']', ['ArrowLeft']);
  await place('-', ['ArrowLeft']);

  await showLayer(/^0 Base/);
  await tabTo(page, onBoard);
  await type('ArrowUp', 'Space', 'ArrowRight', 'Space', 'ArrowRight', 'Space');
  await tabTo(
    page,
    page.getByRole('region', { name: 'Selected keys' }).getByRole('button', { name: 'Make chord' }),
  );
  await type('Enter');
  const card = page.getByRole('dialog', { name: /New chord of 3 keys/ });
  await tabTo(page, card.getByLabel('Does'));
  await page.keyboard.type('a key');
  await tabTo(page, card.getByLabel('Key', { exact: true }));
  await page.keyboard.type('Tab');
  await type('Enter');
  await tabTo(page, card.getByLabel('Window, number'));
  await type('ControlOrMeta+a');
  await page.keyboard.type('45');
  await type('Enter');
  await tabTo(page, card.getByRole('button', { name: 'Make chord' }));
  await type('Enter', 'Escape');

  await tabTo(page, moreFindings(page));
  await type('Enter');
  await showLayer(/^1 Numbers/);
  await expect(missingFinding(page, '`')).toBeVisible();
  await tabTo(page, onBoard);
  await type('ArrowDown');
  await place('`', ['ArrowRight', 'ArrowRight', 'ArrowRight']);

  await press('Export');
  await tabTo(page, page.getByRole('button', { name: 'Download: Neutral keymap' }));
  const text = await download(page, () => type('Enter'));
  const keymap = readExport(text);
  expect(keymap.chords).toMatchObject([{ windowMs: 45, action: { do: 'key', code: 'Tab' } }]);
  const typed = Object.values(keymap.layers[1]?.places ?? {}).map(({ tap }) => tap);
  for (const char of ['[', ']', '-', '`']) expect(typed).toContainEqual({ do: 'char', char });
});

test('axe finds nothing on the desk, light and dark, with a card open and without', async ({ page }) => {
  await page.goto('./');
  await key(page, 'L21').waitFor();
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    expect(await accessibilityFaults(page)).toEqual([]);
    await key(page, 'L21').click();
    await page.getByRole('dialog').first().waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.keyboard.press('Escape');
  }
});

test('on a narrow page one half of the board is looked at, and the other is a press away', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('./');
  const left = key(page, 'L21');
  const right = key(page, 'R21');
  await expect(left).toBeInViewport();
  await expect(right).not.toBeInViewport();
  expect((await left.boundingBox())?.width).toBeGreaterThan(40);
  await page.getByRole('button', { name: 'Right half' }).click();
  await expect(right).toBeInViewport();
  await expect(left).not.toBeInViewport();
  await page.getByRole('button', { name: 'Show the whole board' }).click();
  await expect(left).toBeInViewport();
  await expect(right).toBeInViewport();
});
