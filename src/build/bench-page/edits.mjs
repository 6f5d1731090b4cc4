/** The edits' part of `npm run bench`: from a press to the board that shows it, findings and accidents worked out besides. */
import { stepsLine, timedSteps, watchFrames } from './page-clock.mjs';

const EDITS = 21;

/** Measures on a page with the benchmark design open. */
export async function benchEdits({ openPage }) {
  const page = await openPage();
  const frames = await watchFrames(page);
  const report = async (what, step, options = { restMs: 300 }) => {
    await frames();
    const steps = await timedSteps(page, EDITS, step, options);
    console.log(stepsLine(what, steps, await frames()));
  };
  console.log('\nPage, edits: 42 keys, 8 layers, 30 chords; aim: painted within 50 ms, no frame over 50 ms');
  await page.locator('[data-key]').first().focus();
  await report('a character put on a key', bindKey);
  if ((await page.getByRole('button', { name: /^Undo: / }).count()) === 0)
    throw new Error('no edit was made');
  await report('undone and done again', undoAndRedo);
  await page.locator('svg [data-chord]').first().dispatchEvent('click');
  await page.locator('input[type=range]').first().waitFor();
  await report("a chord's slider moves", slide);
  await report("a chord's slider is let go", letGo, { restMs: 600 });
  await page.close();
}

/** A printing character binds itself to the focused key: two of them in turn, so that each is an edit. */
function bindKey(turn) {
  const key = turn % 2 === 0 ? 'ü' : 'q';
  document.activeElement.dispatchEvent(
    new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }),
  );
}

function undoAndRedo(turn) {
  document.querySelector(`button[aria-label^="${turn % 2 === 0 ? 'Undo' : 'Redo'}: "]`).click();
}

function slide(turn) {
  const range = document.querySelector('input[type=range]');
  const { set } = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value');
  set.call(range, String(Number(range.min) + 10 + turn));
  range.dispatchEvent(new Event('input', { bubbles: true }));
}

function letGo(turn) {
  const range = document.querySelector('input[type=range]');
  const { set } = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value');
  set.call(range, String(Number(range.min) + 40 + turn));
  range.dispatchEvent(new Event('input', { bubbles: true }));
  range.dispatchEvent(new KeyboardEvent('keyup', { key: 'ArrowRight', bubbles: true }));
}
