import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import type { KeyEvent } from '../../src/core/base/key-event.ts';
import { type Overlay, readyOverlays } from '../../src/core/board/overlay.ts';
import { usHost } from '../../src/core/host/us.ts';
import { parseNeed } from '../../src/core/keymap/need.ts';
import { readKeymap } from '../../src/core/keymap/read.ts';
import { mirrorOf } from '../../src/core/practice/compare-deeds.ts';
import { findRoutes } from '../../src/core/routes/find-routes.ts';
import { answerProbes } from './computer-presses.ts';
import { accessibilityFaults, download } from './design-desk.ts';

const read = readKeymap(readFileSync('demo-layouts/beacon-log.json', 'utf8'));
if (!read.ok) throw new Error('the demo cannot be read');
/** The design that the page opens on. */
const keymap = read.value;
const [overlay] = readyOverlays(keymap.board);

/** How a need is typed on the design, as presses. */
function pressesOf(text: string): readonly KeyEvent[] {
  const need = parseNeed(text);
  const route = need.ok ? findRoutes(keymap, usHost, [need.value])[0]?.route : undefined;
  if (route === undefined || route === null) throw new Error(`no route for ${text}`);
  return route.events;
}

/** A quick tap of the other hand's key: a slip, unless nothing is on that key. */
function mirroredTap(text: string): readonly KeyEvent[] {
  const key = mirrorOf(keymap.board, pressesOf(text)[0]?.key ?? '') ?? '';
  return [
    { t: 0, key, type: 'down' },
    { t: 30, key, type: 'up' },
  ];
}

/** Presses keys of the keyboard at hand, to the millisecond: each run begins half a second after the one before. */
async function press(page: Page, events: readonly KeyEvent[], { keys }: Overlay) {
  const codes = Object.fromEntries(Object.entries(keys).map(([code, key]) => [key, code]));
  await page.evaluate(
    (presses) => {
      const start = Math.max(performance.now(), Number(document.body.dataset.lastPress ?? 0)) + 500;
      for (const { t, code, kind } of presses) {
        const event = new KeyboardEvent(kind, { code, key: 'Unidentified', bubbles: true, cancelable: true });
        Object.defineProperty(event, 'timeStamp', { value: start + t });
        window.dispatchEvent(event);
        document.body.dataset.lastPress = String(start + t);
      }
    },
    events.map(({ t, key, type }) => ({
      t,
      code: codes[key] ?? '',
      kind: type === 'down' ? 'keydown' : 'keyup',
    })),
  );
}

const asked = (page: Page) => page.locator('[data-state=asked]');
const stage = (page: Page, name: string) => page.getByRole('region', { name, exact: true });

const toDesk = (page: Page) => page.getByRole('radio', { name: 'Practise' }).check();

async function openDesk(page: Page) {
  await page.goto('./');
  await toDesk(page);
}

/** Types the need that is asked for, and waits until another place is asked for. */
async function typeAsked(page: Page, place: Overlay): Promise<string> {
  const need = (await asked(page).getAttribute('data-need')) ?? '';
  const list = page.getByRole('list', { name: 'To be typed' });
  const before = (await list.getAttribute('data-place')) ?? '';
  await press(page, pressesOf(need), place);
  await expect(list).not.toHaveAttribute('data-place', before);
  return need;
}

test('ten needs through the engine, two of them wrong: the diagnosis, the plan, and on after a reload', async ({
  page,
}) => {
  if (overlay === undefined) throw new Error('no overlay');
  await openDesk(page);
  await expect(stage(page, 'Practise')).toContainText('none of them practised yet');
  await page.getByRole('button', { name: 'Begin' }).click();

  const wrong: string[] = [];
  for (let typed = 0; typed < 10; typed++) {
    const need = (await asked(page).getAttribute('data-need')) ?? '';
    const isLetter = /^[a-z]$/.test(need);
    if (isLetter && !wrong.includes(need) && wrong.length < 2) {
      await press(page, mirroredTap(need), overlay);
      await expect(page.getByTestId('slip')).toContainText('Mirrored hand:');
      wrong.push(need);
    }
    await typeAsked(page, overlay);
  }
  expect(wrong).toHaveLength(2);

  const place = await asked(page).getAttribute('data-need');
  await page.reload();
  await toDesk(page);
  await expect(stage(page, 'Paused session')).toContainText('10 typed');
  await page.getByRole('button', { name: 'Go on' }).click();
  await expect(asked(page)).toHaveAttribute('data-need', place ?? '');
  expect(await accessibilityFaults(page)).toEqual([]);
  await typeAsked(page, overlay);
  await page.getByRole('button', { name: 'Pause', exact: true }).click();
  await page.getByRole('button', { name: 'End the session' }).click();

  const summary = stage(page, 'Practise');
  await expect(summary).toContainText('11 needs typed');
  await expect(summary).toContainText('2 wrong at first');
  await expect(summary.getByRole('listitem').filter({ hasText: 'Mirrored hand:' })).toHaveCount(2);
  const again = summary.getByRole('listitem').filter({ hasText: 'again today' });
  for (const need of wrong) await expect(again).toContainText(need);
  await expect(summary.getByRole('listitem').filter({ hasText: 'tomorrow' })).toHaveCount(1);
  await expect(page.getByTestId('forecast')).toContainText('at least 50');
  expect(await accessibilityFaults(page)).toEqual([]);

  const text = await download(page, () => page.getByRole('button', { name: 'Export the practice' }).click());
  expect(JSON.parse(text).sessions[0].attempts).toHaveLength(11);
  await page.getByRole('button', { name: 'Delete…' }).click();
  await page.getByRole('button', { name: 'Delete all of it' }).click();
  await expect(stage(page, 'Practise')).toContainText('none of them practised yet');
  await page.reload();
  await toDesk(page);
  await expect(stage(page, 'Practise')).toContainText('none of them practised yet');
});

test('from a real board results arrive: what went wrong is likely, and Escape held for a second pauses', async ({
  page,
}) => {
  await openDesk(page);
  await page.getByText('Everything, 7 minutes').click();
  await page.getByLabel('Typed on').selectOption('The real board');
  const begin = page.getByRole('button', { name: 'Begin' });
  await begin.click();
  // This browser cannot say which layout the computer is on.
  await answerProbes(page, usHost);
  await begin.click();
  const need = (await asked(page).getAttribute('data-need')) ?? '';
  await page.keyboard.press(need === 'q' ? 'z' : 'q');
  await expect(page.getByTestId('slip')).toContainText('Likely:');
  const places = page.getByRole('list', { name: 'To be typed' }).getByRole('listitem');
  await page.keyboard.press(need === ' ' ? 'Space' : need);
  await expect(places.first()).toHaveAttribute('data-state', 'done');
  await page.getByRole('button', { name: 'Hint' }).click();
  await expect(page.getByRole('img', { name: /^The board: (press|hold)/ })).toBeVisible();
  await page.keyboard.down('Escape');
  await expect(stage(page, 'Paused session')).toContainText('1 typed');
  await page.keyboard.up('Escape');
});
