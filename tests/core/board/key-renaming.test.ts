import { fc } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { keyRenaming, renamed, reversed } from '../../../src/core/board/key-renaming.ts';
import { renamedStep } from '../../../src/core/check/steps.ts';
import type { Board } from '../../../src/core/keymap/types.ts';
import { renamedSession } from '../../../src/core/practice/renamed-session.ts';
import { newSession, type Session } from '../../../src/core/practice/session.ts';
import { renamedStream } from '../../../src/core/rehearse/renamed-stream.ts';
import { boardKey } from '../keymap/small.ts';

const board = (ids: readonly string[]): Board => ({ name: 'B', keys: ids.map(boardKey) });

describe('a change of boards', () => {
  test.each<[string, string, string, Record<string, string>, Record<string, string>]>([
    ['nothing is called anew', 'a b', 'a b', { a: 'a', b: 'b' }, {}],
    ['a column comes between', 'a b', 'a b c', { a: 'b', b: 'c' }, { a: 'b', b: 'c', 'a-gone': 'a' }],
    ['a column goes', 'a b c', 'a b', { b: 'a', c: 'b' }, { b: 'a', c: 'b', a: 'a-gone' }],
    ['a key goes and nobody has its id', 'a b', 'a', { a: 'a' }, {}],
    ['two change places', 'a b', 'a b', { a: 'b', b: 'a' }, { a: 'b', b: 'a' }],
  ])('%s', (_, before, after, became, wanted) => {
    const renaming = keyRenaming(board(before.split(' ')), board(after.split(' ')), became);
    expect(Object.fromEntries(renaming)).toEqual(wanted);
  });

  const IDS = ['a', 'b', 'c', 'd', 'e'];
  const change = fc.record({
    before: fc.uniqueArray(fc.constantFrom(...IDS), { minLength: 1 }),
    after: fc.uniqueArray(fc.constantFrom(...IDS), { minLength: 1 }),
    staying: fc.nat(5),
  });

  test('is one to one, keeps what stays, mixes nothing up, and can be undone', () => {
    void fc.assert(
      fc.property(change, ({ before, after, staying }) => {
        const count = Math.min(staying, before.length, after.length);
        const became = Object.fromEntries(before.slice(0, count).map((id, at) => [id, after[at] ?? '']));
        const renaming = keyRenaming(board(before), board(after), became);
        const all = [...IDS, ...IDS.map((id) => `${id}-gone`)];
        expect(
          new Set([...before, ...before.map((id) => renamed(renaming, id))].slice(before.length)).size,
        ).toBe(before.length);
        for (const [from, to] of Object.entries(became)) expect(renamed(renaming, from)).toBe(to);
        for (const id of before.slice(count)) expect(after).not.toContain(renamed(renaming, id));
        const touched = all.filter((id) => before.includes(id) || renaming.has(id));
        for (const id of touched) expect(renamed(reversed(renaming), renamed(renaming, id))).toBe(id);
      }),
    );
  });
});

describe('what goes along with the keys', () => {
  const renaming = new Map([
    ['L1', 'L2'],
    ['L2', 'L3'],
  ]);

  test.each([
    ['base L1 tap', 'base L2 tap'],
    ['base R1 hold', 'base R1 hold'],
    ['L1 tap', 'L1 tap'],
  ])('the step %s of a check is %s', (id, now) => {
    expect(renamedStep(id, renaming)).toBe(now);
  });

  test('the events of a stream', () => {
    const stream = {
      name: 's',
      made: { how: 'typed' },
      meant: null,
      events: [{ t: 0, key: 'L1', type: 'down' }],
    } as const;
    expect(renamedStream(stream, renaming).events).toEqual([{ t: 0, key: 'L2', type: 'down' }]);
  });

  test('the routes and faults of a session', () => {
    const begun = newSession({ id: 's', seed: 0.5, minutes: 5, input: 'engine', startedAt: 0 });
    const session: Session = {
      ...begun,
      routes: { a: { signature: 'hold L2, press L1+L2', words: 'w', keys: ['L1'] } },
      slip: {
        sure: true,
        faults: [
          { fault: 'neighbour', key: 'L1', meant: 'R1' },
          { fault: 'chord-incomplete', chord: 'c1', missing: ['L2'] },
          { fault: 'nothing-there', key: 'L2' },
          { fault: 'unknown' },
        ],
      },
    };
    const { routes, slip } = renamedSession(session, renaming);
    expect(routes.a).toEqual({ signature: 'hold L3, press L2+L3', words: 'w', keys: ['L2'] });
    expect(slip?.faults).toEqual([
      { fault: 'neighbour', key: 'L2', meant: 'R1' },
      { fault: 'chord-incomplete', chord: 'c1', missing: ['L3'] },
      { fault: 'nothing-there', key: 'L3' },
      { fault: 'unknown' },
    ]);
  });
});
