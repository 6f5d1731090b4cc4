import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

/** A folder for the files of one test file; taken away afterwards. Gives a function that writes one and names it. */
export function folderOfFiles(): (name: string, content: unknown) => string {
  const folder = mkdtempSync(join(tmpdir(), 'handful-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return (name, content) => {
    const file = join(folder, name);
    writeFileSync(
      file,
      typeof content === 'string' || content instanceof Uint8Array ? content : JSON.stringify(content),
    );
    return file;
  };
}
