import { expect, test } from 'vitest';
import { backupParts } from '../../../src/store/keeping/backup/parts.ts';
import { forgetDesign } from '../../../src/store/keeping/forget-design.ts';

/** Under what name something of a design is kept, by the part of the backup that holds it. */
const KEPT_OF: readonly (readonly [part: string, nameOf: (design: string) => string])[] = [
  ['sessions', (design) => `session:${design}:s1`],
  ['checks', (design) => design],
  ['versions', (design) => design],
  ['boards', (design) => design],
];

test.each(KEPT_OF)('%s go with the design that is deleted, and nothing of another one', async (part, of) => {
  const values = backupParts().find(({ id }) => id === part)?.values;
  await values?.set(of('gone'), {});
  await values?.set(of('stays'), {});
  await forgetDesign('gone');
  expect(await values?.names()).toEqual([of('stays')]);
});
