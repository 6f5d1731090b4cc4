import { inflateSync } from 'node:zlib';

/** A matrix as PDF writes it: a b c d e f. */
type Matrix = readonly [number, number, number, number, number, number];

const MM_PER_POINT = 25.4 / 72;

/** `first` and then `then`, as PDF's `cm` puts them together (ISO 32000-1, 8.3.4). */
function after(first: Matrix, then: Matrix): Matrix {
  const [a, b, c, d, e, f] = first;
  const [A, B, C, D, E, F] = then;
  return [a * A + b * C, a * B + b * D, c * A + d * C, c * B + d * D, e * A + f * C + E, e * B + f * D + F];
}

const placed = ([a, b, c, d, e, f]: Matrix, x: number, y: number) => ({
  x: a * x + c * y + e,
  y: b * x + d * y + f,
});

/** The sizes of a PDF's pages, mm, from their MediaBoxes. */
export function pdfPages(pdf: Buffer): readonly { readonly width: number; readonly height: number }[] {
  return [...pdf.toString('latin1').matchAll(/\/MediaBox ?\[0 0 ([\d.]+) ([\d.]+)\]/g)].map(
    ([, width, height]) => ({
      width: Number(width) * MM_PER_POINT,
      height: Number(height) * MM_PER_POINT,
    }),
  );
}

/** The lengths of the upright and level lines that a PDF's pages draw, mm on the paper, longest first. */
export function pdfLineLengths(pdf: Buffer): readonly number[] {
  const text = pdf.toString('latin1');
  const streams = [...text.matchAll(/stream\r?\n([\s\S]*?)\r?\nendstream/g)].flatMap((match) => {
    try {
      return [inflateSync(Buffer.from(match[1] ?? '', 'latin1')).toString('latin1')];
    } catch {
      // No content of a page: a font's table, or not deflated.
      return [];
    }
  });
  return streams.flatMap(linesOf).sort((one, other) => other - one);
}

function linesOf(stream: string): readonly number[] {
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  const kept: Matrix[] = [];
  let numbers: number[] = [];
  let last = { x: 0, y: 0 };
  const lengths: number[] = [];
  for (const word of stream.split(/\s+/)) {
    if (/^[-+.\d]+$/.test(word)) {
      numbers.push(Number(word));
      continue;
    }
    const [x = 0, y = 0] = numbers.slice(-2);
    if (word === 'q') kept.push(matrix);
    if (word === 'Q') matrix = kept.pop() ?? matrix;
    if (word === 'cm') {
      const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = numbers.slice(-6);
      matrix = after([a, b, c, d, e, f], matrix);
    }
    if (word === 'm' || word === 'l') {
      const at = placed(matrix, x, y);
      const isStraight = Math.abs(at.x - last.x) < 0.01 || Math.abs(at.y - last.y) < 0.01;
      if (word === 'l' && isStraight) lengths.push(Math.hypot(at.x - last.x, at.y - last.y) * MM_PER_POINT);
      last = at;
    }
    numbers = [];
  }
  return lengths;
}
