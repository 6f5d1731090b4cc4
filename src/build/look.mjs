/**
 * `npm run look`: pictures of the built page at three sizes, light and dark, for the eye. Takes keymap files to open in
 * it (default: the page as it opens, and every file of demo-layouts). Writes into .cache/look/.
 */
import { mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { importDesign, openBuiltPage } from './built-page.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = join(root, '.cache/look');
const SIZES = [
  { name: 'wide', width: 1440, height: 900 },
  { name: 'middle', width: 1024, height: 768 },
  { name: 'phone', width: 390, height: 844 },
];

const named = process.argv.slice(2);
const demos = readdirSync(join(root, 'demo-layouts'))
  .filter((file) => file.endsWith('.json'))
  .map((file) => join(root, 'demo-layouts', file));
const designs = [undefined, ...(named.length > 0 ? named : demos)];

rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const built = await openBuiltPage(root, 4300);
if (built === undefined)
  throw new Error('There is no browser on this machine: npm test says how to get one.');

for (const design of designs) {
  for (const { name, width, height } of SIZES) {
    for (const colorScheme of ['light', 'dark']) {
      const context = await built.browser.newContext({ viewport: { width, height }, colorScheme });
      const page = await context.newPage();
      page.on('console', (message) => message.type() === 'error' && console.error(message.text()));
      page.on('pageerror', (error) => console.error(String(error)));
      await page.goto(built.address);
      await page.getByRole('main').waitFor();
      if (design !== undefined)
        await importDesign(page, design, JSON.parse(readFileSync(design, 'utf8')).name);
      await page.waitForTimeout(400);
      const picture = `${design === undefined ? 'first' : basename(design, '.json')}-${name}-${colorScheme}.png`;
      await page.screenshot({ path: join(folder, picture) });
      console.log(picture);
      await context.close();
    }
  }
}
await built.close();
