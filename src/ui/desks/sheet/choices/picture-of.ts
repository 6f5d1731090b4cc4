import type { PaperSize } from '../../../../core/drawing/sheet-paper.ts';

/** Dots an inch of a picture: what office printers print with at least (common practice, no source). */
const DPI = 300;

/** A page as a PNG at 300 dots an inch. Rejects where the browser cannot draw it. */
export async function pictureOf(address: string, { width, height }: PaperSize): Promise<Blob> {
  const image = new Image();
  image.src = address;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = Math.round((width / 25.4) * DPI);
  canvas.height = Math.round((height / 25.4) * DPI);
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('this browser gives no canvas');
  context.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) => {
    canvas.toBlob(
      (blob) => (blob === null ? reject(new Error('the picture is too large')) : resolve(blob)),
      'image/png',
    );
  });
}
