/**
 * The last part of `npm run bench`: an edit on the benchmark design in the built page, findings and accidents included. Reports how long it
 * takes until it is painted, and the `long-animation-frame` entries (frames over 50 ms) that it made; then the same for the
 * counting of ten megabytes of text. It never fails on time.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, runnerImport } from 'vite';
import { benchRehearse } from './bench-rehearse.mjs';
import { benchSimulation } from './bench-simulation.mjs';
import { importDesign, openBuiltPage } from './built-page.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const EDITS = 21;
const framesText = (all) =>
  all.length === 0 ? 'none' : `${all.length}, the longest ${Math.round(Math.max(...all))} ms`;
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
const frames = await longFrames();

/** The frames over 50 ms since this was asked last, ms. */
async function longFrames() {
  await page.waitForTimeout(200);
  return page.evaluate(() => globalThis.longFrames.splice(0));
}

const undo = await page.getByRole('button', { name: /^Undo: / }).count();
const counting = await countText();

/** Has ten megabytes of source code and prose counted as a person does, and tells how long it took, ms, and the long frames. */
async function countText() {
  const folder = join(root, '.cache/bench-text');
  mkdirSync(folder, { recursive: true });
  const source = readFileSync(join(root, 'src/core/needs/text-counts.ts'), 'utf8');
  const prose = 'Zwölf Boxkämpfer jagen Viktor quer über den großen Sylter Deich.\n'.repeat(40);
  const megabyte = `${source}${prose}`.repeat(200).slice(0, 1_000_000);
  for (let file = 0; file < 10; file++) writeFileSync(join(folder, `text-${file}.txt`), megabyte);
  await page.getByRole('radio', { name: 'Coverage' }).check();
  const box = page.getByRole('region', { name: 'Your text' });
  await box.waitFor();
  await longFrames();
  const begin = Date.now();
  await page.locator('[data-chooses=folder]').setInputFiles(folder);
  await box.getByText(/counted on/).waitFor();
  const ms = Date.now() - begin;
  return { ms, frames: await longFrames() };
}

console.log('\nPage: 42 keys, 8 layers, 30 chords, findings and accidents included');
console.log(
  `an edit until it is painted   ${median(painted).toFixed(1)} ms at the median of ${EDITS}, at most ${Math.max(...painted).toFixed(1)} ms`,
);
console.log(`long animation frames         ${framesText(frames)} in ${EDITS} edits; aim: none over 50 ms`);
console.log(
  `ten megabytes of text counted ${counting.ms} ms from choosing to the figures; long animation frames: ${framesText(counting.frames)}; aim: 1,000 ms, none`,
);
if (undo === 0) console.log('No edit was made: the figures above are of nothing.');

await benchSimulation(page, framesText);
await benchRehearse(page, root, load);
await built.close();
