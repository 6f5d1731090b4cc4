// @vitest-environment node
import { describe, expect, test } from 'vitest';
import { READY_BOARDS } from '../../src/core/board/ready-boards.ts';
import { factsOf } from '../../src/core/findings/facts.ts';
import { findAll } from '../../src/core/findings/find-all.ts';
import { hostFromTable } from '../../src/core/host/host-from-table.ts';
import type { HostLayout } from '../../src/core/host/host-layout.ts';
import { readHostTable } from '../../src/core/host/host-table.ts';
import type { Host } from '../../src/core/keymap/types.ts';
import { NeedListCache } from '../../src/store/need-lists.ts';
import { starterDesign } from '../../src/store/starter-design.ts';
import { choicesOf, firstAnswers, withHost } from '../../src/ui/app/new-design/answers.ts';

const hostFiles = import.meta.glob<unknown>('../../public/hosts/*.json', { import: 'default' });
const needFiles = import.meta.glob<unknown>('../../public/needs/*.json', { import: 'default' });

async function hostNamed(file: string): Promise<HostLayout> {
  const table = readHostTable(await hostFiles[`../../public/hosts/${file}.json`]?.());
  if (!table.ok) throw new Error(table.problem);
  return hostFromTable(table.value);
}

/** The need lists of the project's own files. */
const lists = new NeedListCache(async (address) => needFiles[address.replace('./', '../../public/')]?.());

/** Host tables by system, layout and variant, each with lists that are typed on it beside those of the first answers. */
type Computer = readonly [string, Host, readonly string[]];

const ON_EVERY_BOARD: readonly Computer[] = [
  ['us', { system: 'linux', layout: 'us', variant: '' }, []],
  ['us-mac', { system: 'macos', layout: 'us', variant: '' }, ['cldr:en']],
  ['de', { system: 'linux', layout: 'de', variant: '' }, ['cldr:de', 'python', 'function-keys', 'media']],
  ['fr', { system: 'windows', layout: 'fr', variant: '' }, ['cldr:fr', 'ecmascript']],
  ['pl', { system: 'linux', layout: 'pl', variant: '' }, ['cldr:pl', 'rust']],
];

const ON_THE_SMALLEST_AND_THE_LARGEST: readonly Computer[] = [
  ['us', { system: 'windows', layout: 'us', variant: '' }, ['cldr:en', 'python', 'c', 'function-keys']],
  ['us-dvorak', { system: 'linux', layout: 'us', variant: 'dvorak' }, []],
  ['us-intl', { system: 'linux', layout: 'us', variant: 'intl' }, ['cldr:de']],
  ['gb', { system: 'windows', layout: 'gb', variant: '' }, ['html']],
  ['de-mac', { system: 'macos', layout: 'de', variant: '' }, ['cldr:de']],
  ['be', { system: 'linux', layout: 'be', variant: '' }, []],
  ['es', { system: 'linux', layout: 'es', variant: '' }, ['cldr:es']],
  ['br', { system: 'linux', layout: 'br', variant: '' }, ['cldr:pt']],
  ['tr', { system: 'linux', layout: 'tr', variant: '' }, ['cldr:tr']],
];

const BOARDS = READY_BOARDS.map(({ id }) => id);

/** What the host layout has no way to type is no fault of the design. */
const UNAVOIDABLE: ReadonlySet<string> = new Set(['host-cannot-type']);

describe.each([
  ...ON_EVERY_BOARD.map((computer) => [...computer, BOARDS] as const),
  ...ON_THE_SMALLEST_AND_THE_LARGEST.map((computer) => [...computer, ['split-34', 'split-42']] as const),
])('on %s, %j with %j', (file, computer, added, boards) => {
  const answers = withHost(firstAnswers(computer.system), computer);

  test.each(boards)('a new design on %s has nothing that stands against it', async (board) => {
    const [host, findList] = await Promise.all([hostNamed(file), lists.loaded(added)]);
    const choices = choicesOf({ ...answers, board, lists: [...answers.lists, ...added] });
    const design = starterDesign(choices, host, findList);
    const findings = findAll(factsOf(design, host, undefined, findList));
    expect(findings.filter(({ messageId }) => !UNAVOIDABLE.has(messageId))).toEqual([]);
  });
});
