// @vitest-environment node
import { expect, test } from 'vitest';
import { textOfLists } from '../../src/store/text-of-design.ts';

test.each([
  [[], 'english'],
  [['ascii', 'editing'], 'english'],
  [['ascii', 'cldr:de'], 'german'],
  [['cldr:pl:letters', 'cldr:de'], 'polish'],
  [['cldr:tr', 'cldr:fr'], 'french'],
  [['cldr:tr'], 'english'],
  // Low German, Filipino: their codes are others, however they begin.
  [['cldr:dsb', 'cldr:fil'], 'english'],
  [['cldr:pt-PT'], 'portuguese'],
  [['python', 'cldr:es'], 'spanish'],
  [['ascii', 'python'], 'code'],
  [['python', 'cldr:tr'], 'english'],
  [['cldr:', 'nonsense'], 'english'],
] as const)('a design that asks for %j starts from the text %s', (lists, text) => {
  expect(textOfLists(lists)).toBe(text);
});
