/** When files last changed, to tell whether something built from them is stale. Node built-ins only. */
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** The time of the latest change below the given files and folders, ms since 1970; 0 for what does not exist. */
export function newestChange(paths) {
  return Math.max(0, ...paths.map(changeOf));
}

function changeOf(path) {
  const stat = statSync(path, { throwIfNoEntry: false });
  if (stat === undefined) return 0;
  if (!stat.isDirectory()) return stat.mtimeMs;
  const inside = readdirSync(path).filter((name) => name !== 'node_modules');
  return Math.max(stat.mtimeMs, newestChange(inside.map((name) => join(path, name))));
}

/** Whether `built` is missing or older than any of the sources. */
export function isStale(built, sources) {
  const stat = statSync(built, { throwIfNoEntry: false });
  return stat === undefined || stat.mtimeMs < newestChange(sources);
}
