// @vitest-environment node
import { describe, expect, test } from 'vitest';
import { makeLatest } from '../../../src/store/accidents/latest.ts';

/** Answers when told to, in the order in which it was asked. */
function slowly() {
  const asked: string[] = [];
  const waiting: { readonly done: (answer: string) => void; readonly fail: (why: Error) => void }[] = [];
  const answer = (question: string) => {
    asked.push(question);
    return new Promise<string>((done, fail) => waiting.push({ done, fail }));
  };
  const settle = async (how: (next: (typeof waiting)[number]) => void) => {
    const next = waiting.shift();
    if (next === undefined) throw new Error('Nothing is waiting.');
    how(next);
    await new Promise((later) => setTimeout(later));
  };
  return { asked, answer, settle };
}

describe('the latest question', () => {
  test('while an answer is awaited only the newest question waits', async () => {
    const { asked, answer, settle } = slowly();
    const store = makeLatest(answer);
    for (const question of ['a', 'b', 'c', 'd']) store.getState().ask(question);
    expect(asked).toEqual(['a']);
    await settle(({ done }) => done('A'));
    expect(store.getState().answer).toEqual({ to: 'a', value: 'A' });
    expect(asked).toEqual(['a', 'd']);
    await settle(({ done }) => done('D'));
    expect(store.getState().answer).toEqual({ to: 'd', value: 'D' });
  });

  test('the same question is asked once', async () => {
    const { asked, answer, settle } = slowly();
    const store = makeLatest(answer, (one, other) => one.toLowerCase() === other.toLowerCase());
    store.getState().ask('a');
    store.getState().ask('A');
    await settle(({ done }) => done('!'));
    store.getState().ask('a');
    expect(asked).toEqual(['a']);
  });

  test('a failure is told, the former answer stays, and the next question is asked all the same', async () => {
    const { answer, settle } = slowly();
    const store = makeLatest(answer);
    store.getState().ask('a');
    await settle(({ done }) => done('A'));
    store.getState().ask('b');
    store.getState().ask('c');
    await settle(({ fail }) => fail(new Error('No.')));
    expect(store.getState()).toMatchObject({ failed: 'No.', answer: { to: 'a' } });
    await settle(({ done }) => done('C'));
    expect(store.getState()).toMatchObject({ failed: null, answer: { to: 'c', value: 'C' } });
  });
});
