/**
 * The rehearse desk's part of `npm run bench`: frame times of the time line with 5,000 events while it scrolls and zooms,
 * and whether a typed key is answered in the frame that follows it. It reports and never fails on time.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { cpuClock } from './page-clock.mjs';

const EVENTS = 5000;
const FRAMES = 240;
const KEYS = 40;
const SENTENCE =
  'The tide gauge reads low again and the keeper writes it down before the evening boat comes in. ';

const sorted = (values) => values.toSorted((one, other) => one - other);
const at = (values, share) =>
  sorted(values)[Math.min(values.length - 1, Math.floor(values.length * share))] ?? 0;
const ms = (value) => `${value.toFixed(1)} ms`;

/** Measures on a page with the benchmark design open; `load` gives the modules of the source. */
export async function benchRehearse({ openPage, root, load }) {
  const page = await openPage();
  await page.getByRole('radio', { name: 'Rehearse' }).check({ force: true });
  const { file, codes } = await streamFile(root, load);
  await page.getByRole('radio', { name: 'Kept', exact: true }).check({ force: true });
  await page.locator('input[type=file]').first().setInputFiles(file);
  await page.getByRole('slider', { name: 'Moment on the time line' }).waitFor();
  await page.waitForTimeout(500);
  console.log(`\nRehearse: a time line of ${EVENTS.toLocaleString('en')} events, ${FRAMES} frames each`);
  for (const [what, how] of [
    ['at rest', 'still'],
    ['scrolling', 'scroll'],
    ['zooming, from the whole of it to a second and back', 'zoom'],
    ['redrawing the whole of it', 'whole'],
  ]) {
    const cpu = await cpuClock(page);
    const times = await frames(page, how);
    const spent = await cpu.spent();
    await cpu.stop();
    const late = times.filter((time) => time > 1000 / 60 + 2).length;
    console.log(
      `${what}: a frame every ${ms(at(times, 0.5))} at the median, ${ms(at(times, 0.95))} at the 95th percentile, ` +
        `${late} of ${times.length} later than a 60th of a second; ${ms(spent / times.length)} of the page's own work a frame`,
    );
  }
  await listen(page);
  for (const before of [0, EVENTS]) await typing(page, before, codes);
  await page.close();
}

/** A stream of that many events on the open design, typed by a drawn typist. */
async function streamFile(root, load) {
  const { readKeymap } = await load('src/core/keymap/read.ts');
  const { usHost } = await load('src/core/host/us.ts');
  const { typedBy } = await load('src/core/rehearse/typed-by.ts');
  const { readyOverlays } = await load('src/core/board/overlay.ts');
  const { writeStream } = await load('src/core/rehearse/write-stream.ts');
  const { readFileSync } = await import('node:fs');
  const read = readKeymap(readFileSync(join(root, '.cache/bench.json'), 'utf8'));
  if (!read.ok) throw new Error(read.problem[0]?.sentence);
  const text = SENTENCE.repeat(Math.ceil(EVENTS / SENTENCE.length));
  const { events } = typedBy(read.value, usHost, text, { wpm: 75, spread: 1, seed: 1 }, null);
  const file = join(root, '.cache/bench.presses.json');
  // Cut between presses: whatever is down at the cut goes on being down, which a stream may.
  const stream = { name: 'Benchmark', made: { how: 'typed' }, meant: null, events: events.slice(0, EVENTS) };
  writeFileSync(file, writeStream(stream));
  return { file, codes: plainCodes(read.value, readyOverlays(read.value.board)[0]) };
}

/** Two keys of the overlay that act at once: neither part of a chord nor with a hold, so that an answer is due at once. */
function plainCodes({ layers, chords = [] }, overlay) {
  const isPlain = (key) =>
    layers[0]?.places[key]?.tap !== undefined &&
    layers[0].places[key].hold === undefined &&
    !chords.some(({ keys }) => keys.includes(key));
  return Object.keys(overlay.keys)
    .filter((code) => isPlain(overlay.keys[code]))
    .slice(0, 2);
}

/** Frame intervals, ms, while the wheel is turned once a frame; for scrolling it is zoomed in first. */
function frames(page, how) {
  return page.evaluate(
    ([kind, count]) =>
      new Promise((resolve) => {
        const place = document.querySelector('[role=slider]');
        const { left, top, width } = place.getBoundingClientRect();
        const wheel = (how) =>
          place.dispatchEvent(
            new WheelEvent('wheel', {
              ...how,
              clientX: left + width / 2,
              clientY: top + 100,
              bubbles: true,
              cancelable: true,
            }),
          );
        if (kind === 'scroll') for (let step = 0; step < 30; step++) wheel({ deltaY: -25, ctrlKey: true });
        if (kind === 'whole') for (let step = 0; step < 90; step++) wheel({ deltaY: 25, ctrlKey: true });
        const times = [];
        let before = 0;
        const tick = (now) => {
          if (before > 0) times.push(now - before);
          before = now;
          if (times.length >= count) {
            resolve(times);
            return;
          }
          if (kind !== 'still') {
            const out = Math.floor(times.length / 60) % 2 === 1;
            if (kind === 'scroll') wheel({ deltaX: out ? -40 : 40 });
            else wheel({ deltaY: kind === 'whole' ? 1 : out ? 25 : -25, ctrlKey: true });
          }
          requestAnimationFrame(tick);
        };
        requestAnimationFrame(tick);
      }),
    [how, FRAMES],
  );
}

/** Hears keys before the page does: whether what came out stands there when the next frame is drawn, and how long it all took. */
function listen(page) {
  return page.evaluate(() => {
    globalThis.answers = [];
    const shown = () => document.querySelector('section[aria-label="What comes out"]')?.textContent;
    window.addEventListener(
      'keydown',
      ({ timeStamp, isTrusted }) => {
        if (!isTrusted) return;
        const before = shown();
        requestAnimationFrame(() => {
          const isThere = shown() !== before;
          setTimeout(() => globalThis.answers.push({ isThere, after: performance.now() - timeStamp }));
        });
      },
      { capture: true },
    );
  });
}

/**
 * Types with real key events after so many others. Those are made by the page itself and so all come within a moment: they
 * lie together in the part that is in view, which is more than any typist brings about.
 */
async function typing(page, before, [one, other]) {
  await page.getByRole('radio', { name: 'Type it' }).check({ force: true });
  await page.getByRole('button', { name: 'Start typing' }).click();
  await page.evaluate(
    ([count, ...keys]) => {
      globalThis.answers.length = 0;
      for (let event = 0; event < count; event += 2)
        for (const type of ['keydown', 'keyup'])
          window.dispatchEvent(new KeyboardEvent(type, { code: keys[(event / 2) % 2], cancelable: true }));
    },
    [before, one, other],
  );
  const cpu = await cpuClock(page);
  for (let key = 0; key < KEYS; key++) {
    await page.keyboard.press(key % 2 === 0 ? one : other, { delay: 20 });
    await page.waitForTimeout(30);
  }
  const spent = await cpu.spent();
  await cpu.stop();
  const answers = await page.evaluate(() => globalThis.answers);
  await page.getByRole('button', { name: 'Stop', exact: true }).click();
  const same = answers.filter(({ isThere }) => isThere).length;
  const after = answers.map((answer) => answer.after);
  console.log(
    `typing after ${before.toLocaleString('en')} events: ${same} of ${answers.length} keys answered in the next frame; ` +
      `from the key to the end of its frame ${ms(at(after, 0.5))} at the median, ${ms(at(after, 0.95))} at the 95th percentile; ` +
      `${ms(spent / answers.length)} of the page's own work a key`,
  );
}
