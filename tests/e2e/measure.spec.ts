import { expect, type Page, test } from '@playwright/test';
import { accessibilityFaults, download } from './design-desk.ts';

const TEXT =
  'the harbour pilot keeps a small book in which she writes what the tide did each morning. most pages say the same thing in other words, but once in a while there is a line that nobody expected, and then the water goes out again much faster than any of the charts would have it. so she sits down and writes that too, in ink and with the hour beside it.';

/** Key events as a keyboard would send them, at even gaps of 150 ms, each key down for 90 ms. */
async function typeWithTimes(page: Page) {
  await page.getByRole('textbox', { name: 'Type here' }).evaluate((field, typed) => {
    const codes: Readonly<Record<string, string>> = { ' ': 'Space', '.': 'Period', ',': 'Comma' };
    const fire = (type: string, code: string, key: string, ms: number) => {
      const event = new KeyboardEvent(type, { code, key, bubbles: true, cancelable: true });
      Object.defineProperty(event, 'timeStamp', { value: ms });
      field.dispatchEvent(event);
    };
    [...typed].forEach((char, at) => {
      const code = codes[char] ?? `Key${char.toUpperCase()}`;
      // A little uneven, as hands are, and the same every time.
      const down = 10_000 + at * 150 + ((at * 7919) % 41);
      fire('keydown', code, char, down);
      fire('keyup', code, char, down + 80 + ((at * 104729) % 23));
    });
  }, TEXT);
}

async function makeChord(page: Page, spreadMs: number) {
  const names = await page.locator('kbd').allTextContents();
  await page.evaluate(
    ({ keys, spread }) => {
      const fire = (type: string, key: string, ms: number) => {
        const event = new KeyboardEvent(type, { code: `Key${key}`, key, bubbles: true, cancelable: true });
        Object.defineProperty(event, 'timeStamp', { value: ms });
        document.activeElement?.dispatchEvent(event);
      };
      const begin = 200_000;
      for (const [at, key] of keys.entries()) fire('keydown', key, begin + (spread * at) / (keys.length - 1));
      for (const key of keys) fire('keyup', key, begin + 200);
    },
    { keys: names, spread: spreadMs },
  );
}

test('a typist is measured, the fit is shown over the data and used, kept for the next visit, saved and deleted', async ({
  page,
}) => {
  await page.goto('./');
  await page.getByRole('listbox', { name: 'Keys' }).waitFor();
  await page.getByRole('radio', { name: 'Accidents' }).check();
  await page.getByRole('button', { name: 'Measure me…' }).click();
  await typeWithTimes(page);
  await expect(page.getByText(`${TEXT.length} of 300 keystrokes`)).toBeVisible();
  expect(await accessibilityFaults(page)).toEqual([]);
  // What has been typed does not go without being asked for.
  await page.keyboard.press('Escape');
  await expect(page.getByText(`So far there are ${TEXT.length} keystrokes and 0 chords.`)).toBeVisible();
  await page.getByRole('button', { name: 'Go on' }).click();
  await page.getByRole('button', { name: 'On to the chords' }).click();
  for (let made = 0; made < 20; made++) {
    await expect(page.getByText(`${made + 1} of 20`)).toBeVisible();
    await makeChord(page, 12 + made * 2);
  }

  const dialog = page.getByRole('dialog', { name: 'Your own figures' });
  // Gaps of some 150 ms from press to press, and pairs as practised as these are faster than any; 80 to 102 ms down.
  await expect(dialog.getByText(/^1[4-7]\d ms/)).toBeVisible();
  await expect(dialog.getByText(/^[89]\d ms/)).toBeVisible();
  await expect(dialog.getByRole('figure')).toHaveCount(3);
  expect(await accessibilityFaults(page)).toEqual([]);
  const saved = JSON.parse(
    await download(page, () => dialog.getByRole('button', { name: 'Save as a file' }).click()),
  );
  expect(saved.chords).toHaveLength(20);
  expect(saved.dwells).toHaveLength(TEXT.length);
  const times = saved.intervals.map(({ ms }: { ms: number }) => ms);
  expect(times).toEqual(times.toSorted((one: number, other: number) => one - other));
  await dialog.getByRole('button', { name: 'Use them for estimates' }).click();
  await expect(page.getByLabel('Typist')).toHaveValue('measured');

  await page.reload();
  await page.getByRole('radio', { name: 'Accidents' }).check();
  await expect(page.getByLabel('Typist')).toHaveValue('measured');
  await page.getByRole('button', { name: 'My own figures…' }).click();
  await page.getByRole('button', { name: 'Delete my figures' }).click();
  await expect(page.getByRole('button', { name: 'Measure me…' })).toBeVisible();
  await expect(page.getByLabel('Typist')).toHaveValue('average');
  await page.reload();
  await page.getByRole('radio', { name: 'Accidents' }).check();
  await expect(page.getByRole('button', { name: 'Measure me…' })).toBeVisible();
});
