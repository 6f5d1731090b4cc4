import { expect, test } from 'vitest';
import { checkCommand } from '../../src/cli/commands/check.ts';
import { diffCommand } from '../../src/cli/commands/diff.ts';
import { routeCommand } from '../../src/cli/commands/route.ts';
import { CAUTION } from '../../src/core/base/care.ts';
import { coverageMarkdown } from '../../src/core/coverage/markdown.ts';
import { folderOfFiles } from './folder-of-files.ts';
import { twoKeyDesign } from './two-key-design.ts';

const design = folderOfFiles()('design.json', twoKeyDesign);

/** `suggest` has the caution in its own test. */
test.each([
  ['check', () => checkCommand([design]).output],
  ['route', () => routeCommand([design, 'a']).output],
  ['diff', () => diffCommand([design, design]).output],
  ['coverage as Markdown', () => coverageMarkdown('A design', [], null)],
])('whatever weighs presses carries the caution: %s', (_, output) => {
  expect(output()).toContain(CAUTION);
});

test.each([
  ['check', () => checkCommand([design, '--json']).output],
  ['route', () => routeCommand([design, 'a', '--json']).output],
  ['diff', () => diffCommand([design, design, '--json']).output],
])('what a machine reads stays data: %s', (_, output) => {
  expect(() => JSON.parse(output())).not.toThrow();
});
