import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { type CheckStep, checkPlan } from '../../src/core/check/steps.ts';
import { hostFromTable } from '../../src/core/host/host-from-table.ts';
import { usHost } from '../../src/core/host/us.ts';
import { readKeymap } from '../../src/core/keymap/read.ts';
import type { Keymap } from '../../src/core/keymap/types.ts';
import { writeKeymap } from '../../src/core/keymap/write.ts';
import { type Faults, hear } from '../core/check/faulty-board.ts';
import { shippedTable } from '../core/host/shipped-tables.ts';
import { answerProbes } from './computer-presses.ts';
import { accessibilityFaults, download } from './design-desk.ts';
import { importFile, openPage } from './keeping.ts';

/** The demonstration design with its base layer and its chords alone: enough to check, and not too much for a test. */
function lettersAlone(): Keymap {
  const read = readKeymap(readFileSync('demo-layouts/beacon-log.json', 'utf8'));
  if (!read.ok) throw new Error('the demo cannot be read');
  const { layers, chords = [], ...rest } = read.value;
  const [base] = layers;
  if (base === undefined) throw new Error('no base layer');
  const places = Object.fromEntries(
    Object.entries(base.places).flatMap(([key, { tap }]) => (tap === undefined ? [] : [[key, { tap }]])),
  );
  const live = chords.flatMap(({ layers: on, ...chord }) =>
    (on === undefined || on.includes(base.id)) && chord.action.do !== 'layer' ? [chord] : [],
  );
  return { ...rest, name: 'Letters alone', layers: [{ ...base, places }], chords: live };
}

const design = lettersAlone();
const steps = new Map(checkPlan(design, usHost).steps.map((step) => [step.id, step]));
const pressed = [...steps.values()].filter(({ sight }) => sight.kind === 'seen');
/** On the made board, two keys are swapped, and the keys of every chord come 90 ms apart. */
const FAULTS: Faults = { wiredAs: { L23: 'R22', R22: 'L23' }, chordSpreadMs: 90 };

const stage = (page: Page) => page.getByRole('region', { name: 'Press this' });
/** What is asked for, and for which time, read at one moment; nothing when it is over. */
const asked = (page: Page) =>
  page.evaluate(() => {
    const at = document.querySelector('[data-step]');
    return at === null ? ['', ''] : [at.getAttribute('data-step'), at.getAttribute('data-try')];
  });

/** What a browser hears of a step on that board, and nothing of what the fingers did. */
async function play(page: Page, step: CheckStep, faults: Faults) {
  await page.evaluate(
    (events) => {
      const start = Math.max(performance.now(), Number(document.body.dataset.lastPress ?? 0)) + 100;
      for (const { kind, code, key, timeMs } of events) {
        const type = kind === 'down' ? 'keydown' : 'keyup';
        const event = new KeyboardEvent(type, { code, key, bubbles: true, cancelable: true });
        Object.defineProperty(event, 'timeStamp', { value: start + timeMs });
        window.dispatchEvent(event);
        document.body.dataset.lastPress = String(start + timeMs);
      }
    },
    [...hear(design, usHost, step, faults)],
  );
}

/** Presses what is asked for, and waits until the page asks for something else, or for the same once more. */
async function pressAsked(page: Page, faults: Faults) {
  const before = await asked(page);
  const step = steps.get(before[0] ?? '');
  if (step === undefined) throw new Error(`no step ${before[0]}`);
  await play(page, step, faults);
  await expect.poll(async () => (await asked(page)).join(), { intervals: [40] }).not.toBe(before.join());
}

/** Begins, and first presses what tells that the computer is on the design's layout: this browser cannot say so itself. */
async function begin(page: Page) {
  const button = page.getByRole('button', { name: 'Begin' });
  await button.click();
  await answerProbes(page, usHost);
  await expect(page.getByRole('region', { name: 'Check', exact: true })).toContainText('is on English (US)');
  await button.click();
  await expect(stage(page)).toBeVisible();
}

async function pressAll(page: Page, faults: Faults, most: number) {
  for (let press = 0; press < most && (await stage(page).count()) > 0; press++)
    await pressAsked(page, faults);
}

test('two keys swapped and chords that are too slow: stopped, taken up again, and read in the report', async ({
  page,
}) => {
  await openPage(page);
  await importFile(page, 'letters.json', writeKeymap(design));
  await page.getByRole('radio', { name: 'Check', exact: true }).check();
  await expect(page.getByRole('region', { name: 'Check', exact: true })).toContainText('will be asked for');
  expect(await accessibilityFaults(page)).toEqual([]);
  await begin(page);
  await pressAll(page, FAULTS, 10);
  await page.getByRole('button', { name: 'Stop', exact: true }).click();

  await page.reload();
  await page.getByRole('radio', { name: 'Check', exact: true }).check();
  await expect(page.getByRole('region', { name: 'Check', exact: true })).toContainText(
    new RegExp(`\\d+ of ${pressed.length} pressed`),
  );
  await page.getByRole('button', { name: 'Go on' }).click();
  await pressAll(page, FAULTS, 2 * pressed.length);

  const report = page.getByRole('region', { name: 'Report' });
  await expect(report.locator('[data-fault=swapped]')).toContainText(/each give what the other should/);
  await expect(report.locator('[data-fault=chord-missed]').first()).toContainText(
    /did not fire.*window \d+ ms/,
  );
  await expect(report.locator('[data-fault]')).toHaveCount(1 + (design.chords?.length ?? 0));
  expect(await accessibilityFaults(page)).toEqual([]);

  const json = JSON.parse(
    await download(page, () => page.getByRole('button', { name: 'Save as JSON' }).click()),
  );
  expect(json.counts.wrong).toBe(2 + (design.chords?.length ?? 0));
  const text = await download(page, () => page.getByRole('button', { name: 'Save as Markdown' }).click());
  expect(text).toContain('## What is likely wrong');
});

test('Escape, held for a second, gets out', async ({ page }) => {
  await openPage(page);
  await page.getByRole('radio', { name: 'Check', exact: true }).check();
  await begin(page);
  await page.keyboard.down('Escape');
  const goOn = page.getByRole('button', { name: 'Go on' });
  await expect(goOn).toBeFocused();
  await page.keyboard.up('Escape');
  // The page has its keys again: the buttons are reached, and it goes on, without a pointer.
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'Nothing comes' })).toBeFocused();
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Enter');
  await expect(stage(page)).toBeVisible();
});

test('a computer on another layout is told before anything is pressed, and a few presses say which it is', async ({
  page,
}) => {
  // As a German computer would have it: the browser's own map, and then what its keys give.
  await page.addInitScript(() => {
    const map = new Map([
      ['KeyY', 'z'],
      ['KeyZ', 'y'],
    ]);
    Object.defineProperty(navigator, 'keyboard', { value: { getLayoutMap: () => Promise.resolve(map) } });
  });
  await openPage(page);
  await page.getByRole('radio', { name: 'Check', exact: true }).check();
  const check = page.getByRole('region', { name: 'Check', exact: true });
  await expect(check.getByRole('alert')).toContainText('is not on English (US)');

  const computer = page.getByRole('region', { name: 'This computer' });
  await computer.getByRole('button', { name: 'Look closer' }).click();
  const german = hostFromTable(shippedTable('de'));
  await answerProbes(page, german);
  await expect(check.getByRole('alert')).toContainText(/on (one of these.*)?German.*for English \(US\)/);
});
