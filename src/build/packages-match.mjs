/** Whether node_modules holds what package-lock.json asks for. Node built-ins only. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

function packagesIn(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages ?? {};
  } catch {
    return undefined;
  }
}

/**
 * Compares the lock with the list that npm leaves in node_modules as the last step of every install, so an install
 * that was broken off counts as none. Packages for other systems (optional in the lock) may be absent.
 */
export function packagesMatch(root) {
  const wanted = packagesIn(join(root, 'package-lock.json'));
  const there = packagesIn(join(root, 'node_modules/.package-lock.json'));
  if (wanted === undefined || there === undefined) return false;
  const complete = Object.entries(wanted).every(([path, { version, optional }]) => {
    if (path === '') return true;
    return there[path] === undefined ? optional === true : there[path].version === version;
  });
  return complete && Object.keys(there).every((path) => wanted[path] !== undefined);
}
