import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/**
 * The folder with the tables of host layouts and need lists. Looked for upwards from this module, which lies in
 * src/cli as a source and in .cache as a bundle.
 */
export function publicFolder(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'package.json')) && dirname(folder) !== folder) folder = dirname(folder);
  return join(folder, 'public');
}
