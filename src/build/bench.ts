/** `npm run bench`: how fast the core is on this machine. Prints and never fails: a slow machine is no fault. */
import { cpus } from 'node:os';
import type { BenchRow } from './bench/bench-row.ts';
import { benchCoverage } from './bench/coverage-bench.ts';
import { benchDesign } from './bench/design-bench.ts';
import { benchEngine } from './bench/engine-bench.ts';
import { benchFindings } from './bench/findings-bench.ts';
import { benchTypist } from './bench/typist-bench.ts';

const SUITES: readonly (readonly [string, () => BenchRow[]])[] = [
  ['Engine', benchEngine],
  ['Findings', benchFindings],
  ['Findings and routes', benchDesign],
  ['Accidents', benchTypist],
  ['Coverage', benchCoverage],
];

function cells({ name, median, unit, ratio, versus, note }: BenchRow): string[] {
  const share = ratio === undefined ? '' : `${ratio.toFixed(2)} × ${versus ?? ''}`;
  return [name, `${median.toFixed(median < 10 ? 2 : 0)} ${unit}`, share, note ?? ''];
}

function table(rows: readonly (readonly string[])[]): string {
  const widths = [0, 1, 2].map((at) => Math.max(...rows.map((row) => row[at]?.length ?? 0)));
  const line = (row: readonly string[]) =>
    row
      .map((cell, at) => (at === 1 ? cell.padStart(widths[at] ?? 0) : cell.padEnd(widths[at] ?? 0)))
      .join('  ');
  return rows.map((row) => line(row).trimEnd()).join('\n');
}

const [processor] = cpus();
console.log(
  `Medians on ${processor?.model.trim() ?? 'this machine'}, ${cpus().length} cores, Node ${process.versions.node}`,
);
for (const [title, run] of SUITES) console.log(`\n${title}\n${table(run().map(cells))}`);
