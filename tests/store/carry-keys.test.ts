import { beforeEach, expect, test } from 'vitest';
import type { KeyRenaming } from '../../src/core/board/key-renaming.ts';
import { readStream } from '../../src/core/rehearse/read-stream.ts';
import type { Stream } from '../../src/core/rehearse/stream.ts';
import { writeStream } from '../../src/core/rehearse/write-stream.ts';
import { useBench } from '../../src/store/bench.ts';
import { watchRenaming } from '../../src/store/carry-keys.ts';
import { NO_CHECK } from '../../src/store/check/kept-check.ts';
import { makeCheck } from '../../src/store/check/make-check.ts';
import { memoryKeyValue } from '../../src/store/keeping/key-value.ts';
import { makeKeptThings } from '../../src/store/rehearse/kept-things.ts';
import { boardKey, small } from '../core/keymap/small.ts';

const start = small();
const [first] = start.board.keys;
const SAME = Object.fromEntries(start.board.keys.map(({ id }) => [id, id]));

beforeEach(() => {
  useBench.setState(useBench.getInitialState());
  useBench.getState().open('d1', start);
});

/** What is told while `work` goes on. */
function told(work: () => void): readonly string[] {
  const heard: KeyRenaming[] = [];
  const stop = watchRenaming(useBench, ({ renaming }) => heard.push(renaming));
  work();
  stop();
  return heard.map((renaming) => [...renaming].map((pair) => pair.join('>')).join(' '));
}

const shifted = { ...start.board, keys: ['k0', 'k1', 'k2', 'k3', 'k4', 'k5'].map(boardKey) };

test('a board whose keys are called otherwise is told, and so are undoing and redoing it', () => {
  const { edit, undo, redo } = useBench.getState();
  const heard = told(() => {
    edit({ edit: 'set-board', board: shifted, became: { k1: 'k0', k2: 'k1' } });
    edit({ edit: 'rename-design', name: 'Other' });
    undo();
    undo();
    redo();
  });
  const there = 'k1>k0 k2>k1';
  expect(heard).toHaveLength(3);
  expect(heard[0]).toContain(there);
  expect(heard[1]).toContain('k0>k1 k1>k2');
  expect(heard[2]).toBe(heard[0]);
});

test('a board whose keys keep their ids, and another design, are not told', () => {
  const { edit, open } = useBench.getState();
  const heard = told(() => {
    edit({ edit: 'set-board', board: { ...start.board, name: 'New' }, became: SAME });
    if (first) edit({ edit: 'set-board', board: { ...start.board, keys: [first] } });
    open('d2', start);
  });
  expect(heard).toEqual([]);
});

test('a check goes along, the open one and one of another design', async () => {
  const values = memoryKeyValue();
  const check = makeCheck(values, () => 5);
  const renaming = new Map([['k1', 'k2']]);
  await check.getState().open('d1');
  const look = { step: 'base k1 tap', verdict: 'right', expected: 'KeyA' } as const;
  check.getState().look(look);
  await values.set('d2', { ...NO_CHECK, byEye: [look] });
  await check.getState().renameKeys('d1', renaming);
  await check.getState().renameKeys('d2', renaming);
  expect(check.getState().check.byEye).toEqual([{ ...look, step: 'base k2 tap' }]);
  expect(await values.get('d1')).toMatchObject({ byEye: [{ step: 'base k2 tap' }] });
  expect(await values.get('d2')).toMatchObject({ byEye: [{ step: 'base k2 tap' }] });
});

test('kept things of a design go along, those of others stay', async () => {
  const values = memoryKeyValue();
  let ids = 0;
  const things = () =>
    makeKeptThings<string>(
      values,
      (stored) => (typeof stored === 'string' ? stored : null),
      () => 7,
      () => `t${++ids}`,
    );
  const one = things();
  await one.getState().keep('a', undefined, 'd1');
  await one.getState().keep('b', undefined, 'd2');
  await one.getState().keep('c');
  const later = things();
  await later.getState().changeOf('d1', (text) => `${text}!`);
  const shown = (store: typeof one) => store.getState().things.map(({ value }) => value);
  expect(shown(later).toSorted()).toEqual(['a!', 'b', 'c']);
  const last = things();
  await last.getState().start();
  expect(shown(last).toSorted()).toEqual(['a!', 'b', 'c']);
});

test('a key that is gone has an id that a stream can hold', () => {
  const stream: Stream = { name: 's', made: { how: 'typed' }, meant: null, events: [] };
  const events = [{ t: 0, key: 'ABCDEFGHIJK-gone', type: 'down' }] as const;
  expect(readStream(writeStream({ ...stream, events })).ok).toBe(true);
});
