/**
 * The last part of `npm run bench`: the built page with the benchmark design. It reports how long things take until they are painted,
 * and the frames over 50 ms that they make, with the script that took longest. It never fails on time: what does not
 * come at all is said, and the next part goes on. `node src/build/bench-page.mjs edits growth` runs those parts alone.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, runnerImport } from 'vite';
import { benchCounting } from './bench-page/counting.mjs';
import { benchEdits } from './bench-page/edits.mjs';
import { benchFirstVisit } from './bench-page/first-visit.mjs';
import { benchGrowth } from './bench-page/growth.mjs';
import { benchMoving } from './bench-page/moving.mjs';
import { benchRehearse } from './bench-page/rehearse.mjs';
import { benchSimulation } from './bench-page/simulation.mjs';
import { importDesign, openBuiltPage } from './built-page.mjs';

const PARTS = {
  visit: benchFirstVisit,
  edits: benchEdits,
  moving: benchMoving,
  growth: benchGrowth,
  counting: benchCounting,
  simulation: benchSimulation,
  rehearse: benchRehearse,
};
const root = fileURLToPath(new URL('../..', import.meta.url));
const asked = process.argv.slice(2);
const unknown = asked.find((name) => !Object.hasOwn(PARTS, name));
if (unknown !== undefined) {
  console.error(`There is no part "${unknown}": ${Object.keys(PARTS).join(', ')}.`);
  process.exit(2);
}
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
const { browser, address } = built;

/** A page of its own, as on a first visit, with the benchmark design open and at rest. */
async function openPage() {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(address);
  await importDesign(page, design, 'Benchmark');
  await page.waitForTimeout(1000);
  return page;
}

for (const [name, run] of Object.entries(PARTS)) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  try {
    await run({ browser, address, openPage, design, root, load });
  } catch (problem) {
    console.log(`The part "${name}" could not be measured to its end: ${problem.message}`);
  }
}
await built.close();
