import { expect, type Page, test } from '@playwright/test';
import { accessibilityFaults, tabTo } from './design-desk.ts';

/** A key of the keyboard at hand with when it goes down and comes up, ms. */
type Press = readonly [code: string, down: number, up: number];

async function openRehearse(page: Page) {
  await page.goto('./');
  await page.getByRole('listbox', { name: 'Keys' }).waitFor();
  await page.getByRole('radio', { name: 'Rehearse' }).check({ force: true });
  await page.getByRole('button', { name: 'Play the sample text' }).waitFor();
}

/**
 * Real key events with exact times: the debugging protocol's `timestamp` becomes the event's `timeStamp`, while a test
 * driver's own presses would land some milliseconds apart. All are on their way before the first is answered. The
 * browser blurs every time that it tells a page by up to a tenth of a millisecond, hence `about`.
 */
async function typeExactly(page: Page, presses: readonly Press[]) {
  const protocol = await page.context().newCDPSession(page);
  const start = (await page.evaluate(() => performance.timeOrigin + performance.now())) / 1000;
  const events = presses
    .flatMap(([code, down, up]) => [
      { type: 'rawKeyDown' as const, code, t: down },
      { type: 'keyUp' as const, code, t: up },
    ])
    .sort((one, other) => one.t - other.t);
  await Promise.all(
    events.map(({ type, code, t }) =>
      protocol.send('Input.dispatchKeyEvent', { type, code, key: code, timestamp: start + t / 1000 }),
    ),
  );
  await protocol.detach();
}

/** A duration as it is shown, a tenth of a millisecond more or less. */
const about = (value: number) =>
  `(?:${[value - 0.1, value, value + 0.1].map((each) => String(Math.round(each * 10) / 10)).join('|')}) ms`;

const words = (page: Page) => page.getByRole('region', { name: 'The stream in words, from the cursor on' });
const out = (page: Page) => page.getByRole('region', { name: 'What comes out' });
const line = (page: Page) => page.getByRole('slider', { name: 'Moment on the time line' });
const panel = (page: Page, name: string) =>
  page.getByRole('radio', { name, exact: true }).check({ force: true });

// On the first demonstration, one row up: 5 Y 3 type "the", 7 8 9 are the keys of the chord "Delete the word" (45 ms).
const THE: readonly Press[] = [
  ['Digit5', 0, 80],
  ['KeyY', 200, 280],
  ['Digit3', 400, 480],
];
const chordAt = (t: number, spread: number): readonly Press[] => [
  ['Digit7', t, t + 120],
  ['Digit8', t + 20, t + 125],
  ['Digit9', t + spread, t + 130],
];

test('types with real keys, fires a chord of three inside its window and misses it just outside, and replays it with another window', async ({
  page,
}) => {
  await openRehearse(page);
  await panel(page, 'Type it');
  await page.getByRole('button', { name: 'Start typing' }).click();
  await expect(page.getByText('Every key goes to the board.', { exact: true })).toBeVisible();
  await typeExactly(page, [...THE, ...chordAt(1000, 44), ...chordAt(2000, 46)]);
  await expect(out(page)).toHaveText('theLeft Control + Backspaceuio');
  await page.getByRole('button', { name: 'Stop', exact: true }).click();

  await page.getByRole('button', { name: 'In words' }).click();
  await expect(words(page)).toContainText(
    new RegExp(`U, I and O came within ${about(44)}: chord Delete the word`),
  );
  await expect(words(page)).toContainText(
    new RegExp(`O came ${about(46)} after U: too late for chord Delete the word`),
  );
  await page.getByRole('button', { name: 'In words' }).click();

  await panel(page, 'Settings');
  const window = page.getByRole('spinbutton', { name: 'Delete the word' });
  await window.fill('50');
  await window.press('Enter');
  await expect(out(page)).toHaveText('theLeft Control + BackspaceLeft Control + Backspace');

  await panel(page, 'Beside');
  await page.getByLabel('Hold against it').selectOption('design as it is');
  await expect(page.getByText('1 place differs; 4 outputs are alike.')).toBeVisible();
  await expect(page.getByRole('button', { name: /^at (1,999.9|2,000|2,000.1) ms/ })).toContainText(
    'Left Control + Backspaceuio',
  );

  await page.getByLabel('Hold against it').selectOption({ label: 'Two-shore almanac, 42 keys' });
  await expect(page.getByText(/^\d+ places? differs?; /)).toBeVisible();
});

