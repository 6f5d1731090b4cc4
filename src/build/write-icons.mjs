/** Writes the icons of the installed page from their drawings: `npm run icons`. Needs a browser, which draws them. */
import { readFileSync, writeFileSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { findBrowser } from './find-browser.mjs';

const ICONS = [
  { drawing: 'handful', size: 192 },
  { drawing: 'handful', size: 512 },
  { drawing: 'handful-maskable', size: 512 },
];

const browser = await chromium.launch({
  executablePath: findBrowser(),
  args: ['--no-sandbox', '--disable-gpu'],
});
for (const { drawing, size } of ICONS) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  const svg = readFileSync(`public/icons/${drawing}.svg`, 'utf8');
  await page.setContent(`<style>body { margin: 0 } svg { display: block; width: ${size}px }</style>${svg}`);
  writeFileSync(`public/icons/${drawing}-${size}.png`, await page.screenshot({ omitBackground: true }));
  await page.close();
}
await browser.close();
