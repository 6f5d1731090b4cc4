import { describe, expect, test } from 'vitest';
import { SAVE_AFTER_MS, Saver, type Saving } from '../../../src/store/keeping/saver.ts';
import { sample } from '../sample.ts';
import { HandTimer } from './hand-timer.ts';

const named = (name: string) => ({ ...sample, name });

/** A saver whose writes end when the test says so. */
function scene(fails: () => boolean = () => false) {
  const timer = new HandTimer();
  const begun: string[] = [];
  const ends: (() => void)[] = [];
  const told: Saving['state'][] = [];
  const saver = new Saver(
    (id, keymap) =>
      new Promise((resolve, reject) => {
        begun.push(`${id} ${keymap.name}`);
        ends.push(() => (fails() ? reject(new Error('the disk is full')) : resolve()));
      }),
    (saving) => told.push(saving.state),
    timer,
  );
  const settle = async () => {
    for (let turn = 0; turn < 5; turn++) await Promise.resolve();
  };
  const end = async () => {
    ends.shift()?.();
    await settle();
  };
  const pass = async (ms: number) => {
    timer.pass(ms);
    await settle();
  };
  return { saver, begun, told, end, pass, settle };
}

describe('saving', () => {
  test('begins within half a second of the first change, however many follow', async () => {
    expect(SAVE_AFTER_MS).toBeLessThanOrEqual(500);
    const { saver, begun, pass } = scene();
    saver.changed('a', named('1'));
    await pass(SAVE_AFTER_MS - 1);
    saver.changed('a', named('2'));
    expect(begun).toEqual([]);
    await pass(1);
    expect(begun).toEqual(['a 2']);
  });

  test('writes once for many changes, and again for a change during the write', async () => {
    const { saver, begun, pass, end, told } = scene();
    saver.changed('a', named('1'));
    saver.changed('a', named('2'));
    await pass(SAVE_AFTER_MS);
    saver.changed('a', named('3'));
    await end();
    expect(told.at(-1)).toBe('pending');
    await pass(SAVE_AFTER_MS);
    await end();
    expect(begun).toEqual(['a 2', 'a 3']);
    expect(told.at(-1)).toBe('saved');
  });

  test('writes never overlap', async () => {
    const { saver, begun, end, settle } = scene();
    saver.changed('a', named('1'));
    void saver.flush();
    await settle();
    saver.changed('a', named('2'));
    void saver.flush();
    await settle();
    expect(begun).toEqual(['a 1']);
    await end();
    expect(begun).toEqual(['a 1', 'a 2']);
  });

  test('flush writes at once what is waiting, of every design', async () => {
    const { saver, begun, end, settle } = scene();
    saver.changed('a', named('1'));
    saver.changed('b', named('2'));
    const flushed = saver.flush();
    await settle();
    await end();
    await end();
    await flushed;
    expect(begun).toEqual(['a 1', 'b 2']);
  });

  test('a write that fails is told, and tried again with the next flush', async () => {
    let full = true;
    const { saver, begun, told, end, settle } = scene(() => full);
    saver.changed('a', named('1'));
    void saver.flush();
    await settle();
    await end();
    expect(told.at(-1)).toBe('failed');
    full = false;
    void saver.flush();
    await settle();
    await end();
    expect(begun).toEqual(['a 1', 'a 1']);
    expect(told.at(-1)).toBe('saved');
  });

  test('what is to be forgotten is not written', async () => {
    const { saver, begun, pass } = scene();
    saver.changed('a', named('1'));
    saver.forget('a');
    await pass(SAVE_AFTER_MS);
    expect(begun).toEqual([]);
  });
});
