/** The part of `npm run bench` about moving around: layers, the board's camera, the search, cards, desks, another design. */
import { importDesign } from '../built-page.mjs';
import { DESKS, openCard, openDesk } from './openings.mjs';
import { cpuClock, framesText, stepsLine, timedSteps, watchFrames } from './page-clock.mjs';

const TURNS = 15;

/** Measures on a page with the benchmark design open. */
export async function benchMoving({ openPage, design }) {
  const page = await openPage();
  const frames = await watchFrames(page);
  const report = async (what, turns, step, options) => {
    await frames();
    const steps = await timedSteps(page, turns, step, options);
    console.log(stepsLine(what, steps, await frames()));
  };
  console.log('\nPage, moving around: 42 keys, 8 layers, 30 chords; aim: no frame over 50 ms');
  await report('another layer in front', TURNS, nextLayer);
  await report('the wheel zooms the board', TURNS, zoom);
  await report('the zoomed board is moved', TURNS, pan);
  await report("a letter in the needs' search", TURNS, search);
  await report('a card opens', TURNS, openCard);
  for (const given of DESKS) await report(`${given}, the first time`, 1, openDesk, { given, restMs: 1500 });
  for (const given of DESKS) await report(`${given}, again`, 1, openDesk, { given, restMs: 600 });
  await frames();
  const clock = await cpuClock(page);
  const begin = Date.now();
  await importDesign(page, design, 'Benchmark');
  const ms = Date.now() - begin;
  const work = (await clock.spent()).toFixed(0);
  console.log(
    `that design opened from a file ${ms} ms from the menu to the board, own work ${work} ms; frames over 50 ms: ${framesText(await frames())}`,
  );
  await page.close();
}

function nextLayer(turn) {
  const sheets = document.querySelectorAll('[data-layer] > button[aria-pressed]');
  sheets[turn % sheets.length].click();
}

function zoom(turn) {
  const board = document.querySelector('svg:has([data-key])');
  const { left, top, width, height } = board.getBoundingClientRect();
  const at = { clientX: left + width / 2, clientY: top + height / 2 };
  const deltaY = turn % 6 < 4 ? -60 : 60;
  board.dispatchEvent(new WheelEvent('wheel', { deltaY, ...at, bubbles: true, cancelable: true }));
}

/** One drag over all turns, by a pointer between the keys. */
function pan(turn) {
  const board = document.querySelector('svg:has([data-key])');
  const { left, top } = board.getBoundingClientRect();
  const at = { clientX: left + 10 + 5 * turn, clientY: top + 10, pointerId: 1, button: 0, buttons: 1 };
  const type = turn === 0 ? 'pointerdown' : 'pointermove';
  board.dispatchEvent(new PointerEvent(type, { ...at, isPrimary: true, bubbles: true, cancelable: true }));
}

function search(turn) {
  const field = document.querySelector('input[type=search]');
  const { set } = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value');
  set.call(field, 'control + '.slice(0, turn % 10));
  field.dispatchEvent(new Event('input', { bubbles: true }));
}
