/** What the benchmarks of the page measure with: medians, long frames and whose they are, the work of the page's own thread. */

/** The middle one of some figures; of an even number the upper of the two. */
export const median = (values) => values.toSorted((one, other) => one - other)[values.length >> 1] ?? 0;

/** Long frames in words: how many, the longest, and the script that ran longest in it. */
export function framesText(all) {
  if (all.length === 0) return 'none';
  const { ms, script } = all.reduce((most, frame) => (frame.ms > most.ms ? frame : most));
  return `${all.length}, the longest ${Math.round(ms)} ms (${script})`;
}

/** A clock of the work of the page's main thread, ms, that stands still while other programs have the processor. */
export async function cpuClock(page) {
  const protocol = await page.context().newCDPSession(page);
  await protocol.send('Performance.enable', { timeDomain: 'threadTicks' });
  const now = async () => {
    const { metrics } = await protocol.send('Performance.getMetrics');
    return 1000 * (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? 0);
  };
  const start = await now();
  return { spent: async () => (await now()) - start, stop: () => protocol.detach() };
}

/** Writes down the frames over 50 ms from now on; gives a function that tells those since it was asked last. */
export async function watchFrames(page) {
  await page.evaluate(() => {
    globalThis.longFrames = [];
    const told = ({ invoker, sourceFunctionName, sourceURL, duration }) => {
      const [file = ''] = sourceURL.split('/').slice(-1);
      return `${invoker} ${sourceFunctionName} ${file}: ${Math.round(duration)} ms`.replaceAll(/ +/g, ' ');
    };
    new PerformanceObserver((list) => {
      for (const { duration, scripts } of list.getEntries()) {
        const [longest] = scripts.toSorted((one, other) => other.duration - one.duration);
        const script = longest === undefined ? 'no script: styles, layout, painting' : told(longest);
        globalThis.longFrames.push({ ms: duration, script });
      }
    }).observe({ type: 'long-animation-frame' });
  });
  return async () => {
    await page.waitForTimeout(200);
    return page.evaluate(() => globalThis.longFrames.splice(0));
  };
}

/**
 * Does something in the page some times over. `step` runs there, with the number of the turn and `given`, and gives a selector of
 * what is to stand in the page before it counts as done, or nothing. For each turn: the time until that is painted, the
 * work of the page's thread till then, and its work until the page had rested, ms.
 */
export async function timedSteps(page, turns, step, { restMs = 120, given = null } = {}) {
  const clock = await cpuClock(page);
  const run = await page.evaluateHandle(`(${step})`);
  const steps = [];
  for (let turn = 0; turn < turns; turn++) {
    const before = await clock.spent();
    const painted = await page.evaluate(onceIsPainted, [run, turn, given]);
    const work = (await clock.spent()) - before;
    await page.waitForTimeout(restMs);
    steps.push({ painted, work, all: (await clock.spent()) - before });
  }
  await run.dispose();
  await clock.stop();
  return steps;
}

/** Runs in the page. What never comes is not waited for longer than ten seconds. */
function onceIsPainted([run, turn, given]) {
  return new Promise((resolve, reject) => {
    const start = performance.now();
    const awaited = run(turn, given);
    const look = () => {
      const isThere = typeof awaited !== 'string' || document.querySelector(awaited) !== null;
      if (isThere) setTimeout(() => resolve(performance.now() - start));
      else if (performance.now() - start > 10_000) reject(new Error(`${awaited} has not come`));
      else requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
}

const ms = (value) => `${value.toFixed(1)} ms`;

/** One line: what `timedSteps` gave, and the frames that were too long. */
export function stepsLine(what, steps, frames) {
  const of = (name) => steps.map((step) => step[name]);
  return (
    `${what.padEnd(30)}painted after ${ms(median(of('painted')))} at the median of ${steps.length}, ` +
    `${ms(Math.max(...of('painted')))} at the worst; own work till then ${ms(median(of('work')))}, with what follows ` +
    `${ms(median(of('all')))}; frames over 50 ms: ${framesText(frames)}`
  );
}
