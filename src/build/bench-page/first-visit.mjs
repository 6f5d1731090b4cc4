/** The first visit's part of `npm run bench`: what is loaded, and how soon the board stands there and answers. */
import { gzipSync } from 'node:zlib';
import { cpuClock, median } from './page-clock.mjs';

const VISITS = 5;
const kB = (bytes) => `${(bytes / 1000).toFixed(0)} kB`;
const isScript = ({ path }) => path.endsWith('.js');

/** Measures in windows of its own, nothing kept from one to the next. */
export async function benchFirstVisit({ browser, address }) {
  const visits = [];
  for (let visit = 0; visit < VISITS; visit++) visits.push(await firstVisit(browser, address));
  const told = (name) => {
    const all = visits.map((visit) => visit[name]);
    return `${median(all).toFixed(0)} ms at the median, ${Math.max(...all).toFixed(0)} ms at the worst`;
  };
  const [{ files }] = visits;
  console.log(`\nPage: a first visit, ${VISITS} times, nothing kept, served from this machine`);
  console.log(`until the board is painted    ${told('board')}`);
  console.log(`until a press is answered     ${told('answer')}; own work ${told('work')}`);
  console.log(`scripts at the start          ${sizes(files.filter(isScript))}`);
  console.log(`all else at the start         ${sizes(files.filter((file) => !isScript(file)))}`);
}

function sizes(files) {
  const sum = (size) => kB(files.reduce((all, file) => all + file[size], 0));
  const [most] = files.toSorted((one, other) => other.bytes - one.bytes);
  return `${files.length} files, ${sum('bytes')}, ${sum('packed')} as gzip; the largest ${most?.path}, ${kB(most?.bytes ?? 0)}`;
}

async function firstVisit(browser, address) {
  const context = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  const responses = [];
  page.on('response', (response) => responses.push(response));
  const clock = await cpuClock(page);
  const begin = Date.now();
  await page.goto(address);
  await page.locator('[data-key]').first().waitFor();
  await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve))));
  const board = Date.now() - begin;
  await page.locator('[data-key]').first().press('Enter');
  await page.locator('div[role=dialog]').waitFor();
  const answer = Date.now() - begin;
  const work = await clock.spent();
  const files = await Promise.all(responses.map(fileOf));
  await context.close();
  return { board, answer, work, files };
}

async function fileOf(response) {
  const body = await response.body().catch(() => Buffer.alloc(0));
  return { path: new URL(response.url()).pathname, bytes: body.length, packed: gzipSync(body).length };
}
