/**
 * The last part of `npm run bench`: an edit on the benchmark design in the built page, findings included. Reports how long it
 * takes until it is painted, and the `long-animation-frame` entries (frames over 50 ms) that it made; it never fails on time.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, runnerImport } from 'vite';
import { importDesign, openBuiltPage } from './built-page.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const EDITS = 21;
const median = (values) => values.toSorted((one, other) => one - other)[values.length >> 1];
const load = async (file) => (await runnerImport(join(root, file))).module;

// First, before loading a module has set this process up for development: the page is to be measured as it is served.
await build({ root, logLevel: 'error' });
const { benchKeymap } = await load('src/build/bench/bench-keymap.ts');
const { writeKeymap } = await load('src/core/keymap/write.ts');
const design = join(root, '.cache/bench.json');
mkdirSync(join(root, '.cache'), { recursive: true });
writeFileSync(design, writeKeymap({ ...benchKeymap(), name: 'Benchmark' }));

const built = await openBuiltPage(root, 4320);
if (built === undefined) {
  console.log('\nPage\nThere is no browser on this machine to measure the page in.');
  process.exit(0);
}
const page = await built.browser.newPage({ viewport: { width: 1440, height: 900 } });
await page.goto(built.address);
await importDesign(page, design, 'Benchmark');
await page.waitForTimeout(500);

await page.evaluate(() => {
  globalThis.longFrames = [];
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) globalThis.longFrames.push(entry.duration);
  }).observe({ type: 'long-animation-frame' });
});
const painted = [];
await page.locator('[data-key]').first().focus();
for (let edit = 0; edit < EDITS; edit++) {
  // A printing character binds itself to the focused key: two of them in turn, so that each is an edit.
  painted.push(
    await page.evaluate(
      (key) =>
        new Promise((resolve) => {
          const start = performance.now();
          document.activeElement.dispatchEvent(
            new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }),
          );
          requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - start)));
        }),
      edit % 2 === 0 ? 'ü' : 'q',
    ),
  );
  await page.waitForTimeout(120);
}
const undo = await page.getByRole('button', { name: /^Undo: / }).count();
const frames = await page.evaluate(() => globalThis.longFrames);
await built.close();

const worst = frames.length === 0 ? '' : `, the longest ${Math.round(Math.max(...frames))} ms`;
console.log('\nPage: 42 keys, 8 layers, 30 chords, findings included');
console.log(
  `an edit until it is painted   ${median(painted).toFixed(1)} ms at the median of ${EDITS}, at most ${Math.max(...painted).toFixed(1)} ms`,
);
console.log(`long animation frames         ${frames.length} of ${EDITS} edits${worst}; aim: none over 50 ms`);
if (undo === 0) console.log('No edit was made: the figures above are of nothing.');
