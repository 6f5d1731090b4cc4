import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import type { Keymap } from '../../src/core/keymap/types.ts';
import { plainNumber } from '../../src/core/typist/uncertainty.ts';
import { accessibilityFaults, download, key, readExport } from './design-desk.ts';
import { importFile, openPage } from './keeping.ts';

const WPM = 75;
const HOME = ['L22', 'L23', 'L24', 'L25', 'R22', 'R23', 'R24', 'R25'];
/** What the little finger of the right hand types there is no letter. */
const LETTERS = HOME.slice(0, -1);

/** The demonstration of 36 keys with its home row laid bare: modifiers held on letters by whatever is pressed inside. */
function bareHomeRow(): Keymap {
  const keymap: Keymap = JSON.parse(readFileSync('demo-layouts/beacon-log.json', 'utf8'));
  const [base, ...rest] = keymap.layers;
  if (base === undefined) throw new Error('The demonstration has no layers.');
  const places = Object.entries(base.places).map(([id, { tap, hold, ...timing }]) => {
    const actions = { ...(tap && { tap }), ...(hold && { hold }) };
    return [id, HOME.includes(id) ? actions : { ...actions, ...timing }] as const;
  });
  return {
    ...keymap,
    name: 'Bare home row',
    timing: { holdAfterMs: 200, holdBy: 'press-inside' },
    layers: [{ ...base, places: Object.fromEntries(places) }, ...rest],
  };
}

async function openAccidents(page: Page): Promise<void> {
  await openPage(page);
  await importFile(page, 'bare.json', JSON.stringify(bareHomeRow()));
  await expect(page.getByRole('textbox', { name: 'Name of the design' })).toHaveValue('Bare home row');
  await page.getByRole('radio', { name: 'Accidents' }).check();
  await page.getByRole('combobox', { name: 'Typist' }).selectOption('exact');
  const speed = page.getByRole('spinbutton', { name: 'Speed' });
  await speed.fill(String(WPM));
  await speed.press('Enter');
}

interface Printed {
  readonly chords: readonly { readonly misfiresPer1000Words: number | null }[];
  readonly holds: readonly {
    readonly key: string;
    readonly layer: string;
    readonly misfiresPer1000Words: number;
  }[];
}

/** What the command line says of a design for the same text and speed. */
function printed(keymap: Keymap, file: string): Printed {
  const { writeFileSync } = process.getBuiltinModule('node:fs');
  writeFileSync(file, JSON.stringify(keymap));
  const args = [
    'src/build/handful.mjs',
    'accidents',
    file,
    '--text',
    'english',
    '--wpm',
    String(WPM),
    '--json',
  ];
  return JSON.parse(execFileSync(process.execPath, args, { encoding: 'utf8' }));
}

function totalOf({ chords, holds }: Printed): number {
  return [...chords, ...holds].reduce(
    (sum, { misfiresPer1000Words }) => sum + (misfiresPer1000Words ?? 0),
    0,
  );
}

const total = (page: Page) => page.getByTestId('total-misfires');

async function exported(page: Page): Promise<Keymap> {
  await page.getByRole('button', { name: 'Export', exact: true }).click();
  const dialog = page.getByRole('dialog', { name: 'Export' });
  const text = await download(page, () => dialog.getByRole('button', { name: 'Download' }).first().click());
  await page.keyboard.press('Escape');
  return readExport(text);
}

/** Whatever a worker works out may take its time on a busy machine. */
const patiently = expect.configure({ timeout: 20_000 });

