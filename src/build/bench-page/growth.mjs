/** The part of `npm run bench` about what the page keeps: its memory before and after many openings of a card and of the desks. */
import { DESKS, openCard, openDesk } from './openings.mjs';
import { timedSteps } from './page-clock.mjs';

const OPENINGS = 200;
/** A slow machine gets as far as it gets, ms. */
const MOST_MS = 25_000;

/** Measures on pages of its own with the benchmark design open. */
export async function benchGrowth({ openPage }) {
  console.log('\nPage, what it keeps: after garbage was collected; aim: nothing more by opening');
  await report('a card', openPage, (page, turn) => timedSteps(page, 1, openCard, { restMs: 0, given: turn }));
  await report('the desks', openPage, (page, turn) =>
    timedSteps(page, 1, openDesk, { restMs: 0, given: DESKS[turn % DESKS.length] }),
  );
}

async function report(what, openPage, open) {
  const page = await openPage();
  const protocol = await page.context().newCDPSession(page);
  let turn = 0;
  // The first openings load and fill what is kept for good.
  while (turn < 20) await open(page, turn++);
  const before = await kept(page, protocol);
  const begin = Date.now();
  const from = turn;
  while (turn < from + OPENINGS && Date.now() - begin < MOST_MS) await open(page, turn++);
  // As many desks or none: the same one is open as before.
  while (turn % 20 !== 0) await open(page, turn++);
  const after = await kept(page, protocol);
  const more = (name) => after[name] - before[name];
  console.log(
    `${`${what}, ${turn - from} times`.padEnd(30)}heap ${(before.bytes / 1e6).toFixed(1)} MB and ${(more('bytes') / 1000).toFixed(0)} kB more ` +
      `(${(more('bytes') / (turn - from)).toFixed(0)} bytes an opening), ${more('nodes')} nodes and ${more('jsEventListeners')} listeners more`,
  );
  await page.close();
}

async function kept(page, protocol) {
  await page.waitForTimeout(1500);
  // What is let go by a finalizer of the first goes with the second.
  for (let time = 0; time < 2; time++) await protocol.send('HeapProfiler.collectGarbage');
  const { usedSize } = await protocol.send('Runtime.getHeapUsage');
  const { nodes, jsEventListeners } = await protocol.send('Memory.getDOMCounters');
  return { bytes: usedSize, nodes, jsEventListeners };
}
