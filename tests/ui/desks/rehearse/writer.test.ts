import { describe, expect, test } from 'vitest';
import { checkStream } from '../../../../src/core/rehearse/read-stream.ts';
import { personAt } from '../../../../src/core/typist/person.ts';
import { type Who, writerOf } from '../../../../src/ui/desks/rehearse/source/writer.ts';

const measured = personAt(81.4, 1.337);
const chosen = { wpm: 60, spread: 1.5 };

describe('whoever writes a text', () => {
  test.each<[Who | null, typeof measured | null, Who]>([
    [null, null, 'speed'],
    ['measured', null, 'speed'],
    [null, measured, 'measured'],
    ['measured', measured, 'measured'],
    ['speed', measured, 'speed'],
  ])('%s chosen', (who, own, expected) => {
    const writer = writerOf({ ...chosen, who }, own);
    expect(writer.who).toBe(expected);
    expect(writer.person).toEqual(expected === 'measured' ? measured : personAt(60, 1.5));
  });

  test('is named in the stream as it can be read again, however far off a measured figure is', () => {
    const odd = { ...measured, spreadFactor: 0.001, parameters: { ...measured.parameters, wpm: 4000 } };
    for (const own of [null, measured, odd]) {
      const { name, made } = writerOf({ ...chosen, who: null }, own);
      const stream = { format: 'key-stream', version: 1, name, made: made(3), meant: null, events: [] };
      expect(checkStream(stream)).toMatchObject({ ok: true, value: { made: made(3) } });
    }
    expect(writerOf({ ...chosen, who: null }, measured).made(3)).toEqual({
      how: 'written',
      wpm: 81,
      spread: 1.34,
      seed: 3,
      measured: true,
    });
  });
});