test('marks a slip, proves a setting against it, keeps it in the design and the stream with the browser', async ({
  page,
}) => {
  await openRehearse(page);
  await panel(page, 'Type it');
  await page.getByLabel('Text to type, if you like').fill('theuio');
  await page.getByRole('button', { name: 'Start typing' }).click();
  await typeExactly(page, [...THE, ...chordAt(1000, 44)]);
  await expect(out(page)).toHaveText('theLeft Control + Backspace');
  await page.getByRole('button', { name: 'Stop', exact: true }).click();

  await page.getByRole('button', { name: '“uio” came as ⟨Left Control + Backspace⟩', exact: true }).click();
  await expect(
    page.getByText(new RegExp(`U, I and O came within ${about(44)}: chord Delete the word`)).last(),
  ).toBeVisible();
  const remedy = page.getByText('Window of Delete the word: 40 ms instead of 45 ms');
  await remedy.locator('..').getByRole('button', { name: 'Try' }).click();
  await expect(out(page)).toHaveText('theuio');
  await page.getByRole('button', { name: 'Keep in the design' }).click();
  await expect(page.getByRole('button', { name: /^Undo: / })).toBeEnabled();
  await expect(out(page)).toHaveText('theuio');

  await panel(page, 'Kept');
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await expect(page.getByText('Kept with this browser.')).toBeVisible();
  await expect(page.getByText('Saved', { exact: true })).toBeVisible();
  await page.reload();
  await page.getByRole('radio', { name: 'Rehearse' }).check({ force: true });
  await panel(page, 'Kept');
  await page.getByRole('button', { name: 'Typed', exact: true }).click();
  await expect(out(page)).toHaveText('theuio');
});

test('writes a text, and the time line can be read without a mouse and without a picture', async ({
  page,
}) => {
  await openRehearse(page);
  await page.getByLabel('Text to write').fill('low tide at noon');
  await page.getByRole('button', { name: 'Play it' }).click();
  await expect(page.getByLabel('What was meant')).toHaveValue('low tide at noon');
  await tabTo(page, line(page));
  await page.keyboard.press('Home');
  await expect(line(page)).toHaveAttribute('aria-valuetext', /^at 0 ms: L goes down; L: tap or hold\?/);
  await page.keyboard.press('ArrowRight');
  await expect(line(page)).not.toHaveAttribute('aria-valuetext', /^at 0 ms/);
  await page.keyboard.press('End');
  await expect(line(page)).toHaveAttribute('aria-valuetext', /N comes up/);
  for (const key of ['+', '+', 'PageUp', '-', '0']) await page.keyboard.press(key);
  expect(await accessibilityFaults(page)).toEqual([]);
  await panel(page, 'Type it');
  await panel(page, 'Settings');
  await page.getByRole('button', { name: 'In words' }).click();
  expect(await accessibilityFaults(page)).toEqual([]);
});

test('what annoyed the typist stands on the board and in the findings until it is ticked off', async ({
  page,
}) => {
  await openRehearse(page);
  await panel(page, 'Diary');
  await page.getByLabel('What annoyed you, in one line').fill('Too easily pressed');
  await page.getByLabel('About').selectOption({ label: 'Delete the word' });
  await page.keyboard.press('Tab');
  await page.getByRole('button', { name: 'Note it' }).click();
  await expect(
    page.getByText(/^about the chord Delete the word, .* with the design as it is$/),
  ).toBeVisible();

  await panel(page, 'Design');
  const key = page.getByRole('option', { name: /noted: Too easily pressed/ });
  await expect(key).toHaveCount(3);
  const finding = page.locator('[data-rule=diary-note-open]');
  await page.getByText('Worth knowing').click();
  await finding.getByRole('button', { name: 'Tick it off' }).click();
  await expect(finding).toHaveCount(0);
  await expect(key).toHaveCount(0);

  await panel(page, 'Rehearse');
  await panel(page, 'Diary');
  await expect(page.getByRole('checkbox', { name: 'Too easily pressed' })).toBeChecked();
});

test('a key that was given another place on the overlay types from there, also after a reload', async ({
  page,
}) => {
  await openRehearse(page);
  await panel(page, 'Type it');
  await page.getByRole('button', { name: 'Change which key is which…' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('Name').fill('Mine');
  await dialog.getByLabel('Key of the board').selectOption({ label: 'left middle top' });
  await dialog.getByRole('button', { name: 'Record next key' }).click();
  await page.keyboard.press('F8');
  await dialog.getByRole('button', { name: 'Keep', exact: true }).click();
  await expect(page.getByLabel('Keyboard at hand, laid onto the board')).toContainText('Mine');
  await page.reload();
  await page.getByRole('radio', { name: 'Rehearse' }).check({ force: true });
  await panel(page, 'Type it');
  await expect(page.getByLabel('Keyboard at hand, laid onto the board').locator('option:checked')).toHaveText(
    'Mine',
  );
  await page.getByRole('button', { name: 'Start typing' }).click();
  await typeExactly(page, [['F8', 0, 60]]);
  await expect(out(page)).toHaveText('e');
});
