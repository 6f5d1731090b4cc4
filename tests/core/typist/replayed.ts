import { readFileSync } from 'node:fs';
import type { HoldBy } from '../../../src/core/keymap/types.ts';
import { GROUP_NAMES, type GroupName } from '../../../src/core/typist/parameters.ts';

interface Replayed {
  readonly words: number;
  readonly pairs: Record<string, Record<string, { per1000words: number; hits: number }>>;
  readonly triples: Record<string, Record<string, { per1000words: number; hits: number }>>;
  readonly holds: Record<string, Record<HoldBy, number>>;
}

const { groups }: { groups: Record<GroupName, Replayed> } = JSON.parse(
  readFileSync('tests/core/typist/data/replayed-accidents.json', 'utf8'),
);

/** What really happened when a group's typing was replayed with one chord or one hold/tap key. */
export interface Replay {
  readonly group: GroupName;
  readonly letters: string;
  readonly ms: number;
  readonly holdBy: HoldBy | null;
  readonly per1000Words: number;
  readonly hits: number;
}

const chordsIn = (group: GroupName, of: Replayed['pairs']): Replay[] =>
  Object.entries(of).flatMap(([letters, windows]) =>
    Object.entries(windows).map(([ms, { per1000words, hits }]) => ({
      group,
      letters,
      ms: Number(ms),
      holdBy: null,
      per1000Words: per1000words,
      hits,
    })),
  );

const holdsIn = (group: GroupName, { holds, words }: Replayed): Replay[] =>
  Object.entries(holds).flatMap(([name, rules]) =>
    (['time-only', 'press-inside', 'tap-inside'] as const).map((holdBy) => ({
      group,
      letters: name.charAt(0),
      ms: Number(name.slice(1)),
      holdBy,
      per1000Words: rules[holdBy],
      hits: Math.round((rules[holdBy] * words) / 1000),
    })),
  );

/** Every check value of the data. */
export const REPLAYS: readonly Replay[] = GROUP_NAMES.flatMap((group) => [
  ...chordsIn(group, groups[group].pairs),
  ...chordsIn(group, groups[group].triples),
  ...holdsIn(group, groups[group]),
]);
