import { readFileSync } from 'node:fs';
import { expect, type Locator, type Page } from '@playwright/test';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { readKeymap } from '../../src/core/keymap/read.ts';
import type { Keymap } from '../../src/core/keymap/types.ts';
import { axeFaults } from './axe.ts';

/** The chip of a need, a layer key or a modifier, by what it stands for: "need [". */
export const chip = (page: Page, id: string) => page.locator(`[data-chip=${JSON.stringify(id)}]`);

/** A key of the board. */
export const key = (page: Page, id: string) => page.locator(`[data-key=${JSON.stringify(id)}]`);

/** Half of a key as a place to drop on. */
export const half = (page: Page, id: string, side: 'tap' | 'hold') =>
  key(page, id).locator(`[data-side=${side}]`);

/** Takes what keys have on the layer in front off them: a new design has a place for all that it is asked for. */
export async function clearKeys(page: Page, ids: readonly string[]) {
  for (const id of ids) {
    await key(page, id).focus();
    await page.keyboard.press('Delete');
  }
}

/** The keys of the lowest row of fingers on a board of three. */
export const LOWEST_ROW = ['L', 'R'].flatMap((hand) => [1, 2, 3, 4, 5].map((column) => `${hand}3${column}`));

/** The findings that say that a need is missing. */
export const missingFinding = (page: Page, need: string) =>
  page.locator('[data-rule=need-missing]').filter({ hasText: `“${need}”` });

/** What opens the findings that are folded away behind a few like them. */
export const moreFindings = (page: Page) =>
  page.locator('summary').filter({ hasText: /^and \d+ more like these$/ });

/** Where something is once it has come to rest: a page that is still being laid out would be aimed at beside the mark. */
async function settledBox(target: Locator) {
  let before = await target.boundingBox();
  for (let looks = 0; looks < 50; looks++) {
    await target.page().waitForTimeout(100);
    const now = await target.boundingBox();
    if (now !== null && JSON.stringify(now) === JSON.stringify(before)) return now;
    before = now;
  }
  throw new Error(`${target} does not come to rest.`);
}

/** Moves the real pointer from one thing to another with the button down, as a hand would. */
export async function drag(page: Page, from: Locator, to: Locator) {
  await from.scrollIntoViewIfNeeded();
  const start = await settledBox(from);
  const end = await settledBox(to);
  await page.mouse.move(start.x + start.width / 2, start.y + start.height / 2);
  await page.mouse.down();
  await page.mouse.move(start.x + start.width / 2 + 12, start.y + start.height / 2 + 6, { steps: 4 });
  await page.mouse.move(end.x + end.width / 2 + 1, end.y + end.height / 2, { steps: 12 });
  await page.mouse.up();
}

/** The text of a file that the page hands out. */
export async function download(page: Page, press: () => Promise<void>): Promise<string> {
  const waiting = page.waitForEvent('download');
  await press();
  const path = await (await waiting).path();
  return readFileSync(path, 'utf8');
}

/** Reads an exported keymap: it passes the published JSON Schema (by Ajv) and the reader. */
export function readExport(text: string): Keymap {
  const schema = JSON.parse(readFileSync('public/neutral-keymap.schema.json', 'utf8'));
  const validate = new Ajv2020({ strict: false }).compile(schema);
  expect(validate(JSON.parse(text)), JSON.stringify(validate.errors)).toBe(true);
  const read = readKeymap(text);
  if (!read.ok) throw new Error(read.problem.map(({ sentence }) => sentence).join(' '));
  return read.value;
}

/** Presses Tab until something is in focus, as somebody without a pointer does. */
export async function tabTo(page: Page, target: Locator, most = 80): Promise<void> {
  for (let presses = 0; presses < most; presses++) {
    if (await target.evaluateAll((all) => all.some((element) => element === document.activeElement))) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab does not lead to ${target} within ${most} presses.`);
}

/** What axe-core finds wrong on the page. */
export function accessibilityFaults(page: Page): Promise<readonly string[]> {
  return axeFaults(page);
}
