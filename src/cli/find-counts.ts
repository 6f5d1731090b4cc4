import { join } from 'node:path';
import { fail, ok, type Result } from '../core/base/result.ts';
import { LIMITS } from '../core/keymap/limits.ts';
import { createRunCounter, type RunCounts } from '../core/needs/counts-runs.ts';
import { READY_TEXTS, readCountsTable } from '../core/needs/counts-table.ts';
import { publicFolder } from './public-folder.ts';
import { isFile, readJson, readText } from './read-text.ts';

const TABLE_BYTES = 1024 * 1024;

/** Counts of a ready text by its name, else of a file of running text. The problem is a sentence. */
export function findCounts(name: string): Result<RunCounts, string> {
  const ready = READY_TEXTS.find((text) => text === name);
  if (ready !== undefined) {
    const json = readJson(join(publicFolder(), 'texts', `${ready}.json`), TABLE_BYTES);
    const table = json.ok ? readCountsTable(json.value) : json;
    return table.ok ? ok(table.value.counts) : fail(`${ready}: ${table.problem}.`);
  }
  if (!isFile(name))
    return fail(
      `--text: no file by that name, and no ready text is called ${JSON.stringify(name)}; there are ${READY_TEXTS.join(', ')}.`,
    );
  const text = readText(name, LIMITS.fileBytes);
  if (!text.ok) return text;
  const counter = createRunCounter();
  counter.add(text.value);
  counter.endText();
  const counts = counter.counts();
  return counts.total === 0 ? fail(`${name}: there is no text in it.`) : ok(counts);
}
