/** The part of `npm run bench` about counting ten megabytes of source code and prose, as a person has it done. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { framesText, watchFrames } from './page-clock.mjs';

/** Measures on a page with the benchmark design open. */
export async function benchCounting({ openPage, root }) {
  const page = await openPage();
  const folder = textFolder(root);
  await page.getByRole('radio', { name: 'Coverage' }).check();
  const box = page.getByRole('region', { name: 'Your text' });
  await box.waitFor();
  const frames = await watchFrames(page);
  await frames();
  const begin = Date.now();
  await page.locator('[data-chooses=folder]').setInputFiles(folder);
  await box.getByText(/counted on/).waitFor();
  const ms = Date.now() - begin;
  console.log(
    `\nPage: ten megabytes of text counted\n${ms} ms from choosing to the figures; frames over 50 ms: ${framesText(await frames())}; aim: 1,000 ms, none`,
  );
  await page.close();
}

function textFolder(root) {
  const folder = join(root, '.cache/bench-text');
  mkdirSync(folder, { recursive: true });
  const source = readFileSync(join(root, 'src/core/needs/text-counts.ts'), 'utf8');
  const prose = 'Zwölf Boxkämpfer jagen Viktor quer über den großen Sylter Deich.\n'.repeat(40);
  const megabyte = `${source}${prose}`.repeat(200).slice(0, 1_000_000);
  for (let file = 0; file < 10; file++) writeFileSync(join(folder, `text-${file}.txt`), megabyte);
  return folder;
}
