/**
 * Writes the tables of text counts in public/texts: `node src/build/run.mjs src/build/write-text-counts.ts FOLDER`,
 * FOLDER being where the Debian packages debian-handbook and manpages-pl were unpacked (`dpkg-deb -x`), one folder each.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { createRunCounter, type RunCounts, withoutRareRuns } from '../core/needs/counts-runs.ts';
import { type CountsTable, writeCountsTable } from '../core/needs/counts-table.ts';
import { TEXT_SOURCES, type TextSource } from './tables/text-counts-sources.ts';

/** What a table may weigh, compressed, bytes. */
const MOST_BYTES = 60_000;
/** A text much longer than this adds nothing that the pruned table keeps. */
const MOST_CHARACTERS = 2_000_000;

function countsOf(pieces: readonly string[]): { counts: RunCounts; bytes: number } {
  const counter = createRunCounter();
  let bytes = 0;
  let characters = 0;
  for (const piece of pieces) {
    if (characters > MOST_CHARACTERS) break;
    counter.add(piece);
    bytes += Buffer.byteLength(piece);
    characters += piece.length;
  }
  counter.endText();
  return { counts: counter.counts(), bytes };
}

/** The fullest table that keeps within the weight: rare quadruples go first, triples at a third of their floor. */
function lightTable(table: CountsTable): { json: string; zipped: number; floor: number } {
  for (let floor = 2; ; floor++) {
    const counts = withoutRareRuns(table.counts, { triple: Math.ceil(floor / 3), quadruple: floor });
    const json = writeCountsTable({ ...table, counts });
    const zipped = gzipSync(json, { level: 9 }).length;
    if (zipped <= MOST_BYTES) return { json, zipped, floor };
  }
}

function write({ name, title, source, licence, read }: TextSource, unpacked: string): object {
  const { counts, bytes } = countsOf(read(unpacked));
  const { json, zipped, floor } = lightTable({ name, title, source, licence, bytes, counts });
  writeFileSync(`public/texts/${name}.json`, json);
  console.log(`${name}: ${bytes} bytes of text, ${zipped} bytes compressed, runs of four from ${floor} on`);
  return { name, title, source, licence, bytes, compressed: zipped };
}

const [unpacked = ''] = process.argv.slice(2);
mkdirSync('public/texts', { recursive: true });
const index = TEXT_SOURCES.map((source) => write(source, unpacked));
writeFileSync('public/texts/index.json', `${JSON.stringify(index, null, 1)}\n`);
