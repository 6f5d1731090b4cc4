import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { folderOfFiles } from './folder-of-files.ts';
import { twoKeyDesign } from './two-key-design.ts';

const file = folderOfFiles();
const design = file('design.json', twoKeyDesign);

const handful = (...args: string[]) =>
  spawnSync(process.execPath, ['src/build/handful.mjs', ...args], { encoding: 'utf8', timeout: 60_000 });

// Bundles first where a source is newer than the bundle.
describe('the command line as a process', { timeout: 60_000 }, () => {
  test('prints on stdout alone, and exits with 0', () => {
    const { stdout, stderr, status } = handful('route', design, 'a', '--json');
    expect(JSON.parse(stdout).needs[0].reachable).toBe(true);
    expect([stderr, status]).toEqual(['', 0]);
  });

  test('says on stderr what could not be read, and exits with 2', () => {
    const { stdout, stderr, status } = handful('check', 'no-such-file.json');
    expect(stdout).toBe('');
    expect(stderr).toBe('no-such-file.json could not be read: there is no such file.\n');
    expect(status).toBe(2);
  });

  test.each([[['dance']], [['check', design, '--loud']], [[]]])(
    '%j: usage on stderr, and exit code 2',
    (args) => {
      const { stdout, stderr, status } = handful(...args);
      expect([stdout, status]).toEqual(['', 2]);
      expect(stderr).toContain('usage: npm run -s handful -- COMMAND');
    },
  );

  test.each([[['help']], [['--help']], [['-h']], [['check', '--help']]])(
    '%j: usage on stdout, and exit code 0',
    (args) => {
      const { stdout, stderr, status } = handful(...args);
      expect([stderr, status]).toEqual(['', 0]);
      expect(stdout).toContain('usage: npm run -s handful -- COMMAND');
    },
  );

  test('a file name is read from the folder that npm was called in', () => {
    const { status } = spawnSync(process.execPath, ['src/build/handful.mjs', 'route', 'design.json', 'a'], {
      env: { ...process.env, npm_lifecycle_event: 'handful', INIT_CWD: design.replace(/[^/\\]*$/, '') },
    });
    expect(status).toBe(0);
  });
});
