import { expect, type Page } from '@playwright/test';
import type { HostLayout } from '../../src/core/host/host-layout.ts';
import { keyOfOutput } from '../../src/core/host/key-of-output.ts';
import { CODES } from '../../src/core/keymap/codes.ts';

/** Presses all that the page asks for, as a computer with that layout reads it. */
export async function answerProbes(page: Page, host: HostLayout) {
  await expect(page.locator('[data-probe]')).toBeVisible();
  for (let press = 0; press < 12 && (await answerProbe(page, host)); press++);
}

/** Presses the key that the page asks for, as a computer with that layout reads it; false when it asks for none. */
async function answerProbe(page: Page, host: HostLayout): Promise<boolean> {
  const asked = page.locator('[data-probe]');
  if ((await asked.count()) === 0) return false;
  const text = (await asked.getAttribute('data-probe')) ?? '';
  const [name = '', ...around] = text.split(' ').reverse();
  const code = CODES.find((one) => one === name);
  if (code === undefined) throw new Error(text);
  const shift = around.includes('ShiftLeft');
  const level3 = around.includes('AltRight') && host.level3 !== null;
  const key = keyOfOutput(host.outputOf(code, { shift, level3, caps: false })) ?? 'Unidentified';
  await page.evaluate(
    ({ codes, key: last }) => {
      const send = (type: string, one: string, name: string) =>
        window.dispatchEvent(
          new KeyboardEvent(type, { code: one, key: name, bubbles: true, cancelable: true }),
        );
      for (const [at, one] of codes.entries()) send('keydown', one, at === codes.length - 1 ? last : one);
      for (const one of codes.toReversed()) send('keyup', one, one);
    },
    { codes: [...around, code], key },
  );
  await expect
    .poll(() => page.evaluate(() => document.querySelector('[data-probe]')?.getAttribute('data-probe') ?? ''))
    .not.toBe(text);
  return true;
}
