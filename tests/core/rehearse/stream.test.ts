import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { checkStream, readStream } from '../../../src/core/rehearse/read-stream.ts';
import { fromZero, STREAM_LIMITS, type Stream } from '../../../src/core/rehearse/stream.ts';
import { writeStream } from '../../../src/core/rehearse/write-stream.ts';

const events = [
  { t: 0, key: 'R12', type: 'down' },
  { t: 80.5, key: 'R12', type: 'up' },
] as const;
const stream: Stream = { name: 'Two presses', made: { how: 'typed' }, meant: 'a', events };
const file = () => JSON.parse(writeStream(stream));

const first = (text: string) => {
  const read = readStream(text);
  return read.ok ? 'read' : read.problem[0]?.sentence;
};

const streams: fc.Arbitrary<Stream> = fc.record({
  name: fc.stringMatching(/^[^\n\r]{1,40}$/u),
  made: fc.oneof(
    fc.constant({ how: 'typed' as const }),
    fc.record(
      {
        how: fc.constant('written' as const),
        wpm: fc.integer({ min: 1, max: 400 }),
        spread: fc.constantFrom(1, 1.5, 2),
        seed: fc.integer(),
        measured: fc.constant(true as const),
      },
      { requiredKeys: ['how', 'wpm', 'spread', 'seed'] },
    ),
  ),
  meant: fc.option(fc.string({ maxLength: 60 })),
  events: fc.array(fc.nat({ max: 5000 }), { maxLength: 30 }).map((steps) => {
    let t = 0;
    return steps.flatMap((step, at) => {
      const down = t + step / 10;
      t = down + 30;
      const key = `K${at % 5}`;
      return [
        { t: down, key, type: 'down' as const },
        { t, key, type: 'up' as const },
      ];
    });
  }),
});

describe('a stream as a file', () => {
  test.prop([streams])('is read back equal', (one) => {
    const read = readStream(writeStream(one));
    expect(read).toEqual({ ok: true, value: one });
  });

  test('has an event a line', () => {
    expect(writeStream(stream)).toContain('\n    { "t": 80.5, "key": "R12", "type": "up" }\n');
  });

  test.each([
    [
      '{',
      'No JSON: at line 1, column 2, found the end of the text, expected a name in quotation marks or }.',
    ],
    [
      '[]',
      'The document: found something else, expected a stream of presses: an object with "format": "key-stream".',
    ],
    [
      JSON.stringify({ ...file(), version: 2 }),
      'version: found 2, expected 1, the newest that is known here.',
    ],
    [JSON.stringify({ ...file(), extra: 1 }), 'extra: found a field of that name, expected no such field.'],
    [
      JSON.stringify({ ...file(), events: [{ t: 0, key: 'A', type: 'press' }] }),
      'events[0].type: found "press", expected "down" or "up".',
    ],
    [
      JSON.stringify({ ...file(), events: [...events].reverse() }),
      'events[0]: found R12 coming up, expected a key that is down.',
    ],
    [
      JSON.stringify({ ...file(), events: [events[0], { ...events[1], t: -1 }] }),
      'events[1].t: found -1, expected 0 at least.',
    ],
    [
      JSON.stringify({
        ...file(),
        events: [
          { ...events[0], t: 9 },
          { ...events[1], t: 3 },
        ],
      }),
      'events[1].t: found 3, expected 9 or later.',
    ],
    [JSON.stringify({ ...file(), name: '' }), 'name: found "", expected one line of 1 to 80 characters.'],
  ])('is refused with a sentence: %#', (text, sentence) => {
    expect(first(text)).toBe(sentence);
  });

  test('of more events than there may be is refused', () => {
    const many = Array.from({ length: STREAM_LIMITS.events + 1 }, (_, at) => ({
      t: at,
      key: 'A',
      type: at % 2 === 0 ? 'down' : 'up',
    }));
    const read = checkStream({ ...file(), events: many });
    expect(read.ok ? '' : read.problem[0]?.sentence).toBe(
      'events: found a list of 100001, expected 100000 items at most.',
    );
  });
});

test('times begin at nought, to a tenth of a millisecond', () => {
  const late = events.map((event) => ({ ...event, t: event.t + 1234.56 }));
  expect(fromZero(late).map(({ t }) => t)).toEqual([0, 80.5]);
});