test('modifiers on a bare home row: the misfires, as the command line has them; protections taken, and they fall', async ({
  page,
}, info) => {
  await openAccidents(page);
  const before = printed(bareHomeRow(), info.outputPath('before.json'));
  expect(totalOf(before)).toBeGreaterThan(100);
  await patiently(total(page)).toHaveText(plainNumber(totalOf(before)));

  const worst = before.holds
    .filter(({ key, layer }) => layer === 'letters' && LETTERS.includes(key))
    .toSorted((one, other) => other.misfiresPer1000Words - one.misfiresPer1000Words)[0];
  const row = page.locator(`[data-accident="hold letters ${worst?.key}"]`);
  await expect(row).toContainText(`about ${plainNumber(worst?.misfiresPer1000Words ?? 0)} (between`);
  await row.focus();
  await expect(page.locator(`[data-drawing=${worst?.key}]`)).toHaveAttribute('data-lit', 'true');

  const most = page.getByRole('spinbutton', { name: /may misfire/ });
  await most.fill('5');
  await most.press('Enter');
  await page.getByRole('button', { name: 'Find the fewest changes' }).click();
  const take = page.getByRole('button', { name: /^Make these changes on \d keys$/ });
  await patiently(
    page.getByText(/^With \d+ changes on \d keys, hold\/tap letters misfire about [\d.]+ times/),
  ).toBeVisible();
  await take.click();

  const after = await exported(page);
  const said = printed(after, info.outputPath('after.json'));
  const ofLetters = said.holds.filter(({ key, layer }) => layer === 'letters' && LETTERS.includes(key));
  expect(ofLetters.reduce((sum, each) => sum + each.misfiresPer1000Words, 0)).toBeLessThanOrEqual(5);
  await patiently(total(page)).toHaveText(plainNumber(totalOf(said)));
  await patiently(page.getByText(/nothing need change/)).toBeVisible();

  await page.getByRole('button', { name: /^Undo: Protect/ }).click();
  await patiently(total(page)).toHaveText(plainNumber(totalOf(before)));
});

test('a simulation shows how far it is, can be broken off, and holds the estimates against its intervals', async ({
  page,
}) => {
  await openAccidents(page);
  await page
    .locator('summary')
    .filter({ hasText: /^Simulate$/ })
    .click();
  const words = page.getByRole('combobox', { name: 'Type' });
  const start = page.getByRole('button', { name: 'Simulate' });
  await words.selectOption('1000000');
  await start.click();
  await expect(page.getByRole('progressbar', { name: 'Words typed' })).toBeVisible();
  await page.getByRole('button', { name: 'Cancel' }).click();
  await expect(page.getByRole('progressbar')).toHaveCount(0);
  await words.selectOption('10000');
  await page.getByRole('spinbutton', { name: 'Seed' }).fill('7');
  await page.getByRole('spinbutton', { name: 'Seed' }).press('Enter');
  await start.click();
  await patiently(page.getByText(/10,000 words by 100 typists, seed 7/)).toBeVisible();
  const table = page.getByRole('table').and(page.locator('[data-simulated="misfires"]'));
  await expect(
    table.getByRole('row', { name: /a to Left Control [\d.]+(, outside)? [\d.]+ \([\d.]+ to [\d.]+\)/ }),
  ).toBeVisible();
  await expect(page.locator('[data-simulated="misses"]')).toBeVisible();
  await expect(page.locator('[data-simulated="delay"]')).toBeVisible();
});

test('the cards weigh misfires against misses while sliding, and each rule and protection is a press away', async ({
  page,
}) => {
  await openAccidents(page);
  await key(page, 'L25').focus();
  await page.keyboard.press('Enter');
  const card = page.getByRole('dialog', { name: 'Left little home' });
  await card.getByRole('button', { name: 'Letters, hold: Left Control' }).click();
  await card.getByText('Timing of this key').click();
  const curve = card.getByRole('img', { name: /^At 200 ms: misfires about \d/ });
  await patiently(curve).toBeVisible();
  await card.getByRole('slider', { name: 'Hold after' }).focus();
  await page.keyboard.down('ArrowRight');
  await expect(card.getByRole('img', { name: /^At 205 ms/ })).toBeVisible();
  const undo = page.getByRole('button', { name: /^Undo: / });
  await expect(undo).toHaveCount(0);
  await page.keyboard.up('ArrowRight');
  await expect(undo).toHaveCount(1);

  const rule = card.getByRole('button', { name: /^a tap inside, 150 ms of quiet before: misfires / });
  await rule.click();
  await patiently(rule).toHaveAttribute('aria-pressed', 'true');
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`axe finds nothing in the accidents and their cards, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await openAccidents(page);
    await patiently(total(page)).toBeVisible();
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.locator('[data-chord=save]').focus();
    await page.keyboard.press('Enter');
    await patiently(page.getByRole('dialog').getByRole('img', { name: /^At 65 ms/ })).toBeVisible();
    expect(await accessibilityFaults(page)).toEqual([]);
  });
}
