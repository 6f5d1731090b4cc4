import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { textMm } from '../../src/core/drawing/set-text.ts';
import { readSheetType } from '../../src/core/drawing/sheet-type.ts';
import { accessibilityFaults, download, readExport } from './design-desk.ts';
import { openPage } from './keeping.ts';

async function openSheet(page: Page): Promise<void> {
  await openPage(page);
  await page.getByRole('radio', { name: 'Sheet' }).check();
  await expect(page.getByRole('img', { name: 'Sheet, page 1 of 1' })).toBeVisible();
}

/** The share of a picture that is not white, and of its outermost parts: a twentieth of the width on every side. */
async function inkOf(page: Page, png: Buffer): Promise<{ all: number; edge: number }> {
  return page.evaluate(
    async (address) => {
      const image = new Image();
      image.src = address;
      await image.decode();
      const canvas = document.createElement('canvas');
      const [width, height] = [image.width, image.height];
      Object.assign(canvas, { width, height });
      const context = canvas.getContext('2d');
      if (context === null) throw new Error('no canvas');
      context.drawImage(image, 0, 0);
      const { data } = context.getImageData(0, 0, width, height);
      const margin = width / 40;
      let [all, edge] = [0, 0];
      for (let at = 0; at < width * height; at += 1) {
        if (Math.min(data[at * 4] ?? 0, data[at * 4 + 1] ?? 0, data[at * 4 + 2] ?? 0) > 200) continue;
        all += 1;
        const [x, y] = [at % width, Math.floor(at / width)];
        if (Math.min(x, width - x, y, height - y) < margin) edge += 1;
      }
      return { all: all / (width * height), edge };
    },
    `data:image/png;base64,${png.toString('base64')}`,
  );
}

test('the sheet prints as one page of the chosen paper, with ink on it and none near its edges', async ({
  page,
}) => {
  await openSheet(page);
  await page.getByRole('radio', { name: 'A4' }).check();
  const pdf = (await page.pdf({ preferCSSPageSize: true, printBackground: true })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
  // A4 landscape in points, to Chromium's rounding: 297 mm and 210 mm of 72 / 25.4.
  const [, width, height] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf) ?? [];
  expect(Math.abs(Number(width) - 841.9)).toBeLessThan(1);
  expect(Math.abs(Number(height) - 595.3)).toBeLessThan(1);
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 1122, height: 793 });
  const printed = await page.screenshot();
  await page.emulateMedia({ media: 'screen' });
  const ink = await inkOf(page, printed);
  expect(ink.edge).toBe(0);
  expect(ink.all).toBeGreaterThan(0.01);
  expect(ink.all).toBeLessThan(0.1);
});

test('paper, turn, ink and rungs are chosen, kept, and come out as SVG and as a picture', async ({
  page,
}) => {
  await openSheet(page);
  // Until one is chosen it is the paper of the place that the browser names: Letter here.
  await expect(page.getByRole('radio', { name: 'US Letter' })).toBeChecked();
  await page.getByRole('radio', { name: 'A4' }).check();
  const svg = () => download(page, () => page.getByRole('button', { name: 'Download SVG' }).click());
  expect(await svg()).toContain('width="297mm" height="210mm"');
  await page.getByRole('radio', { name: 'US Letter' }).check();
  await page.getByRole('radio', { name: 'Portrait' }).check();
  await page.getByRole('radio', { name: 'Black' }).check();
  await page.getByRole('checkbox', { name: '4 Panel' }).uncheck();
  await expect(page.getByText(/^One page of US Letter, portrait\./)).toBeVisible();
  const black = await svg();
  expect(black).toContain('width="215.9mm" height="279.4mm"');
  expect(new Set(black.match(/#[0-9a-f]{6}\b/g))).toEqual(new Set(['#000000', '#ffffff']));
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Download PNG' }).click();
  const bytes = readFileSync(await (await waiting).path());
  // 8.5 by 11 inches at 300 dots: width and height stand in the first chunk of a PNG (RFC 2083, 11.2.1).
  expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([2550, 3300]);
  await page.reload();
  await page.getByRole('radio', { name: 'Sheet' }).check();
  await expect(page.getByRole('radio', { name: 'US Letter' })).toBeChecked();
  await expect(page.getByRole('checkbox', { name: '4 Panel' })).not.toBeChecked();
});

test('the worksheet can be read through, and the ways out hand out what they say', async ({ page }) => {
  await openSheet(page);
  await page.getByRole('radio', { name: 'Worksheet' }).check();
  await expect(page.getByRole('table').first()).toContainText('KeyQ');
  const json = await download(page, () =>
    page.getByRole('button', { name: 'Download: Neutral keymap' }).click(),
  );
  expect(readExport(json).layers.length).toBeGreaterThan(1);
});

test('axe finds nothing on the sheet desk, light and dark, sheet and worksheet', async ({ page }) => {
  await openSheet(page);
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.getByRole('radio', { name: 'Worksheet' }).check();
  expect(await accessibilityFaults(page)).toEqual([]);
});

test('texts are as wide as the browser sets them in the same font', async ({ page }) => {
  const read = readSheetType(JSON.parse(readFileSync('public/sheet-type.json', 'utf8')));
  if (!read.ok) throw new Error(read.problem);
  const files = { sans: 'source-sans-3', serif: 'source-serif-4' } as const;
  const texts = ['Held by left middle thumb', 'Ctrl Z', '0123456789', '{[(<>)]}', 'PgUp'];
  for (const [face, family] of Object.entries(files)) {
    const file = `node_modules/@fontsource/${family}/files/${family}-latin-400-normal.woff`;
    const widths = await page.evaluate(
      async ({ font, texts }) => {
        const loaded = await new FontFace(
          'Sheet',
          Uint8Array.from(atob(font), (char) => char.charCodeAt(0)).buffer,
        ).load();
        document.fonts.add(loaded);
        const span = document.createElement('span');
        // The sheet sets sign after sign: pairs are neither kerned nor joined.
        Object.assign(span.style, {
          font: '1000px Sheet',
          fontKerning: 'none',
          fontVariantLigatures: 'none',
          position: 'absolute',
          whiteSpace: 'pre',
        });
        document.body.append(span);
        return texts.map((text) => {
          span.textContent = text;
          return span.getBoundingClientRect().width;
        });
      },
      { font: readFileSync(file).toString('base64'), texts },
    );
    // At 1000 px to the size, a thousandth is a pixel; 72 points of 25.4 / 72 mm are an inch.
    const ours = texts.map(
      (text) => (textMm(read.value, face === 'sans' ? 'sans' : 'serif', 72, text) / 25.4) * 1000,
    );
    for (const [at, width] of widths.entries()) expect(Math.abs(width - (ours[at] ?? 0))).toBeLessThan(1);
  }
});
