import { expect, test } from 'vitest';
import type { KnownHost } from '../../../../src/store/hosts.ts';
import { leftWords, probeWords } from '../../../../src/ui/board/computer/computer-words.ts';
import { knownHost } from './host-files.ts';

test.each([
  [{ code: 'KeyY', shift: false, level3: false }, 'the key that is Y on a US keyboard'],
  [
    { code: 'KeyE', shift: false, level3: true },
    'AltGr (Option on a Mac) + the key that is E on a US keyboard',
  ],
  [{ code: 'Semicolon', shift: true, level3: false }, 'Shift + Semicolon'],
] as const)('%j', (probe, words) => {
  expect(probeWords(probe)).toBe(words);
});

const known = new Map<string, Promise<KnownHost>>();
/** The same each time, as the page has it. */
async function layout(name: string) {
  const loading = known.get(name) ?? knownHost(name);
  known.set(name, loading);
  return { title: name, host: (await loading).host };
}
const layouts = (names: readonly string[]) => Promise.all(names.map(layout));

test.each([
  ['none that is known', [], /none of the layouts.*not on de.*otherwise/],
  ['the design’s own', ['de'], /is on de, as the design has it/],
  ['another', ['fr'], /is on fr; the design is for de: .*otherwise/],
  ['two that read alike', ['de', 'at'], /cannot tell apart: de, at\. Each reads/],
  ['two that do not', ['de', 'de-mac'], /cannot tell apart: de, de-mac\. .*only if it is de\./],
  ['two others', ['fr', 'be'], /cannot tell apart: fr, be; the design is for de/],
] as const)('%s', async (_, left, words) => {
  expect(leftWords(await layouts(left), await layout('de'))).toMatch(words);
});

test('a layout that adds nothing but a level 3 reads alike', async () => {
  expect(leftWords(await layouts(['pl']), await layout('us'))).toMatch(
    /is on pl\. It reads what the design types as us does/,
  );
});
