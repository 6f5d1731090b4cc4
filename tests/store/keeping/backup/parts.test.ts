import { expect, test } from 'vitest';
import { backupParts } from '../../../../src/store/keeping/backup/parts.ts';

const sources = import.meta.glob<string>('../../../../src/**/*.{ts,tsx}', {
  query: '?raw',
  import: 'default',
  eager: true,
});

test('whatever the browser keeps for the typist is in the backup', () => {
  const text = (name: string) => sources[`../../../../src/store/keeping/${name}`] ?? '';
  const inBackup = text('backup/parts.ts');
  const databases = Object.values(sources).flatMap((source) =>
    [...source.matchAll(/database: '([^']+)'/g)].map(([, name]) => name ?? ''),
  );
  const missing = [...new Set(databases)].filter((name) => !inBackup.includes(`kept('${name}'`));
  expect(databases.length).toBeGreaterThan(5);
  expect(missing).toEqual([]);
});

test('every part has a name of its own', () => {
  const ids = backupParts().map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});
