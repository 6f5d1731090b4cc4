/**
 * The simulation's part of `npm run bench`: 100,000 words simulated in the worker, and what that does to the page's frames. It
 * reports and never fails on time.
 */
import { framesText, watchFrames } from './page-clock.mjs';

/** Measures on a page with the benchmark design open. */
export async function benchSimulation({ openPage }) {
  const page = await openPage();
  await watchFrames(page);
  await page.getByRole('radio', { name: 'Accidents' }).check({ force: true });
  await page
    .locator('summary')
    .filter({ hasText: /^Simulate$/ })
    .click();
  await page.getByRole('button', { name: 'Simulate' }).waitFor();
  await page.waitForTimeout(2000);
  const { ms, late, long, atRest } = await page.evaluate(async () => {
    let late = 0;
    let before = performance.now();
    let isOver = false;
    const look = (now) => {
      // A frame is due every 16.7 ms; one that comes after 34 ms has dropped another.
      if (now - before > 34) late++;
      before = now;
      if (!isOver) requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
    // What this machine drops when nothing is going on, to compare with.
    await new Promise((resolve) => setTimeout(resolve, 3000));
    const atRest = late / 3;
    late = 0;
    globalThis.longFrames.splice(0);
    const start = performance.now();
    const isRunning = () => document.querySelector('progress') !== null;
    const soon = () => new Promise((resolve) => setTimeout(resolve, 20));
    [...document.querySelectorAll('button')].find(({ textContent }) => textContent === 'Simulate')?.click();
    while (!isRunning()) await soon();
    while (isRunning()) await soon();
    isOver = true;
    await soon();
    return { ms: performance.now() - start, late, long: globalThis.longFrames.splice(0), atRest };
  });
  console.log(
    `\nPage: 100,000 words simulated in the worker\n${Math.round(ms)} ms, 400 uses of everything besides; frames dropped: ${late} (${((late * 1000) / ms).toFixed(1)} a second, at rest ${atRest.toFixed(1)}); frames over 50 ms: ${framesText(long)}; aim: none`,
  );
  await page.close();
}
